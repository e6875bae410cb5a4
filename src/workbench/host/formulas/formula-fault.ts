import type { Model, OSpreadsheet } from "../library.ts";

/** How the grid says that a call has too few or too many arguments. */
const wrongNumber =
  /^Invalid number of arguments for the (\S+) function\. Expected (\d+) (minimum|maximum), but got (\d+) instead\.$/;

function list(words: readonly string[]): string {
  return words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} and ${words.at(-1) ?? ""}`;
}

const countOf = (count: string): string => `${count} argument${count === "1" ? "" : "s"}`;

function wrongNumberWords(library: OSpreadsheet, message: string): string | undefined {
  const [, name, expected = "", end, got = ""] = wrongNumber.exec(message) ?? [];
  if (name === undefined) return undefined;
  if (end === "maximum") return `Too many arguments for ${name}: it takes ${expected} at most and was given ${got}.`;
  const needed = library.registries.functionRegistry
    .get(name)
    .args.filter((one) => one.optional !== true && one.default !== true);
  return `Too few arguments for ${name}: it needs ${list(needed.map((one) => one.name))}, and was given ${got === "0" ? "none" : countOf(got)}.`;
}

/**
 * Why Excel would not take a typed formula; undefined where it would. A function that nobody knows is a formula all the
 * same, and Excel's names for tables, which the grid does not read from a keyboard, are left alone.
 */
export function formulaFault(library: OSpreadsheet, model: Model, sheet: string, text: string): string | undefined {
  if (!text.startsWith("=") || text.includes("[")) return undefined;
  const compiled = library.CompiledFormula.Compile(text, sheet, model.getters);
  if (!compiled.isBadExpression) return undefined;
  const { value, message } = (compiled.execute as () => { readonly value: string; readonly message?: string })();
  if (value === "#NAME?") return undefined;
  return wrongNumberWords(library, message ?? "") ?? "This formula is not complete, or a part of it is not understood.";
}
