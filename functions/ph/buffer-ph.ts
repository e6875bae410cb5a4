import { bufferPh as bufferPhAt } from "../../src/core/meter/buffer-ph.ts";
import type { StandardBuffer } from "../../src/core/meter/standard-buffers.ts";
import { standardBuffers } from "../../src/core/meter/standard-buffers.ts";
import { nearestWord } from "../../src/core/text/nearest-word.ts";
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
  const text = wordIn(cell);
  const number = parseNumber(text);
  const found = standardBuffers.find(
    (one) => one.name === text || (number.read === "number" && one.nominal.includes(number.value)),
  );
  return (
    found ??
    refuse(
      name,
      askInstead(
        String(cell),
        nearestWord(text, names),
        `write ${known}. For another buffer read the table on its bottle.`,
      ),
    )
  );
}

const buffer: Argument<StandardBuffer, "buffer"> = {
  name,
  help: "a primary standard by name or nominal pH: phthalate (4), phosphate (6.86), phosphate 7.4 (7.41), borax (9.18), carbonate (10.01), lime (12.45)",
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
  summary: "pH of a primary standard buffer at a temperature, 0 to 60 °C.",
  arguments: [
    buffer,
    quantity("temperature", {
      kind: "temperature",
      help: "temperature of the buffer; 0 to 60 °C, phosphate 7.4 and carbonate to 50 °C",
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
  ],
  notes: [
    "A maker's own 7.00 or 10.00 is another solution: its bottle's table wins. Does not know age, mold or carbon dioxide in an open bottle.",
    "Phosphate 7.4 and carbonate have no certified value above 50 °C, so none is given.",
  ],
  source: "Certified pH(S) of NIST and IUPAC (Buck et al. 2002), cubic between their temperatures.",
  compute: ([standard, temperature]) => bufferPhAt(standard, temperature),
});
