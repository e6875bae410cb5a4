import {
  grain,
  imperialGallon,
  molarMassCalciumCarbonate,
  molarMassCalciumOxide,
  pound,
  usGallon,
} from "./exact-constants.ts";
import type { QuantityKind } from "./quantity.ts";
import type { UnitDefinition } from "./unit-definition.ts";
import { proportionalUnit as unit } from "./unit-definition.ts";

const si = "SI";
const fromPound = "international pound, 0.45359237 kg exactly";
const fromGrainPerUsGallon = "1 grain (1/7000 lb) per US gallon, CaCO3 100.0869 g/mol";
const fromGrainPerImperialGallon = "1 grain (1/7000 lb) per imperial gallon, CaCO3 100.0869 g/mol";
const gram = 0.001; // kg

export const unitsOfMass: readonly UnitDefinition[] = [
  unit("mass", "kg", "kilogram", 1, si, ["kilogram", "kilograms"]),
  unit("mass", "g", "gram", gram, si, ["gram", "grams"]),
  unit("mass", "mg", "milligram", 1e-6, si, ["milligram", "milligrams"]),
  unit("mass", "lb", "pound", pound, fromPound, ["lbs", "pound", "pounds"]),
  unit("mass", "oz", "ounce (weight)", pound / 16, fromPound, ["oz av", "ounce", "ounces", "oz wt"]),
  unit("mass", "grain", "grain", grain, fromPound, ["grains", "gr"]),
];

/** Units of calcium-carbonate equivalents; one mole of calcium carbonate is `valence` of the kind's SI amount. */
function calciumCarbonateUnits(kind: QuantityKind, valence: number): readonly UnitDefinition[] {
  const perKilogram = valence / molarMassCalciumCarbonate;
  return [
    unit(kind, "mg/L CaCO3", "milligram per liter as calcium carbonate", gram * perKilogram, "CaCO3 100.0869 g/mol", [
      "mg/L as CaCO3",
      "mg/L",
      "mg/L CaCO₃",
      "ppm",
      "ppm CaCO3",
      "ppm as CaCO3",
    ]),
    unit(kind, "g/L CaCO3", "gram per liter as calcium carbonate", perKilogram, "CaCO3 100.0869 g/mol", [
      "g/L as CaCO3",
    ]),
    unit(kind, "gpg", "grain per US gallon", (grain / usGallon) * perKilogram, fromGrainPerUsGallon, [
      "gpg US",
      "US gpg",
      "grains/gal",
      "grains per gallon",
      "gr/gal",
      "grain per US gallon",
      "grains per US gallon",
    ]),
    unit(
      kind,
      "°e",
      "degree Clark (grain per imperial gallon)",
      (grain / imperialGallon) * perKilogram,
      fromGrainPerImperialGallon,
      ["°Clark", "deg Clark", "Clark", "gpg imperial", "imperial gpg", "degree Clark"],
    ),
    unit(
      kind,
      "°dH",
      "German degree",
      (10 * gram * valence) / molarMassCalciumOxide,
      "10 mg CaO per liter, CaO 56.077 g/mol",
      ["dH", "°d", "deg dH", "dGH", "dKH", "°dKH"],
    ),
    unit(kind, "°fH", "French degree", 10 * gram * perKilogram, "10 mg CaCO3 per liter", ["fH", "deg fH"]),
    unit(kind, "meq/L", "milliequivalent per liter", valence / 2, "half a mole of calcium carbonate", [
      "mval/L",
      "mEq/L",
      "mN",
    ]),
  ];
}

export const unitsOfHardness: readonly UnitDefinition[] = [
  ...calciumCarbonateUnits("hardness", 1),
  unit("hardness", "mmol/L", "millimole of calcium and magnesium per liter", 1, si, ["mol/m3", "mol/m³"]),
];

export const unitsOfAlkalinity: readonly UnitDefinition[] = [
  ...calciumCarbonateUnits("alkalinity", 2),
  unit("alkalinity", "eq/L", "equivalent per liter", 1000, si, ["N", "val/L", "normal"]),
];

export const unitsOfMassPerVolume: readonly UnitDefinition[] = [
  unit("amount per volume", "kg/m³", "kilogram per cubic meter", 1, si, ["kg/m3"]),
  unit("amount per volume", "g/L", "gram per liter", 1, si, ["grams per liter"]),
  unit("amount per volume", "mg/mL", "milligram per milliliter", 1, si),
  unit("amount per volume", "mg/L", "milligram per liter", gram, si, ["ppm", "g/m3"]),
  unit("amount per volume", "g/mL", "gram per milliliter", 1000, si, ["kg/L", "g/cm3", "g/cm³"]),
  unit(
    "amount per volume",
    "oz/US gal",
    "ounce (weight) per US gallon",
    pound / 16 / usGallon,
    `${fromPound}; US gallon, 231 cubic inches`,
  ),
  unit(
    "amount per volume",
    "lb/US gal",
    "pound per US gallon",
    pound / usGallon,
    `${fromPound}; US gallon, 231 cubic inches`,
  ),
  unit(
    "amount per volume",
    "oz/imperial gal",
    "ounce (weight) per imperial gallon",
    pound / 16 / imperialGallon,
    `${fromPound}; imperial gallon, 4.54609 L`,
  ),
  unit(
    "amount per volume",
    "lb/imperial gal",
    "pound per imperial gallon",
    pound / imperialGallon,
    `${fromPound}; imperial gallon, 4.54609 L`,
  ),
];

export const unitsOfStrength: readonly UnitDefinition[] = [
  unit("strength", "fraction", "volume fraction of the finished bath", 1, "ratio of volumes", ["v/v", "L/L"]),
  unit("strength", "%", "percent by volume of the finished bath", 0.01, "1/100", ["percent", "% v/v", "vol%"]),
  unit("strength", "mL/L", "milliliter per liter of finished bath", 0.001, "1/1000", ["L/m3"]),
  unit(
    "strength",
    "US fl oz/US gal",
    "US fluid ounce per US gallon of finished bath",
    1 / 128,
    "128 US fluid ounces to the US gallon",
  ),
  unit(
    "strength",
    "imperial fl oz/imperial gal",
    "imperial fluid ounce per imperial gallon of finished bath",
    1 / 160,
    "160 imperial fluid ounces to the imperial gallon",
  ),
  {
    symbol: "parts",
    spellings: ["1+N", "parts water"],
    name: "N of 1+N: parts of water to one part of concentrate",
    kind: "strength",
    scale: { type: "parts" },
    definition: "fraction = 1/(1 + N)",
  },
];
