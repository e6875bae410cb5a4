import { CellError, type Scalar, Spill } from "../../joblog/evaluate/cell-value.ts";
import { readFormula } from "../calc/read-formula.ts";
import { Calculation, type Worked } from "../calc/work-out.ts";
import type { Command } from "../command.ts";
import { CommandFailure, exitCodes, inOneSentence } from "../failure.ts";

/** Where an error has no sentence of its own: what it means. */
const meanings: Readonly<Record<string, string>> = {
  "#DIV/0!": "Something is divided by 0.",
  "#N/A": "There is no such value.",
  "#NUM!": "A number on the way is none that can be reckoned with.",
  "#REF!": "There is no such row or column.",
  "#VALUE!": "A text stands where a number is wanted.",
};

const errorIn = (value: Worked): CellError | undefined =>
  (value instanceof Spill ? value.rows.flat() : [value]).find((cell) => cell instanceof CellError);

function reasonOf({ code, why }: CellError): string {
  return inOneSentence(why === code ? (meanings[code] ?? code) : why);
}

function cellText(cell: Scalar): string {
  if (cell instanceof CellError) return cell.code;
  return typeof cell === "boolean" ? String(cell).toUpperCase() : String(cell ?? "");
}

const valueText = (value: Worked): string =>
  value instanceof Spill ? value.rows.map((row) => row.map(cellText).join("\t")).join("\n") : cellText(value);

/** Some units are told in words: "the unit of the amount". */
function unitText(unit: string): string {
  if (unit === "") return "";
  return /\bthe\b/.test(unit) ? ` (${unit})` : ` ${unit}`;
}

const valueJson = (value: Worked): unknown => (value instanceof Spill ? value.rows : value);

export const calc: Command = {
  name: "calc",
  usage: "FORMULA [--json]",
  summary: "Works out a formula of BATH functions, with the arithmetic around them.",
  options: [{ name: "json", help: "answer as JSON: value, unit, and the functions called with their units" }],
  examples: ["bathsheet calc '=BATH.TOPUP(4.18,11.42,10.83)'", `bathsheet calc '=BATH.DOSE(121.175,"1+28")' --json`],
  words: { least: 1, most: 1 },
  run: ({ words: [text = ""], switches }, { out }) => {
    const node = readFormula(text);
    const calculation = new Calculation();
    const value = calculation.worked(node);
    const error = errorIn(value);
    const { calls } = calculation;
    // The unit of a sum or a product of results is not ours to say.
    const unit = "args" in node && node.name.toUpperCase().startsWith("BATH.") ? (calls.at(-1)?.unit ?? "") : "";
    if (switches.has("json")) {
      const answer =
        error === undefined
          ? { formula: text, value: valueJson(value), ...(unit === "" ? {} : { unit }), calls }
          : { formula: text, error: error.code, reason: reasonOf(error) };
      out(`${JSON.stringify(answer)}\n`);
      return Promise.resolve(error === undefined ? exitCodes.done : exitCodes.refused);
    }
    if (error !== undefined) throw new CommandFailure(`${error.code} ${reasonOf(error)}`);
    // After several cells it would look like a part of the last one.
    out(`${valueText(value)}${value instanceof Spill ? "" : unitText(unit)}\n`);
    return Promise.resolve(exitCodes.done);
  },
};
