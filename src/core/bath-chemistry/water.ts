import { DomainError } from "../domain-error.ts";
import { composition } from "../solution/composition.ts";
import type { Composition } from "../solution/composition.ts";
import type { EquivalentsPerKilogram } from "../solution/quantities.ts";

export interface WaterTests {
  readonly alkalinity: EquivalentsPerKilogram;
  readonly hardness?: EquivalentsPerKilogram;
}

/** Of the hardness of natural waters most is calcium; common practice, no source. */
const calciumShare = 2 / 3;

/** Beyond this it is no supply water, eq/kg. */
const most = 0.1;

function check(value: number, name: string): void {
  if (value >= 0 && value <= most) return;
  throw new DomainError("invalid", `${name} of the water is ${String(value)} equivalents per kg; allowed is 0 to ${most}`);
}

/**
 * Water as its two tests describe it: bicarbonate at its alkalinity with the hardness's calcium and
 * magnesium, then sodium; hardness beyond the alkalinity comes with chloride. Without a hardness test it
 * is softened water: sodium bicarbonate.
 */
export function waterFromTests(tests: WaterTests): Composition {
  const hardness = tests.hardness ?? 0;
  check(tests.alkalinity, "Alkalinity");
  check(hardness, "Hardness");
  return composition({
    carbonate: tests.alkalinity,
    calcium: (hardness * calciumShare) / 2,
    magnesium: (hardness * (1 - calciumShare)) / 2,
    sodium: Math.max(0, tests.alkalinity - hardness),
    chloride: Math.max(0, hardness - tests.alkalinity),
  });
}
