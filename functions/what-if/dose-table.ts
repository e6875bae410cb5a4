import { dose } from "../../src/core/bath/dose.ts";
import { defaultUnit } from "../../src/core/units/default-unit.ts";
import { plainText } from "../../src/core/units/plain-text.ts";
import { system } from "../arguments/arguments.ts";
import { inSystem } from "../arguments/in-system.ts";
import { list } from "../arguments/list-arguments.ts";
import { quantityList } from "../arguments/quantity-argument.ts";
import { strengthArgument } from "../arguments/strength-argument.ts";
import { oneOfThe } from "../arguments/wording.ts";
import type { CellValue } from "../define-function.ts";
import { defineFunction } from "../define-function.ts";

const help =
  'column or row of strengths as in DOSE, such as "1+40", "1 in 40", "2.5%", "3 fl oz/gal"; blanks and a header on top are skipped';
const one = strengthArgument(oneOfThe("rates"), help);

/** A strength's own text. A sign before it, which would start a formula where the table is pasted, says nothing. */
function asWritten(cell: CellValue): CellValue {
  return typeof cell === "string" ? plainText(cell).replace(/^\+\s*/, "") : cell;
}

const rates = list("rates", {
  help,
  unit: "share of the finished bath",
  read: (cell, call) => ({ written: asWritten(cell), strength: one.read(cell, call) }),
});

export const doseTable = defineFunction({
  id: "DOSETABLE",
  category: "What-if",
  summary: "Returns a table of concentrate for several volumes, one a row, at several strengths, one a column.",
  arguments: [
    quantityList("volumes", {
      kind: "volume",
      help: "column or row of volumes of finished bath; blanks and a header on top are skipped",
    }),
    rates,
    system,
  ],
  result: {
    excelType: "any",
    dimensionality: "matrix",
    unit: "US gal (US), L (metric), imperial gal (imperial)",
    help: "first row: the unit, then the strengths as written; first column: the volumes",
  },
  examples: [
    {
      formula: '=BATH.DOSETABLE({29;58},{"1+28";"1 in 40"})',
      cells: [
        [[29], [58]],
        [["1+28"], ["1 in 40"]],
      ],
      result: [
        ["US gal", "1+28", "1 in 40"],
        [29, 1, 0.725],
        [58, 2, 1.45],
      ],
      tolerance: 1e-9,
      source: "by definition: 1 part in 29, and 1 part in 40, of the finished bath",
    },
  ],
  notes: [
    "Does not know the label, the water or the soil: the label's highest rate wins.",
    "A ratio typed into a cell as 1:40 is turned into a time of day by Excel; such a time is refused, except those of 1:12, 1:48 and 1:84, which cannot be told from 5, 7.5 and 10 %. A bare share of more than 0.1 is refused: write 0.5% or 50%. Type 1+40, or format the cell as text first.",
  ],
  source: "DOSE for each volume and strength.",
  compute: ([volumes, strengths], call) => [
    [defaultUnit("volume", call.system).symbol, ...strengths.map(({ written }) => written)],
    ...volumes.map((volume) =>
      [volume, ...strengths.map(({ strength }) => dose(volume, strength))].map((each) =>
        inSystem("volume", each, call),
      ),
    ),
  ],
});
