import { imperialGallon, inch, usGallon } from "./exact-constants.ts";
import type { UnitDefinition } from "./unit-definition.ts";
import { proportionalUnit as unit } from "./unit-definition.ts";

const si = "SI";
const fromInch = "international inch, 25.4 mm exactly";
const fromUsGallon = "US gallon, 231 cubic inches exactly";
const fromImperialGallon = "imperial gallon, 4.54609 L exactly (Weights and Measures Act 1985)";

export const unitsOfLength: readonly UnitDefinition[] = [
  unit("length", "m", "meter", 1, si, ["meter", "meters", "metre", "metres"]),
  unit("length", "cm", "centimeter", 0.01, si, ["centimeter", "centimeters", "centimetre", "centimetres"]),
  unit("length", "mm", "millimeter", 0.001, si, ["millimeter", "millimeters", "millimetre", "millimetres"]),
  unit("length", "in", "inch", inch, fromInch, ["inch", "inches", "in.", '"', "″"]),
  unit("length", "ft", "foot", 12 * inch, fromInch, ["foot", "feet", "ft.", "'", "′"]),
];

export const unitsOfArea: readonly UnitDefinition[] = [
  unit("area", "m²", "square meter", 1, si, ["m2", "sq m", "square meter", "square meters"]),
  unit("area", "cm²", "square centimeter", 1e-4, si, ["cm2", "sq cm"]),
  unit("area", "in²", "square inch", inch ** 2, fromInch, ["in2", "sq in", "square inch", "square inches"]),
  unit("area", "ft²", "square foot", (12 * inch) ** 2, fromInch, ["ft2", "sq ft", "square foot", "square feet"]),
];

export const unitsOfVolume: readonly UnitDefinition[] = [
  unit("volume", "m³", "cubic meter", 1, si, ["m3", "cubic meter", "cubic meters"]),
  unit("volume", "L", "liter", 0.001, si, ["liter", "liters", "litre", "litres", "ltr"]),
  unit("volume", "mL", "milliliter", 1e-6, si, [
    "milliliter",
    "milliliters",
    "millilitre",
    "millilitres",
    "cc",
    "cm3",
    "cm³",
  ]),
  unit("volume", "US gal", "US gallon", usGallon, fromUsGallon, ["gal US", "gal (US)", "US gallon", "US gallons"]),
  unit("volume", "US qt", "US quart", usGallon / 4, fromUsGallon, ["US quart", "US quarts"]),
  unit("volume", "US pt", "US pint", usGallon / 8, fromUsGallon, ["US pint", "US pints"]),
  unit("volume", "US cup", "US cup", usGallon / 16, fromUsGallon, ["US cups"]),
  unit("volume", "US fl oz", "US fluid ounce", usGallon / 128, fromUsGallon, ["US fluid ounce", "US fluid ounces"]),
  unit("volume", "imperial gal", "imperial gallon", imperialGallon, fromImperialGallon, [
    "imp gal",
    "gal imp",
    "UK gal",
    "gal UK",
    "imperial gallon",
    "imperial gallons",
  ]),
  unit("volume", "imperial qt", "imperial quart", imperialGallon / 4, fromImperialGallon, [
    "imp qt",
    "UK qt",
    "imperial quart",
  ]),
  unit("volume", "imperial pt", "imperial pint", imperialGallon / 8, fromImperialGallon, [
    "imp pt",
    "UK pt",
    "imperial pint",
  ]),
  unit("volume", "imperial fl oz", "imperial fluid ounce", imperialGallon / 160, fromImperialGallon, [
    "imp fl oz",
    "UK fl oz",
    "imperial fluid ounce",
    "imperial fluid ounces",
  ]),
  unit("volume", "in³", "cubic inch", inch ** 3, fromInch, ["in3", "cu in", "cubic inch", "cubic inches"]),
  unit("volume", "ft³", "cubic foot", (12 * inch) ** 3, fromInch, ["ft3", "cu ft", "cubic foot", "cubic feet"]),
];
