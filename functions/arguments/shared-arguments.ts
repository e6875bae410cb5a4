/** Arguments that several functions take under one name and meaning. */
import { usualDrop, usualHouseShare, usualMeterAccuracy, usualTolerance } from "../../src/core/bath/common-practice.ts";
import { optionalNumber, phReading } from "./arguments.ts";
import { optionalFraction } from "./fraction-argument.ts";
import { optionalQuantity } from "./quantity-argument.ts";

export const baseline = phReading("baseline", "the bath's baseline pH, 0 to 14.5");

export const drop = optionalNumber(
  "drop",
  "fall in pH at which a top-up is due; 0.5 if left out (common practice, no source)",
  "pH",
  usualDrop,
);

export const tolerance = optionalNumber(
  "tolerance",
  "largest difference that counts as recovered; 0.1 if left out (common practice, no source)",
  "pH",
  usualTolerance,
);

export const meterAccuracy = optionalNumber(
  "meter_accuracy",
  "how far the meter may be off, either way; 0.05 if left out (common practice, no source)",
  "pH",
  usualMeterAccuracy,
);

export const houseShare = optionalFraction(
  "house_share",
  'largest single addition as a share of the opening dose, such as 0.25 or "25%"; 1/3 if left out (common practice, no source)',
  usualHouseShare,
);

export const waterAlkalinity = optionalQuantity("alkalinity", {
  kind: "alkalinity",
  help: 'alkalinity of the water, up to 20 with its unit, such as "4.8 meq/L"; left out: taken as pure water, ranges up to 200 mg/L',
});

export const baselineTemperature = optionalQuantity("baseline_temperature", {
  kind: "temperature",
  help: "temperature at which the baseline was read",
  ofSample: true,
});

const ofReading = {
  kind: "temperature",
  help: "temperature of the reading; give both temperatures or neither",
} as const;

export const readingTemperature = optionalQuantity("reading_temperature", { ...ofReading, ofSample: true });

/** Of a reading that is judged: the pH tells which scale a bare number can be on. */
export const judgedTemperature = optionalQuantity("reading_temperature", ofReading);
