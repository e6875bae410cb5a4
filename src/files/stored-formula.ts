/** Functions newer than the file format's first edition, which files spell with a prefix (ECMA-376; Excel 2019). */
const prefixed = /\b(MAXIFS|MINIFS)\(/g;

const ours = /\bBATH\.([A-Z][A-Z0-9.]*)\(/g;

/** Text between quotes is data, not a call. */
const quotedText = /("(?:[^"]|"")*")/;

function storedCalls(code: string): string {
  return code
    .replaceAll(prefixed, "_xlfn.$1(")
    .replaceAll(ours, (_, name: string) => `_xldudf_BATH_${name.replaceAll(".", "_")}(`);
}

/**
 * A formula as a file holds it: without "=", add-in functions by the prefix that Excel looks for when
 * it opens a workbook, newer functions by theirs.
 */
export function storedFormula(formula: string): string {
  return formula
    .replace(/^=/, "")
    .split(quotedText)
    .map((part, index) => (index % 2 === 1 ? part : storedCalls(part)))
    .join("");
}
