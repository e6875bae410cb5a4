import type { DefinitionFile } from "./definition-files.ts";

const written = "// Written by `npm run catalogue` in the order of help-order.ts; never edited.";

/** Imports in the order of the help, so that a new function is one line more. */
const unsorted = "/* oxlint-disable import-sort/imports */";

/** The files of functions/ that are derived, by name. Only for files without faults. */
export function catalogueTexts(
  files: readonly DefinitionFile[],
  order: readonly string[],
): Readonly<Record<"catalogue.ts" | "references.ts", string>> {
  const listed = order.flatMap((file) => {
    const name = files
      .find((one) => one.file === file)
      ?.functions.keys()
      .next().value;
    return name === undefined ? [] : [{ file, name }];
  });
  return {
    "catalogue.ts": [
      written,
      unsorted,
      'import type { WorksheetFunction } from "./define-function.ts";',
      ...listed.map(({ file, name }) => `import { ${name} } from "./${file}.ts";`),
      "",
      "/** Every worksheet function, in the order of the help. */",
      "export const catalogue: readonly WorksheetFunction[] = [",
      ...listed.map(({ name }) => `  ${name},`),
      "];",
      "",
    ].join("\n"),
    "references.ts": [
      written,
      unsorted,
      'import type { Reference } from "./reference/reference.ts";',
      ...listed.flatMap(({ file, name }) => [
        `import { ${name} } from "./${file}.ts";`,
        `import { ${name}Reference } from "./${file}.reference.ts";`,
      ]),
      "",
      "/** What a reader gets besides each definition, by the function's id. */",
      "export const references: Readonly<Record<string, Reference>> = {",
      ...listed.map(({ name }) => `  [${name}.id]: ${name}Reference,`),
      "};",
      "",
    ].join("\n"),
  };
}
