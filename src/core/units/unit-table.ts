import type { UnitDefinition } from "./unit-definition.ts";
import { unitsOfEnergy, unitsOfPower, unitsOfTemperature, unitsOfTemperatureDifference } from "./units-of-heat.ts";
import {
  unitsOfAlkalinity,
  unitsOfHardness,
  unitsOfMass,
  unitsOfMassPerVolume,
  unitsOfStrength,
} from "./units-of-matter.ts";
import { unitsOfArea, unitsOfLength, unitsOfVolume } from "./units-of-space.ts";
import { unitsOfConductivity, unitsOfPricePerVolume } from "./units-of-trade.ts";

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
