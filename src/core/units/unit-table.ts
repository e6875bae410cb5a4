import { unitsOfArea, unitsOfLength, unitsOfVolume } from "./units-of-space.ts";
import { unitsOfAlkalinity, unitsOfHardness, unitsOfMass, unitsOfMassPerVolume, unitsOfStrength } from "./units-of-matter.ts";
import { unitsOfEnergy, unitsOfPower, unitsOfTemperature, unitsOfTemperatureDifference } from "./units-of-heat.ts";
import { unitsOfConductivity, unitsOfPricePerVolume } from "./units-of-trade.ts";
import type { UnitDefinition } from "./unit-definition.ts";

/** Every unit that is read or written. Where two kinds share a word, the earlier kind is tried first. */
export const unitTable: readonly UnitDefinition[] = [
  ...unitsOfLength,
  ...unitsOfArea,
  ...unitsOfVolume,
  ...unitsOfMass,
  ...unitsOfTemperature,
  ...unitsOfTemperatureDifference,
  ...unitsOfHardness,
  ...unitsOfAlkalinity,
  ...unitsOfMassPerVolume,
  ...unitsOfStrength,
  ...unitsOfEnergy,
  ...unitsOfPower,
  ...unitsOfPricePerVolume,
  ...unitsOfConductivity,
];
