import type { DefinitionFile } from "./definition-files.ts";

const where = (file: string): string => `functions/${file}.ts`;

function exportFaults({ file, functions, references }: DefinitionFile): readonly string[] {
  const names = [...functions.keys()];
  const [name] = names;
  if (name === undefined) return [`functions/${file}.reference.ts stands alone: ${where(file)} defines no function.`];
  if (names.length > 1) return [`${where(file)} defines ${names.join(" and ")}: give each a file of its own.`];
  if (references.has(`${name}Reference`)) return [];
  return [
    `${where(file)} defines BATH.${functions.get(name)?.id ?? ""} without its text for the reference page: add functions/${file}.reference.ts ` +
      `with "export const ${name}Reference: Reference = { symbols, where, source, cautions };" (functions/reference/reference.ts says what these are).`,
  ];
}

/** What keeps the files from being one catalogue, a sentence each that names the file and what to add to it. */
export function catalogueFaults(files: readonly DefinitionFile[], order: readonly string[]): readonly string[] {
  const known = files.map(({ file }) => file);
  const ids = files.flatMap(({ file, functions }) => [...functions.values()].map(({ id }) => ({ id, file })));
  return [
    ...files.flatMap(exportFaults),
    ...files
      .filter(({ file, functions }) => functions.size > 0 && !order.includes(file))
      .map(({ file }) => `${where(file)} has no line in functions/help-order.ts: add "${file}" where the help has it.`),
    ...order
      .filter((file) => !known.includes(file))
      .map((file) => `functions/help-order.ts lists "${file}", and ${where(file)} defines no function.`),
    ...order
      .filter((file, index) => order.indexOf(file) !== index)
      .map((file) => `functions/help-order.ts lists "${file}" twice.`),
    ...ids
      .filter(({ id }, index) => ids.findIndex((other) => other.id === id) !== index)
      .map(({ id, file }) => `${where(file)} defines BATH.${id}, which another file defines too.`),
  ];
}
