import type { Composition } from "../../chemistry/composition.ts";
import { composition } from "../../chemistry/composition.ts";
import { DomainError } from "../../limits/domain-error.ts";
import type { EquivalentsPerKilogram } from "../../units/quantity.ts";

export interface WaterTests {
  readonly alkalinity: EquivalentsPerKilogram;
  readonly hardness?: EquivalentsPerKilogram;
}

/** The water of a bath, as far as it is known. */
export interface Water {
  readonly likely: Composition;
  /** The other end of what the tests leave open; absent where they leave nothing open. */
  readonly otherwise?: Composition;
}

/** Of the hardness of natural waters most is calcium; common practice, no source. */
const calciumShare = 2 / 3;

/** Beyond this it is no supply water, eq/kg. */
const most = 0.21;

function check(value: number, name: string): void {
  if (value >= 0 && value <= most) return;
  throw new DomainError(
    "invalid",
    `${name} of the water is ${String(value)} equivalents per kg; allowed is 0 to ${most}`,
  );
}

/**
 * What an unsoftened supply may hold besides its alkalinity, per equivalent of it: more hardness than
 * alkalinity, and the free carbon dioxide of a water at about pH 7.2. Common figures, no source.
 */
const hardnessPerAlkalinity = 1.5;
const carbonDioxidePerAlkalinity = 1 / 7;

/** Calcium and magnesium with bicarbonate, then with chloride; alkalinity beyond the hardness is sodium's. */
function dissolved(alkalinity: number, hardness: number, carbonDioxide: number): Composition {
  return composition({
    carbonate: alkalinity + carbonDioxide,
    calcium: (hardness * calciumShare) / 2,
    magnesium: (hardness * (1 - calciumShare)) / 2,
    sodium: Math.max(0, alkalinity - hardness),
    chloride: Math.max(0, hardness - alkalinity),
  });
}

/**
 * Water as its two tests describe it. Without a hardness test it is most likely softened, sodium
 * bicarbonate, but may be a hard supply; free carbon dioxide is open either way. Throws `invalid` for
 * figures that no supply has.
 */
export function waterFromTests({ alkalinity, hardness }: WaterTests): Required<Water> {
  check(alkalinity, "Alkalinity");
  if (hardness !== undefined) check(hardness, "Hardness");
  return {
    likely: dissolved(alkalinity, hardness ?? 0, 0),
    otherwise: dissolved(
      alkalinity,
      hardness ?? hardnessPerAlkalinity * alkalinity,
      carbonDioxidePerAlkalinity * alkalinity,
    ),
  };
}

/** Calcium and magnesium of a water, mol/kg. */
export function hardnessOf({ calcium, magnesium }: Composition): number {
  return calcium + magnesium;
}

/**
 * The water once silicate has bound a share of its hardness, as ion pairs or as a solid, neither of which the
 * equilibria know: each calcium or magnesium ion that joins H3SiO4- sets a hydrogen ion free, so that one sodium ion
 * stands in its place.
 */
export function boundBySilicate(water: Composition, share: number): Composition {
  return {
    ...water,
    calcium: (1 - share) * water.calcium,
    magnesium: (1 - share) * water.magnesium,
    sodium: water.sodium + share * hardnessOf(water),
  };
}
