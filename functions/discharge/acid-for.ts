import { acidForAlkalinity } from "../../src/core/discharge/acid-amount.ts";
import { system } from "../arguments/arguments.ts";
import { quantity } from "../arguments/quantity-argument.ts";
import { isBlankOrZero, numberFrom, singleCell } from "../arguments/read-cell.ts";
import type { Argument } from "../define-function.ts";
import { defineFunction } from "../define-function.ts";
import { acid, acidInSystem, acidUnit } from "./acid-arguments.ts";
import { climbsBack } from "./acid-notes.ts";

const purity: Argument<number | undefined, "purity"> = {
  name: "purity",
  help: "acid in the product, % by weight (31.45, not 0.3145); left out: dry acids 100, hydrochloric 31.45, sulfuric 93, acetic 100",
  unit: "% by weight",
  excelType: "any",
  dimensionality: "scalar",
  optional: true,
  read: (input) => {
    const cell = singleCell("purity", input);
    if (isBlankOrZero(cell)) return undefined;
    return numberFrom("purity", typeof cell === "string" ? cell.replace(/%\s*$/, "") : cell);
  },
};

export const acidFor = defineFunction({
  id: "ACIDFOR",
  category: "Discharge",
  summary: "Acid that takes up a titrated alkalinity: mass of a dry acid, volume of a liquid one.",
  arguments: [
    quantity("volume", { kind: "volume", help: "volume of the bath" }),
    quantity("alkalinity", {
      kind: "alkalinity",
      help: 'titrated alkalinity of the bath to the pH wanted, or text such as "320 mg/L"',
      bareUnit: "meq/L",
    }),
    acid,
    purity,
    system,
  ],
  result: {
    excelType: "number",
    dimensionality: "scalar",
    unit: acidUnit,
    help: "acid for the whole of it; add it in stages (ACIDSTAGES)",
  },
  examples: [
    {
      formula: '=BATH.ACIDFOR("459 L",6.4,"hydrochloric",31.45,"metric")',
      cells: ["459 L", 6.4, "hydrochloric", 31.45, "metric"],
      result: 0.2938,
      tolerance: 0.002,
      source: "volume × alkalinity / 10.0 N, the usual figure for 31.45 % hydrochloric acid",
    },
    {
      formula: '=BATH.ACIDFOR(1000,25.0025,"citric",100,"metric")',
      cells: [1000, 25.0025, "citric", 100, "metric"],
      result: 1.601,
      tolerance: 0.001,
      source: "1.601 lb of citric acid to the lb of sodium hydroxide, 64.04 / 39.997; 25.0025 eq is 1 kg of it",
    },
  ],
  notes: [
    climbsBack,
    "Takes every proton of the acid to count; near pH 8 only about 2.9 of citric acid's 3 do. Densities are of the acid at 20 °C.",
    "0.25 eq/L, a neat concentrate, would warm by 3.3 °C (55.8 kJ/eq), and faster than it mixes.",
  ],
  source:
    "Volume × alkalinity × equivalent weight / purity; liquids over their density (CRC and Perry's Handbook tables at 20 °C, from memory).",
  compute: ([volume, alkalinity, name, percent], call) =>
    acidInSystem(acidForAlkalinity(name, volume, alkalinity, percent), call),
});
