import { UcumLhcUtils } from "@lhncbc/ucum-lhc";
import Qty from "js-quantities";
import { unit as mathUnit } from "mathjs";

const ucum = UcumLhcUtils.getInstance();

/** A units package: what it calls our units, kind by kind, and how it converts. */
interface UnitPackage {
  readonly name: string;
  readonly units: Readonly<Record<string, Readonly<Record<string, string>>>>;
  readonly convert: (value: number, from: string, to: string) => number;
  /** Relative error of the units whose factors it carries rounded. */
  readonly rounded: Readonly<Record<string, number>>;
}

/** Units that are masses of calcium carbonate per volume. */
const asCalciumCarbonate = {
  "mg/L CaCO3": "mg/L",
  "g/L CaCO3": "g/L",
  gpg: "[gr]/[gal_us]",
  "°e": "[gr]/[gal_br]",
  "°fH": "cg/L",
};

/** UCUM, the Unified Code for Units of Measure: definitions as exact as ours, American and imperial. */
const ucumPackage: UnitPackage = {
  name: "@lhncbc/ucum-lhc",
  units: {
    length: { m: "m", cm: "cm", mm: "mm", in: "[in_i]", ft: "[ft_i]" },
    area: { "m²": "m2", "cm²": "cm2", "in²": "[sin_i]", "ft²": "[sft_i]" },
    volume: {
      "m³": "m3",
      L: "L",
      mL: "mL",
      "in³": "[cin_i]",
      "ft³": "[cft_i]",
      "US gal": "[gal_us]",
      "US qt": "[qt_us]",
      "US pt": "[pt_us]",
      "US cup": "[cup_us]",
      "US fl oz": "[foz_us]",
      "imperial gal": "[gal_br]",
      "imperial qt": "[qt_br]",
      "imperial pt": "[pt_br]",
      "imperial fl oz": "[foz_br]",
    },
    mass: { kg: "kg", g: "g", mg: "mg", lb: "[lb_av]", oz: "[oz_av]", grain: "[gr]" },
    temperature: { K: "K", "°C": "Cel", "°F": "[degF]" },
    energy: { J: "J", kJ: "kJ", kWh: "kW.h", Btu: "[Btu_IT]", kcal: "kcal_th" },
    power: { W: "W", kW: "kW", "Btu/h": "[Btu_IT]/h" },
    "amount per volume": {
      "kg/m³": "kg/m3",
      "g/L": "g/L",
      "mg/mL": "mg/mL",
      "mg/L": "mg/L",
      "g/mL": "g/mL",
      "oz/US gal": "[oz_av]/[gal_us]",
      "lb/US gal": "[lb_av]/[gal_us]",
      "oz/imperial gal": "[oz_av]/[gal_br]",
      "lb/imperial gal": "[lb_av]/[gal_br]",
    },
    hardness: asCalciumCarbonate,
    alkalinity: asCalciumCarbonate,
    strength: {
      fraction: "1",
      "%": "%",
      "mL/L": "mL/L",
      "US fl oz/US gal": "[foz_us]/[gal_us]",
      "imperial fl oz/imperial gal": "[foz_br]/[gal_br]",
    },
    conductivity: { "S/m": "S/m", "mS/cm": "mS/cm", "µS/cm": "uS/cm" },
  },
  convert: (value, from, to) => {
    const { status, toVal } = ucum.convertUnitTo(from, value, to);
    if (status !== "succeeded" || toVal === null) throw new RangeError(`${from} to ${to}`);
    return toVal;
  },
  rounded: {},
};

/** mathjs has American volumes only, no kilocalorie, and no word for a unit per unit but its own arithmetic. */
const mathPackage: UnitPackage = {
  name: "mathjs",
  units: {
    length: { m: "m", cm: "cm", mm: "mm", in: "in", ft: "ft" },
    area: { "m²": "m2", "cm²": "cm^2", "in²": "sqin", "ft²": "sqft" },
    volume: {
      "m³": "m3",
      L: "L",
      mL: "mL",
      "in³": "cuin",
      "ft³": "cuft",
      "US gal": "gallon",
      "US qt": "quart",
      "US pt": "pint",
      "US cup": "cup",
      "US fl oz": "floz",
    },
    mass: { kg: "kg", g: "g", mg: "mg", lb: "lbm", oz: "oz", grain: "grain" },
    temperature: { K: "K", "°C": "degC", "°F": "degF" },
    energy: { J: "J", kJ: "kJ", kWh: "kWh", Btu: "BTU" },
    power: { W: "W", kW: "kW", "Btu/h": "BTU/hour" },
    "amount per volume": {
      "kg/m³": "kg/m^3",
      "g/L": "g/L",
      "mg/mL": "mg/mL",
      "oz/US gal": "oz/gallon",
      "lb/US gal": "lbm/gallon",
    },
    conductivity: { "S/m": "S/m", "mS/cm": "mS/cm", "µS/cm": "uS/cm" },
  },
  convert: (value, from, to) => mathUnit(value, from).toNumber(to),
  rounded: {},
};

/** js-quantities carries American volumes to 8 or 9 figures, the ounce to 9 and the British thermal unit to 7. */
const quantitiesPackage: UnitPackage = {
  name: "js-quantities",
  units: {
    length: { m: "m", cm: "cm", mm: "mm", in: "in", ft: "ft" },
    area: { "m²": "m2", "cm²": "cm2", "in²": "in2", "ft²": "ft2" },
    volume: {
      "m³": "m3",
      L: "l",
      mL: "ml",
      "in³": "in3",
      "ft³": "ft3",
      "US gal": "gal",
      "US qt": "qt",
      "US pt": "pt",
      "US cup": "cup",
      "US fl oz": "floz",
    },
    mass: { kg: "kg", g: "g", mg: "mg", lb: "lb", oz: "oz", grain: "grain" },
    temperature: { K: "tempK", "°C": "tempC", "°F": "tempF" },
    "temperature difference": { "Δ°C": "degC", "Δ°F": "degF" },
    energy: { J: "J", kJ: "kJ", kWh: "kWh", Btu: "btu", kcal: "kcal" },
    power: { W: "W", kW: "kW", "Btu/h": "btu/h" },
    "amount per volume": {
      "kg/m³": "kg/m3",
      "g/L": "g/l",
      "mg/mL": "mg/ml",
      "oz/US gal": "oz/gal",
      "lb/US gal": "lb/gal",
    },
    conductivity: { "S/m": "S/m", "mS/cm": "mS/cm" },
  },
  convert: (value, from, to) => Qty(value, from).to(to).scalar,
  rounded: {
    "US gal": 5e-9,
    "US qt": 5e-9,
    "US pt": 5e-9,
    "US cup": 7e-9,
    "US fl oz": 5e-9,
    oz: 1e-9,
    Btu: 1.5e-7,
    "Btu/h": 1.5e-7,
    "oz/US gal": 6e-9,
    "lb/US gal": 5e-9,
  },
};

export const unitPackages: readonly UnitPackage[] = [ucumPackage, mathPackage, quantitiesPackage];
