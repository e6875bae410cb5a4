import { describe, expect, it } from "vitest";

import * as acid from "../../../src/core/chemistry/constants/acid-constants.ts";
import { debyeHueckel } from "../../../src/core/chemistry/constants/debye-hueckel.ts";
import type { EquilibriumConstant } from "../../../src/core/chemistry/constants/equilibrium-constant.ts";
import { logKAt } from "../../../src/core/chemistry/constants/equilibrium-constant.ts";
import { waterDensity } from "../../../src/core/chemistry/constants/water-density.ts";
import { waterIonization } from "../../../src/core/chemistry/constants/water-ionization.ts";
import { waterPermittivity } from "../../../src/core/chemistry/constants/water-permittivity.ts";
import { temperatureOf } from "./accuracy-of-ph.ts";
import { waterIonizationMarshallFranck } from "./marshall-franck.ts";
import type { TableRow } from "./read-table.ts";
import { readTable } from "./read-table.ts";

/** The tables hold four decimals. */
const printed = 1e-4;

function largest(rows: readonly TableRow[], off: (row: TableRow) => number): number {
  expect(rows.length).toBeGreaterThan(0);
  return Math.max(...rows.map((row) => Math.abs(off(row))));
}

describe("the constants over temperature", () => {
  const acidRows = readTable("acid-pK");
  const single: readonly (readonly [string, EquilibriumConstant])[] = [
    ["carbonic 1", acid.carbonicAcid],
    ["carbonic 2", acid.bicarbonate],
    ["phosphoric 2", acid.dihydrogenPhosphate],
    ["phosphoric 3", acid.hydrogenPhosphate],
    ["boric", acid.boricAcid],
    ["ethanolammonium", acid.ethanolammonium],
    ["citric 3", acid.hydrogenCitrate],
    ["silicic 2", acid.hydrogenSilicate],
  ];

  it.each(single)("reproduce the published function of %s from 0 to 80 °C", (column, constant) => {
    expect(largest(acidRows, (row) => logKAt(constant, temperatureOf(row)) - row.number(column))).toBeLessThanOrEqual(
      2 * printed,
    );
  });

  it("reproduce the published function of silicic acid's first step from 0 to 80 °C", () => {
    const first = (row: TableRow): number =>
      logKAt(acid.silicicAcid, temperatureOf(row)) - logKAt(acid.hydrogenSilicate, temperatureOf(row));
    expect(largest(acidRows, (row) => first(row) - row.number("silicic 1"))).toBeLessThanOrEqual(2 * printed);
  });

  it.each([
    ["phosphoric 2 Bates Acree", acid.dihydrogenPhosphate, 0.02],
    ["boric Manov", acid.boricAcid, 0.04],
    ["carbonic 2 Goldberg", acid.bicarbonate, 0.03],
  ] as const)("lie near the independent figures of %s", (column, constant, goal) => {
    expect(
      largest(readTable("measured-acid-pK"), (row) => logKAt(constant, temperatureOf(row)) - row.number(column)),
    ).toBeLessThanOrEqual(goal);
  });
});

describe("the properties of water", () => {
  const rows = readTable("water-properties");

  it("give Kell's density to the printed digits", () => {
    expect(
      largest(rows, (row) => waterDensity(temperatureOf(row)) * 1000 - row.number("densityKell")),
    ).toBeLessThanOrEqual(0.001);
  });

  it("give the density of IAPWS-95 to its rounding", () => {
    const rounded = rows.filter((row) => row.has("densityIapws"));
    expect(
      largest(rounded, (row) => waterDensity(temperatureOf(row)) * 1000 - row.number("densityIapws")),
    ).toBeLessThanOrEqual(0.015);
  });

  it("give the permittivity of Bradley and Pitzer to the printed digits", () => {
    expect(
      largest(rows, (row) => waterPermittivity(temperatureOf(row)) - row.number("permittivity")),
    ).toBeLessThanOrEqual(0.001);
  });

  it("give the Debye–Hückel slopes to the printed digits", () => {
    expect(largest(rows, (row) => debyeHueckel(temperatureOf(row)).slope - row.number("slope"))).toBeLessThanOrEqual(
      2e-5,
    );
    expect(
      largest(rows, (row) => debyeHueckel(temperatureOf(row)).sizeFactor - row.number("sizeFactor")),
    ).toBeLessThanOrEqual(2e-5);
  });
});

describe("the ionization of water", () => {
  const rows = readTable("water-pK");

  it("follows IAPWS R11-07 to the printed digits", () => {
    expect(largest(rows, (row) => waterIonization(temperatureOf(row)) - row.number("iapws"))).toBeLessThanOrEqual(
      printed,
    );
  });

  it("has a second source, Marshall and Franck, whose formula reproduces their printed table within 0.0015", () => {
    const printedRows = rows.filter((row) => row.has("marshallFranckTable"));
    const off = (row: TableRow): number =>
      waterIonizationMarshallFranck(temperatureOf(row)) - row.number("marshallFranckTable");
    expect(largest(printedRows, off)).toBeLessThanOrEqual(0.0015);
  });

  it("differs between the two sources by no more than 0.017 up to 80 °C", () => {
    const warm = rows.filter((row) => row.number("celsius") <= 80);
    const off = (row: TableRow): number =>
      waterIonization(temperatureOf(row)) - waterIonizationMarshallFranck(temperatureOf(row));
    expect(largest(warm, off)).toBeLessThanOrEqual(0.017);
  });
});
