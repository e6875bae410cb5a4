import type { Composition } from "../../../src/core/chemistry/composition.ts";
import { composition } from "../../../src/core/chemistry/composition.ts";

/** The waters of the tables, mol/kg: reverse osmosis, 18 grains per gallon of hardness, the same softened. */
const waters: Readonly<Record<string, Composition>> = {
  RO: composition({ sodium: 0.2e-3, calcium: 0.01e-3, magnesium: 0.005e-3, chloride: 0.1e-3, carbonate: 0.16e-3 }),
  soft: composition({
    sodium: 7.1e-3,
    calcium: 0.02e-3,
    magnesium: 0.01e-3,
    chloride: 1.16e-3,
    sulfate: 1e-3,
    carbonate: 4.36e-3,
  }),
  hard: composition({
    sodium: 1e-3,
    calcium: 2.05e-3,
    magnesium: 1.03e-3,
    chloride: 1.16e-3,
    sulfate: 1e-3,
    carbonate: 4.36e-3,
  }),
};

export function waterNamed(name: string): Composition {
  const water = waters[name];
  if (water === undefined) throw new Error(`No water ${name}`);
  return water;
}
