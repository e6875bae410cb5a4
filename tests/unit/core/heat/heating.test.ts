import { describe, expect, it } from "vitest";

import { heatingEnergy, heatingTime } from "../../../../src/core/heat/heating.ts";
import { waterEnthalpy } from "../../../../src/core/heat/water-enthalpy.ts";
import { OutOfRange } from "../../../../src/core/limits/domain.ts";
import { britishThermalUnit, usGallon } from "../../../../src/core/units/exact-constants.ts";
import { cubicMeters, joules, kelvin, watts } from "../../../../src/core/units/quantity.ts";

const celsius = (degrees: number) => kelvin(degrees + 273.15);
const fahrenheit = (degrees: number) => kelvin(((degrees + 459.67) * 5) / 9);
const gallons = (count: number) => cubicMeters(count * usGallon);
const hours = (energy: number, kilowatts: number, efficiency = 1): number =>
  heatingTime(joules(energy), watts(1000 * kilowatts), efficiency) / 3600;

describe("the heat content of water", () => {
  // Saturated liquid, J/(g K), CoolProp 8.0.0 (IAPWS-95).
  it.each([
    [10, 4.1955],
    [20, 4.1844],
    [40, 4.1796],
    [60, 4.1851],
    [80, 4.1969],
  ])("grows at %d °C by a specific heat of %d J/(g K)", (degrees, specificHeat) => {
    const slope = (waterEnthalpy(celsius(degrees + 10)) - waterEnthalpy(celsius(degrees - 10))) / 20;
    expect(Math.abs(slope / 1000 - specificHeat)).toBeLessThanOrEqual(0.003);
  });

  // kJ/kg from 25 °C, of the same library.
  it.each([
    [12, 50.409 - 104.829],
    [37, 154.993 - 104.829],
    [73, 305.642 - 104.829],
  ])("differs at %d °C by %d kJ/kg from 25 °C, between the table's points", (degrees, difference) => {
    expect(
      Math.abs((waterEnthalpy(celsius(degrees)) - waterEnthalpy(celsius(25))) / 1000 - difference),
    ).toBeLessThanOrEqual(0.02);
  });
});

describe("the energy of a heat-up", () => {
  it("is within 0.1 % of 200 290 Btu for 300 gallons from 40 to 120 °F, which takes 8.345404 lb/gal and 1 Btu/lb °F", () => {
    const britishUnits = heatingEnergy(gallons(300), fahrenheit(40), fahrenheit(120)) / britishThermalUnit;
    expect(Math.abs(britishUnits / 200_290 - 1)).toBeLessThanOrEqual(0.001);
  });

  it("adds up over its parts but for the lightness of warm water", () => {
    const [one, whole] = [cubicMeters(1), heatingEnergy(cubicMeters(1), celsius(10), celsius(60))];
    const parts = heatingEnergy(one, celsius(10), celsius(30)) + heatingEnergy(one, celsius(30), celsius(60));
    expect(Math.abs(parts / whole - 1)).toBeLessThanOrEqual(0.004);
  });

  it.each([
    [0, 10, 60],
    [1, -1, 60],
    [1, 10, 101],
    [1, 60, 60],
    [1, 60, 10],
  ])("is refused for %d m³ from %d to %d °C", (volume, from, to) => {
    expect(() => heatingEnergy(cubicMeters(volume), celsius(from), celsius(to))).toThrow(OutOfRange);
  });
});

describe("the time of a heat-up", () => {
  it.each([
    ["20 016 Btu at 4.5 kW", 20_016 * britishThermalUnit, 4.5, 1.3],
    ["1.867 kWh at 3.6 kW", 1.867 * 3.6e6, 3.6, 0.52],
  ])("of %s is as printed", (_what, energy, kilowatts, printed) => {
    expect(Math.abs(hours(energy, kilowatts) - printed)).toBeLessThanOrEqual(0.005);
  });

  it("of 80 gallons by 60 °F at 5.5 kW is the printed 2.13 h", () => {
    expect(
      Math.abs(hours(heatingEnergy(gallons(80), fahrenheit(60), fahrenheit(120)), 5.5) - 2.13),
    ).toBeLessThanOrEqual(0.005);
  });

  it("doubles where half of the power is lost", () => {
    expect(hours(1e6, 2, 0.5)).toBeCloseTo(2 * hours(1e6, 2), 12);
  });

  it.each([
    [0, 1],
    [-1, 1],
    [1001, 1],
    [5, 0],
    [5, 1.1],
  ])("is refused with %d kW at an efficiency of %d", (kilowatts, efficiency) => {
    expect(() => hours(1e6, kilowatts, efficiency)).toThrow(OutOfRange);
  });
});
