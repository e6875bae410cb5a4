import { bufferPh as bufferPhAt } from "../../src/core/meter/buffer-ph.ts";
import type { StandardBuffer } from "../../src/core/meter/standard-buffers.ts";
import { standardBuffers } from "../../src/core/meter/standard-buffers.ts";
import { parseNumber } from "../../src/core/units/parse-number.ts";
import { system } from "../arguments/arguments.ts";
import { quantity } from "../arguments/quantity-argument.ts";
import { isBlankOrZero, refuse, singleCell, wordIn } from "../arguments/read-cell.ts";
import { askInstead, quoted } from "../arguments/wording.ts";
import type { Argument, CellValue } from "../define-function.ts";
import { defineFunction } from "../define-function.ts";

const name = "buffer";
const names = standardBuffers.map((one) => one.name);
const known = standardBuffers.map((one) => `${quoted(one.name)} (${String(one.nominal[0])})`).join(", ");

function bufferOf(cell: CellValue): StandardBuffer {
  const text = wordIn(cell).replace(/^ph ?(?=\d)/, "");
  const number = parseNumber(text);
  const found = standardBuffers.find(
    (one) => one.name === text || (number.read === "number" && one.nominal.includes(number.value)),
  );
  return (
    found ??
    refuse(
      name,
      askInstead(String(cell), undefined, `write ${known}. For another buffer read the table on its bottle.`),
    )
  );
}

const buffer: Argument<StandardBuffer, "buffer"> = {
  name,
  help: "a buffer by name or by the pH on its bottle: phthalate (4, 4.01), phosphate (6.86), technical 7 (7), phosphate 7.4 (7.41), borax (9.18), carbonate (10, 10.01), lime (12.45)",
  excelType: "string",
  dimensionality: "scalar",
  optional: false,
  choices: names,
  read: (input) => {
    const cell = singleCell(name, input);
    if (isBlankOrZero(cell) || cell === "0") refuse(name, "is blank.");
    return bufferOf(cell);
  },
};

export const bufferPh = defineFunction({
  id: "BUFFERPH",
  category: "pH and the meter",
  summary: "pH of a standard buffer at a temperature, 0 to 60 °C.",
  arguments: [
    buffer,
    quantity("temperature", {
      kind: "temperature",
      help: "temperature of the buffer; 0 to 60 °C; technical 7, phosphate 7.4 and carbonate to 50 °C",
    }),
    system,
  ],
  result: { excelType: "number", dimensionality: "scalar", unit: "pH", help: "pH(S) of the standard" },
  examples: [
    {
      formula: '=BATH.BUFFERPH("phthalate","25 C")',
      cells: ["phthalate", "25 C"],
      result: 4.005,
      tolerance: 0.0005,
      source: "NBS Research Paper RP1690 (1946), 4.000 + 0.0000479 (t − 15)²",
    },
    {
      formula: '=BATH.BUFFERPH(10.01,"20 C")',
      cells: [10.01, "20 C"],
      result: 10.06,
      tolerance: 0.005,
      source: "manual MI 611-211 of a pH transmitter, Table 7, American buffers: 10.06 at 20 °C",
    },
    {
      formula: '=BATH.BUFFERPH(7,"20 C")',
      cells: [7, "20 C"],
      result: 7.016,
      tolerance: 0.005,
      source: "certified phosphate, 6.881 at 20 °C and 6.865 at 25 °C, moved to 7.000 at 25 °C",
    },
  ],
  notes: [
    "The table on the bottle wins. A bottle of 4.00 counts as phthalate (4.005 at 25 °C) and one of 10.00 as carbonate (10.012), which makers' own recipes follow within about 0.03 (from memory).",
    "technical 7 is the bottle of 7.00, no primary standard: the table that US bottles carry, from memory; within 0.005 it runs beside the certified phosphate.",
    "Technical 7, phosphate 7.4 and carbonate have no value here above 50 °C. Does not know age, mold or carbon dioxide in an open bottle.",
  ],
  source:
    "Certified pH(S) of NIST and IUPAC (Buck et al. 2002), cubic between their temperatures; technical 7 by the table on US bottles, from memory.",
  compute: ([standard, temperature]) => bufferPhAt(standard, temperature),
});
