import { acidForAlkalinity } from "../../src/core/discharge/acid-amount.ts";
import { system } from "../arguments/arguments.ts";
import { quantity } from "../arguments/quantity-argument.ts";
import { defineFunction } from "../define-function.ts";
import { acid, acidInSystem, acidUnit, purity } from "./acid-arguments.ts";
import { climbsBack, neutralizingHeats } from "./acid-notes.ts";
import { alkalinityToTarget } from "./bath-alkalinity.ts";

export const acidFor = defineFunction({
  id: "ACIDFOR",
  category: "Discharge",
  summary: "Acid that takes up a titrated alkalinity: mass of a dry acid, volume of a liquid one.",
  arguments: [
    quantity("volume", { kind: "volume", help: "volume of the bath" }),
    alkalinityToTarget,
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
      formula: '=BATH.ACIDFOR("459 L","6.4 meq/L","hydrochloric",31.45,"metric")',
      cells: ["459 L", "6.4 meq/L", "hydrochloric", 31.45, "metric"],
      result: 0.2938,
      tolerance: 0.002,
      source: "volume × alkalinity / 10.0 N, the usual figure for 31.45 % hydrochloric acid",
    },
    {
      formula: '=BATH.ACIDFOR(1000,"25.0025 meq/L","citric",100,"metric")',
      cells: [1000, "25.0025 meq/L", "citric", 100, "metric"],
      result: 1.601,
      tolerance: 0.001,
      source: "1.601 lb of citric acid to the lb of sodium hydroxide, 64.04 / 39.997; 25.0025 eq is 1 kg of it",
    },
    {
      formula: '=BATH.ACIDFOR(121,4203.65,"citric")',
      cells: [121, 4203.65, "citric"],
      result: 5.43,
      tolerance: 0.005,
      source:
        "by hand: 458.03 L × 0.084 eq/L × 64.04 g, in lb; 4203.65 mg/L is what ALKALINITY(8.4,0.1,10) gives for 0.084 eq/L",
    },
  ],
  notes: [
    climbsBack,
    "Takes every proton of the acid to count; near pH 8 only about 2.9 of citric acid's 3 do. Densities are of the acid at 20 °C.",
    neutralizingHeats,
    "Acetic acid is sold from vinegar (5 %) to glacial (100 %, which burns and is flammable): write its percentage. Prefer citric.",
  ],
  source:
    "Volume × alkalinity × equivalent weight / purity; liquids over their density (tables of the CRC and Perry's handbooks at 20 °C: sulfuric from 60 % on and acetic at 60, 80 and 90 % from memory, the others as public copies have them within 0.2 %).",
  compute: ([volume, alkalinity, name, percent], call) =>
    acidInSystem(acidForAlkalinity(name, volume, alkalinity, percent), call),
});
