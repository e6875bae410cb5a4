import { parse, tokenize } from "@cj-tech-master/excelts/formula";

import { CommandFailure } from "../failure.ts";

/** A formula in pieces, as the library's parser has it. */
export type FormulaNode = ReturnType<typeof parse>;

/** Excel's limits (Microsoft, "Excel specifications and limits"). */
const limits = { characters: 8192, levels: 64 } as const;

interface Brackets {
  readonly deepest: number;
  /** Above 0 where one is not closed, below where one was never opened. */
  readonly open: number;
}

function bracketsIn(code: string): Brackets {
  let open = 0;
  let deepest = 0;
  for (const character of code) {
    if (character === "(" || character === "{") open += 1;
    if (character === ")" || character === "}") open -= 1;
    if (open < 0) break;
    deepest = Math.max(deepest, open);
  }
  return { deepest, open };
}

/** What is wrong with a formula that the parser does not take, as the end of a sentence. */
function faultOf(formula: string, code: string): string {
  if (formula.trim() === "") return "it is empty";
  if ((formula.match(/"/g)?.length ?? 0) % 2 === 1) return "a text in double quotes is not closed";
  const { open } = bracketsIn(code);
  if (open > 0) return "a bracket is not closed";
  if (open < 0) return "a closing bracket has none that it closes";
  if (code.includes("'")) return "texts stand in double quotes";
  if (code.replaceAll(/\{[^}]*\}/g, "").includes(";")) return "arguments are separated by commas";
  if (/[-+*/^&=<>,(]\s*$/.test(code)) return "something is missing at its end";
  return "an operator, a comma or a value is missing or stands where none can stand";
}

/** Reads a formula as Excel's US edition writes it, with or without its "=". Throws CommandFailure for what is none. */
export function readFormula(text: string): FormulaNode {
  const formula = text.trim().replace(/^=/, "");
  if (formula.length > limits.characters)
    throw new CommandFailure(
      `The formula has more than ${limits.characters.toLocaleString("en-US")} characters, and Excel takes no longer one.`,
    );
  const code = formula.replaceAll(/"(?:[^"]|"")*"/g, "");
  if (bracketsIn(code).deepest > limits.levels)
    throw new CommandFailure(
      `The formula is nested more than ${String(limits.levels)} levels deep, and Excel takes no deeper one.`,
    );
  try {
    return parse(tokenize(formula));
  } catch {
    throw new CommandFailure(`The formula cannot be read: ${faultOf(formula, code)}.`);
  }
}
