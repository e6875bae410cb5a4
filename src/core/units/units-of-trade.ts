import { imperialGallon, usGallon } from "./exact-constants.ts";
import type { UnitDefinition } from "./unit-definition.ts";
import { proportionalUnit as unit } from "./unit-definition.ts";

const anyCurrency = "any one currency";

export const unitsOfPricePerVolume: readonly UnitDefinition[] = [
  unit("price per volume", "/m³", "price per cubic meter", 1, anyCurrency, ["per m3", "/m3", "$/m3"]),
  unit("price per volume", "/L", "price per liter", 1000, anyCurrency, ["per L", "$/L", "per liter", "per litre"]),
  unit("price per volume", "/US gal", "price per US gallon", 1 / usGallon, anyCurrency, [
    "per US gal",
    "$/US gal",
    "per US gallon",
  ]),
  unit("price per volume", "/US fl oz", "price per US fluid ounce", 128 / usGallon, anyCurrency, [
    "per US fl oz",
    "$/US fl oz",
  ]),
  unit("price per volume", "/imperial gal", "price per imperial gallon", 1 / imperialGallon, anyCurrency, [
    "per imperial gal",
    "$/imperial gal",
    "per imperial gallon",
  ]),
];

export const unitsOfConductivity: readonly UnitDefinition[] = [
  unit("conductivity", "S/m", "siemens per meter", 1, "SI"),
  unit("conductivity", "mS/cm", "millisiemens per centimeter", 0.1, "SI", ["mS"]),
  unit("conductivity", "µS/cm", "microsiemens per centimeter", 1e-4, "SI", [
    "uS/cm",
    "μS/cm",
    "µS",
    "uS",
    "micromho/cm",
  ]),
];
