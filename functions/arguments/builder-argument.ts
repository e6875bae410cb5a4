import type { Builder } from "../../src/core/bath/model/builder.ts";
import {
  builderFromWeights,
  builderFromWord,
  builderWords,
  unknownBuilder,
} from "../../src/core/bath/model/builder.ts";
import type { Argument, CellInput, CellMatrix, CellValue } from "../define-function.ts";
import { compositionRows, naming } from "./composition-rows.ts";
import { isBlankOrZero, refuse, wordIn } from "./read-cell.ts";
import { notOneOfChemicals } from "./wording.ts";

const name = "builder";
const words: readonly string[] = ["unknown", ...builderWords];
const known = new Map(words.map((word) => [word, builderFromWord(word)]));

function fromWord(cell: CellValue): Builder {
  if (isBlankOrZero(cell)) return unknownBuilder;
  return (
    known.get(String(cell)) ??
    known.get(wordIn(cell)) ??
    refuse(name, notOneOfChemicals(String(cell), words, ", or give the two columns of the SDS"))
  );
}

function fromRange(rows: CellMatrix): Builder {
  if (rows.every((row) => row.every(isBlankOrZero))) return unknownBuilder;
  const ingredients = compositionRows(name, rows, "% by weight");
  return naming(name, "Leave out what is not alkaline, such as surfactants and dyes.", () =>
    builderFromWeights(ingredients),
  );
}

function read(input: CellInput): Builder {
  if (!Array.isArray(input)) return fromWord(input ?? null);
  const [row] = input;
  if (row === undefined) return unknownBuilder;
  return input.length === 1 && row.length === 1 ? fromWord(row[0] ?? null) : fromRange(input);
}

/** What makes the concentrate alkaline: a word, or the safety data sheet's list as two columns. */
export const builder: Argument<Builder, "builder"> = {
  name,
  help: "what makes the concentrate alkaline: hydroxide, silicate, carbonate, phosphate or unknown (default); or two columns from the SDS: component, % by weight",
  excelType: "any",
  dimensionality: "matrix",
  optional: true,
  choices: words,
  read,
};
