import { expect, it } from "vitest";

import { unknownBuilder } from "../../../src/core/bath/model/builder.ts";
import { estimateTopUp } from "../../../src/core/bath/model/estimate-top-up.ts";
import type { Loss } from "../../../src/core/bath/model/loss.ts";
import { waterFromTests } from "../../../src/core/bath/model/water.ts";
import type { Composition } from "../../../src/core/chemistry/composition.ts";
import { equivalentsPerKilogram, kelvin, ph } from "../../../src/core/units/quantity.ts";
import { builderNamed } from "./recipes.ts";
import { waterNamed } from "./waters.ts";

/** What a titration of the water finds: its metals less its strong acids. */
function titrated(water: Composition): number {
  return water.sodium + 2 * (water.calcium + water.magnesium) - water.chloride - 2 * water.sulfate;
}

const losses: readonly Loss[] = ["acid", "dilution", "carbon dioxide"];

const baths = ["R1", "R2", "R3", "N"].flatMap((recipe) =>
  ["RO", "soft", "hard"].flatMap((water) =>
    [11, 11.3].flatMap((baseline) =>
      [25, 45, 60].flatMap((celsius) =>
        losses.flatMap((loss) =>
          [0.01, 0.03].map((openingShare) => ({ recipe, water, baseline, celsius, loss, openingShare })),
        ),
      ),
    ),
  ),
);

it("contains the top-up of a bath the engine knows in full when it is told the titrated alkalinity alone", () => {
  const contained = baths.filter(({ recipe, water, baseline, celsius, loss, openingShare }) => {
    const common = { baseline: ph(baseline), temperature: kelvin(celsius + 273.15) };
    const reading = ph(baseline - 0.5);
    const likely = waterNamed(water);
    const full = { ...common, builder: builderNamed(recipe), water: { likely }, openingShare };
    const needed = estimateTopUp(full, reading, loss).best;
    const tested = waterFromTests({ alkalinity: equivalentsPerKilogram(titrated(likely)) });
    const { low, high } = estimateTopUp({ ...common, builder: unknownBuilder, water: tested }, reading);
    return low <= needed && needed <= high;
  });
  expect(contained.length / baths.length).toBeGreaterThanOrEqual(0.95);
});
