import { unknownBuilder } from "../../../src/core/bath/model/builder.ts";
import { estimateTopUp } from "../../../src/core/bath/model/estimate-top-up.ts";
import { waterFromTests } from "../../../src/core/bath/model/water.ts";
import { equivalentsPerKilogram, ph } from "../../../src/core/units/quantity.ts";
import { accuracyOfBaths } from "./accuracy-of-baths.ts";
import type { PotassiumHydroxideError } from "./accuracy-of-ph.ts";
import { accuracyOfPH, potassiumHydroxideErrors, temperatureOf } from "./accuracy-of-ph.ts";
import { accuracyOfTopUps } from "./accuracy-of-top-ups.ts";
import type { AccuracyRow } from "./accuracy-row.ts";
import type { ConstantCounts } from "./constants-table.ts";
import { constantRows, countConstants } from "./constants-table.ts";
import { readTable } from "./read-table.ts";
import type { DatabaseRow } from "./unmodified-databases.ts";
import { databaseRows } from "./unmodified-databases.ts";
import { waterNamed } from "./waters.ts";

/** How often, and how tightly, the top-up range holds the answer for a concentrate nobody has described. */
interface RangeCoverage {
  readonly rows: number;
  readonly contained: number;
  /** Width of the range, as a share of the opening dose. */
  readonly smallestWidth: number;
  readonly largestWidth: number;
  /** How far the best figure was off, as a share of the opening dose. */
  readonly largestMiss: number;
}

export interface AchievedAccuracy {
  readonly figures: readonly AccuracyRow[];
  readonly coverage: RangeCoverage;
  readonly databases: readonly DatabaseRow[];
  readonly constants: ConstantCounts;
  readonly potassiumHydroxide: readonly PotassiumHydroxideError[];
}

function rangeCoverage(): RangeCoverage {
  const rows = readTable("top-ups").filter((row) => row.number("targetPH") === row.number("openingPH"));
  const cases = rows.map((row) => {
    const water = waterFromTests({ alkalinity: equivalentsPerKilogram(waterNamed(row.text("water")).carbonate) });
    const baseline = ph(row.number("openingPH"));
    const question = { baseline, temperature: temperatureOf(row), builder: unknownBuilder, water };
    return { ...estimateTopUp(question, ph(row.number("pHAfterLoss"))), needed: row.number("shareNeeded") };
  });
  const widths = cases.map(({ low, high }) => high - low);
  return {
    rows: cases.length,
    contained: cases.filter(({ low, high, needed }) => low <= needed && needed <= high).length,
    smallestWidth: Math.min(...widths),
    largestWidth: Math.max(...widths),
    largestMiss: Math.max(...cases.map(({ best, needed }) => Math.abs(best - needed))),
  };
}

/** Every figure that says how far to trust the chemistry, measured now. */
export function achievedAccuracy(): AchievedAccuracy {
  return {
    figures: [...accuracyOfPH(), ...accuracyOfTopUps(), ...accuracyOfBaths()],
    coverage: rangeCoverage(),
    databases: databaseRows(),
    constants: countConstants(constantRows),
    potassiumHydroxide: potassiumHydroxideErrors(),
  };
}
