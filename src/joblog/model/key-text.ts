/**
 * Names by which rows are found again. MATCH and COUNTIFS read `*`, `?` and `~` as a pattern and a
 * leading `<`, `>` or `=` as a comparison, so a name with one of these would find other rows.
 */
const patternMarks = ["*", "?", "~"] as const;

const comparisonMarks = "<>=";

/** Far below the 255 characters that MATCH can look up, and still readable in a column. */
const longestKey = 40;

/** What is allowed, as the end of a sentence. */
export const keyTextAllowed = `at most ${String(longestKey)} characters, none of them * ? or ~, and no < > or = in front`;

export function isKeyText(text: string): boolean {
  return (
    text.length <= longestKey &&
    !patternMarks.some((mark) => text.includes(mark)) &&
    !comparisonMarks.includes(text.charAt(0))
  );
}

/** The same test as a formula on a cell that is not blank. */
export function keyTextFormula(cell: string): string {
  const stripped = patternMarks.reduce((text, mark) => `SUBSTITUTE(${text},"${mark}","")`, cell);
  return `=AND(LEN(${cell})<=${String(longestKey)},LEN(${stripped})=LEN(${cell}),ISERROR(FIND(LEFT(${cell},1),"${comparisonMarks}")))`;
}
