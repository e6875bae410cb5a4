/** Limits that Excel holds contents to, and not the grid. */
import { ExcelError, invalidArgument } from "../excel-error.ts";

/** "Excel specifications and limits" (support.microsoft.com): length of formula contents, nested levels of functions, characters in a cell. */
const most = { formula: 8192, levels: 64, text: 32_767 } as const;

/** A list typed into a rule, and a rule's formula: "More on data validation" (support.microsoft.com) names 255 for the list; the dialog takes no more of either. */
const mostOfRule = 255;

/** [MS-XLS] 2.5.37, DValStrings: what the words of a validation hold at most. */
const mostOfWords = { title: 32, alert: 225, prompt: 255 } as const;

/** How deep parentheses stand in one another, outside quoted text. */
function depthOf(formula: string): number {
  let depth = 0;
  let deepest = 0;
  let quoted = false;
  for (const character of formula) {
    if (character === '"') quoted = !quoted;
    else if (!quoted && character === "(") deepest = Math.max(deepest, ++depth);
    else if (!quoted && character === ")") depth -= 1;
  }
  return deepest;
}

/** Throws InvalidArgument for contents that no cell of Excel takes. */
export function checkContents(written: unknown, location: string): void {
  if (typeof written !== "string") return;
  if (!written.startsWith("=")) {
    if (written.length > most.text) throw invalidArgument(`A cell holds ${most.text} characters.`, location);
    return;
  }
  if (written.length > most.formula)
    throw invalidArgument(`The formula has ${written.length} characters; Excel takes ${most.formula}.`, location);
  const depth = depthOf(written);
  if (depth > most.levels)
    throw invalidArgument(`The formula is nested ${depth} deep; Excel takes ${most.levels} levels.`, location);
}

/** Throws InvalidArgument for a rule that Excel's dialog would not take. */
export function checkRule(rule: Excel.DataValidationRule): void {
  const location = "DataValidation.rule";
  const source = rule.list?.source;
  const formulas = [
    source,
    rule.custom?.formula,
    ...[rule.decimal, rule.wholeNumber, rule.date].flatMap((one) => [one?.formula1, one?.formula2]),
  ].filter((one) => typeof one === "string");
  for (const text of formulas) {
    if (text.length > mostOfRule)
      throw invalidArgument(`A rule holds ${mostOfRule} characters, not ${text.length}.`, location);
    if (text.startsWith("=") && text.includes("["))
      throw invalidArgument("A rule cannot name a table's columns by structured reference.", location);
  }
  if (typeof source === "string" && !source.startsWith("=") && source.split(",").some((one) => one !== one.trim()))
    throw invalidArgument("A choice of a list begins or ends with a blank.", location);
}

/** Throws InvalidArgument for words that Excel's dialog would cut or refuse. */
export function checkWords(
  kind: "alert" | "prompt",
  words: { readonly title?: string; readonly message?: string },
): void {
  const { title = "", message = "" } = words;
  const location = kind === "alert" ? "DataValidation.errorAlert" : "DataValidation.prompt";
  if (title.length > mostOfWords.title)
    throw invalidArgument(`The title "${title}" has more than ${mostOfWords.title} characters.`, location);
  if (message.length > mostOfWords[kind])
    throw invalidArgument(`The message "${message}" has more than ${mostOfWords[kind]} characters.`, location);
}

/** "Resource limits and performance optimization for Office Add-ins": Excel on the web takes and gives 5 MB at once. */
const mostBytes = 5_000_000;

/** Throws what Excel on the web answers to a request, or instead of an answer, that is too large. */
export function checkSize(bytes: number, direction: "Request" | "Response"): void {
  if (bytes > mostBytes)
    throw new ExcelError(
      `${direction}PayloadSizeLimitExceeded`,
      `The ${direction.toLowerCase()} payload size has exceeded the limit.`,
    );
}
