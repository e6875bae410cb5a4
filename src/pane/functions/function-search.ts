import type { WorksheetFunction } from "../../../functions/define-function.ts";

/** Functions that mention every word, in the order of the catalogue; those with the first word in the name come first. */
export function searchFunctions(catalogue: readonly WorksheetFunction[], query: string): readonly WorksheetFunction[] {
  const words = query
    .toLowerCase()
    .replace("bath.", "")
    .split(/\s+/)
    .filter((word) => word !== "");
  const [first] = words;
  if (first === undefined) return catalogue;
  const found = catalogue.filter((fn) => {
    const text = [
      fn.id,
      fn.category,
      fn.summary,
      fn.source,
      ...fn.notes,
      ...fn.arguments.flatMap(({ name, help }) => [name, help]),
    ]
      .join(" ")
      .toLowerCase();
    return words.every((word) => text.includes(word));
  });
  const named = (fn: WorksheetFunction): boolean => fn.id.toLowerCase().includes(first);
  return [...found.filter(named), ...found.filter((fn) => !named(fn))];
}

/** `BATH.DOSE(volume, rate, [system])`. */
export function callOf(fn: WorksheetFunction): string {
  const names = fn.arguments.map(({ name, optional }) => (optional ? `[${name}]` : name));
  return `BATH.${fn.id}(${names.join(", ")})`;
}
