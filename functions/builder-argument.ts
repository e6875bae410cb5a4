import { builderWords } from "../src/core/solution/builder.ts";
import { isBlankOrZero, numberFrom, refuse } from "./read-cell.ts";
import { quoted } from "./wording.ts";
import type { Argument, CellInput, CellMatrix, CellValue } from "./define-function.ts";
import type { Builder, BuilderComponent } from "../src/core/solution/builder.ts";

const name = "builder";

function fromWord(cell: CellValue): Builder {
  if (isBlankOrZero(cell)) return { known: "word", word: "unknown" };
  const text = String(cell).trim().toLowerCase();
  const word = builderWords.find((known) => known === text);
  if (word !== undefined) return { known: "word", word };
  return refuse(name, `is ${quoted(String(cell))}; write ${builderWords.map(quoted).join(", ")}, or give the two columns of the SDS.`);
}

/** A header or an unused row has no number in its second column. */
function isUsed(row: readonly CellValue[]): boolean {
  return !isBlankOrZero(row[0] ?? null) && !isBlankOrZero(row[1] ?? null) && !isHeader(row);
}

function isHeader(row: readonly CellValue[]): boolean {
  const second = row[1];
  return typeof second === "string" && !/\d/.test(second);
}

function componentOf(row: readonly CellValue[]): BuilderComponent {
  const percent = row[1] ?? null;
  const bare = typeof percent === "string" ? percent.replace(/%\s*$/, "") : percent;
  const percentByWeight = numberFrom(name, bare);
  if (percentByWeight < 0) refuse(name, `holds a share below 0 for ${quoted(String(row[0]))}.`);
  return { name: String(row[0]), percentByWeight };
}

function fromRange(rows: CellMatrix): Builder {
  const components = rows.filter(isUsed).map(componentOf);
  if (components.length > 0) return { known: "components", components };
  if (rows.every((row) => row.every(isBlankOrZero))) return { known: "word", word: "unknown" };
  return refuse(name, "is a range without a row of component and % by weight.");
}

function read(input: CellInput): Builder {
  if (!Array.isArray(input)) return fromWord(input ?? null);
  const [row] = input;
  if (row === undefined) return { known: "word", word: "unknown" };
  if (input.length === 1 && row.length === 1) return fromWord(row[0] ?? null);
  if (row.length !== 2) refuse(name, "as a range must have two columns: component and % by weight.");
  return fromRange(input);
}

/** What makes the concentrate alkaline: a word, or the safety data sheet's list as two columns. */
export const builder: Argument<Builder> = {
  name,
  help: "what makes the concentrate alkaline: hydroxide, silicate, carbonate, phosphate or unknown (default); or two columns from the SDS: component, % by weight",
  excelType: "any",
  dimensionality: "matrix",
  optional: true,
  choices: builderWords,
  read,
};
