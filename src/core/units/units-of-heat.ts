import { britishThermalUnit, calorie, celsiusZero } from "./exact-constants.ts";
import type { UnitDefinition } from "./unit-definition.ts";
import { proportionalUnit as unit } from "./unit-definition.ts";

const si = "SI";
/** K */
export const fahrenheitDegree = 5 / 9;

export const unitsOfTemperature: readonly UnitDefinition[] = [
  unit("temperature", "K", "kelvin", 1, si, ["kelvin"]),
  {
    symbol: "°C",
    spellings: ["C", "ºC", "deg C", "degC", "degrees C", "celsius", "degrees celsius", "centigrade"],
    name: "degree Celsius",
    kind: "temperature",
    scale: { type: "shifted", factor: 1, offset: celsiusZero },
    definition: "K = °C + 273.15 exactly",
  },
  {
    symbol: "°F",
    spellings: ["F", "ºF", "deg F", "degF", "degrees F", "fahrenheit", "degrees fahrenheit"],
    name: "degree Fahrenheit",
    kind: "temperature",
    scale: { type: "shifted", factor: fahrenheitDegree, offset: 459.67 },
    definition: "K = (°F + 459.67) × 5/9 exactly",
  },
];

export const unitsOfTemperatureDifference: readonly UnitDefinition[] = [
  unit("temperature difference", "Δ°C", "Celsius degree of difference", 1, "1 K exactly", [
    "C°",
    "delta C",
    "ΔC",
    "C difference",
    "°C difference",
    "delta °C",
    "ΔK",
    "delta K",
  ]),
  unit("temperature difference", "Δ°F", "Fahrenheit degree of difference", fahrenheitDegree, "5/9 K exactly", [
    "F°",
    "delta F",
    "ΔF",
    "F difference",
    "°F difference",
    "delta °F",
  ]),
];

export const unitsOfEnergy: readonly UnitDefinition[] = [
  unit("energy", "J", "joule", 1, si, ["joule", "joules"]),
  unit("energy", "kJ", "kilojoule", 1000, si, ["kilojoule", "kilojoules"]),
  unit("energy", "kWh", "kilowatt hour", 3.6e6, "3600 s × 1000 W", ["kilowatt hour", "kilowatt hours"]),
  unit("energy", "Btu", "British thermal unit (International Table)", britishThermalUnit, "2326 J/kg × 1 lb exactly", [
    "British thermal unit",
  ]),
  unit("energy", "kcal", "kilocalorie (thermochemical)", 1000 * calorie, "4.184 J to the calorie exactly", [
    "kilocalorie",
  ]),
];

export const unitsOfPower: readonly UnitDefinition[] = [
  unit("power", "W", "watt", 1, si, ["watt", "watts"]),
  unit("power", "kW", "kilowatt", 1000, si, ["kilowatt", "kilowatts"]),
  unit("power", "Btu/h", "British thermal unit per hour", britishThermalUnit / 3600, "2326 J/kg × 1 lb in 3600 s", [
    "Btu/hr",
  ]),
];
