/**
 * The worksheet functions as a shop would ask them, with the concentrate's data sheet and a titrated water,
 * against baths computed with PHREEQC (README). Free carbon dioxide, hardness and volume of the dose, which a
 * shop cannot give here, are in the tables and count as error.
 */
import { describe, expect, it } from "vitest";

import type { CellInput } from "../../../functions/define-function.ts";
import { evaluate } from "../../../functions/evaluate.ts";
import { findFunction } from "../../../functions/find-function.ts";
import { questionOf } from "../../../src/core/bath/bath.ts";
import { acidNames } from "../../../src/core/bath/model/acid.ts";
import { unknownBuilder } from "../../../src/core/bath/model/builder.ts";
import { estimateAcidTo } from "../../../src/core/bath/model/estimate-acid.ts";
import { alkalinities } from "../../../src/core/chemistry/alkalinities.ts";
import { waterDensity } from "../../../src/core/chemistry/constants/water-density.ts";
import { equivalentsPerKilogram, ph } from "../../../src/core/units/quantity.ts";
import { temperatureOf } from "./accuracy-of-ph.ts";
import type { TableRow } from "./read-table.ts";
import { readTable } from "./read-table.ts";
import { builderNamed, sheetOf } from "./recipes.ts";

/** What a titration of the tables' waters finds; purified water counts as good as pure. */
const alkalinity: Readonly<Record<string, string>> = { RO: "0.13 meq/L", soft: "4 meq/L", hard: "4 meq/L" };

function ask(id: string, ...cells: readonly CellInput[]): number {
  const fn = findFunction(id);
  if (fn === undefined) throw new RangeError(`No function ${id}`);
  const answer = evaluate(fn, cells);
  if (typeof answer !== "number") throw new TypeError(`${id} gave no number`);
  return answer;
}

const largest = (differences: readonly number[]): number => {
  expect(differences.length).toBeGreaterThan(5);
  return Math.max(...differences.map(Math.abs));
};

describe("PHAT", () => {
  const rows = readTable("set-hot-read-cold");
  const off = (row: TableRow, knows: boolean): readonly number[] =>
    [20, 25, 30, 40, 50, 60].map((celsius) => {
      const about = knows ? [sheetOf(row.text("recipe")), alkalinity[row.text("water")]] : [];
      const answer = ask("PHAT", row.number("pHAtCharge"), `${row.text("chargeCelsius")} C`, `${celsius} C`, ...about);
      return answer - row.number(`pHAt${celsius}`);
    });

  it.each([
    ["RO", 0.01],
    ["soft", 0.02],
    ["hard", 0.05],
  ])("reads baths set hot in %s water within %s once they are cold or hotter, builder known", (water, goal) => {
    expect(
      largest(rows.filter((row) => row.text("water") === water).flatMap((row) => off(row, true))),
    ).toBeLessThanOrEqual(goal);
  });

  it("is within 0.15 where neither builder nor water is known", () => {
    expect(largest(rows.flatMap((row) => off(row, false)))).toBeLessThanOrEqual(0.15);
  });
});

describe("TOPUP, NEXTADD and DOSEATPH", () => {
  const rows = readTable("top-ups").filter((row) => row.number("targetPH") === row.number("openingPH"));
  const named = rows.filter((row) => row.text("loss") === "acid" || row.text("loss") === "dilution");
  const about = (row: TableRow) => [
    sheetOf(row.text("recipe")),
    `${row.text("celsius")} C`,
    alkalinity[row.text("water")],
  ];

  /** An opening dose of 1, all of which may go in: a shop's share of it would hide what is asked about here. */
  const wholeDoseAtOnce = [1, "100%"] as const;

  it.each([
    ["RO", 0.01],
    ["soft", 0.03],
  ])("bring a bath in %s water back within %s of the opening dose, builder and loss known", (water, goal) => {
    const differences = named
      .filter((row) => row.text("water") === water)
      .map(
        (row) =>
          ask("TOPUP", 1, row.number("openingPH"), row.number("pHAfterLoss"), ...about(row), row.text("loss")) -
          row.number("shareNeeded"),
      );
    expect(largest(differences)).toBeLessThanOrEqual(goal);
  });

  it("say after a third what more is needed, within 0.05 of the opening dose", () => {
    const short = named.filter((row) => row.number("pHAfterThird") < row.number("openingPH") - 0.1);
    const differences = short.map((row) => {
      const more = ask(
        "NEXTADD",
        1 / 3,
        row.number("pHAfterLoss"),
        row.number("pHAfterThird"),
        row.number("openingPH"),
        ...about(row),
        null,
        ...wholeDoseAtOnce,
      );
      return more - (row.number("shareNeeded") - 1 / 3);
    });
    expect(largest(differences)).toBeLessThanOrEqual(0.05);
  });

  it("say so without knowing builder and water within 0.08", () => {
    const short = named.filter((row) => row.number("pHAfterThird") < row.number("openingPH") - 0.1);
    const differences = short.map((row) => {
      const more = ask(
        "NEXTADD",
        1 / 3,
        row.number("pHAfterLoss"),
        row.number("pHAfterThird"),
        row.number("openingPH"),
        null,
        `${row.text("celsius")} C`,
        null,
        null,
        ...wholeDoseAtOnce,
      );
      return more - (row.number("shareNeeded") - 1 / 3);
    });
    expect(largest(differences)).toBeLessThanOrEqual(0.08);
  });

  it("find the dose left after dilution in purified water", () => {
    const diluted = named.filter((row) => row.text("loss") === "dilution" && row.text("water") === "RO");
    expect(diluted.length).toBe(3);
    for (const row of diluted) {
      const left = ask("DOSEATPH", 1, row.number("openingPH"), row.number("pHAfterLoss"), ...about(row));
      expect(Math.abs(left - (1 - row.number("shareNeeded")))).toBeLessThanOrEqual(0.03);
      const back = ask("PHATDOSE", 1, row.number("openingPH"), left, ...about(row));
      expect(back).toBeCloseTo(row.number("pHAfterLoss"), 3);
    }
  });
});

describe("ACIDTO", () => {
  /** kg or m³ per equivalent, from handbook weights and densities rather than from the engine's. */
  const products: Readonly<Record<string, readonly [name: string, perEquivalent: number]>> = {
    HCl: ["hydrochloric", 36.461 / 0.3145 / 1156.5],
    H3Cit: ["citric", 0.06404],
    NaHSO4: ["sodium bisulfate", 0.12006],
  };
  const densityAt = (row: TableRow): number => waterDensity(temperatureOf(row));
  const isHot = (row: TableRow): boolean => row.number("celsius") > 40;
  const asAsked = (row: TableRow, knows: boolean, titrated: number | null): readonly CellInput[] => [
    1000,
    row.number("startPH"),
    row.number("endPH"),
    products[row.text("acid")]?.[0] ?? null,
    knows ? sheetOf(row.text("recipe")) : null,
    `${row.text("celsius")} C`,
    titrated === null ? null : `${String(titrated)} meq/L`,
    null,
    "metric",
  ];
  const byFunction = (row: TableRow, knows: boolean, titrated: number | null): number => {
    const perEquivalent = products[row.text("acid")]?.[1] ?? Number.NaN;
    const answer = ask("ACIDTO", ...asAsked(row, knows, titrated));
    return answer / perEquivalent / (densityAt(row) * row.number("milliequivalents")) - 1;
  };
  /** Of a hot bath, which the function sends to be cooled first, the chemistry behind it is asked. */
  const byChemistry = (row: TableRow, knows: boolean, titrated: number | null): number => {
    const question = questionOf({
      baseline: ph(row.number("startPH")),
      temperature: temperatureOf(row),
      builder: knows ? builderNamed(row.text("recipe")) : unknownBuilder,
      alkalinity: undefined,
    });
    const acid = acidNames.find((name) => name === products[row.text("acid")]?.[0]);
    if (acid === undefined) throw new Error(`No acid ${row.text("acid")}`);
    const perKilogram = titrated === null ? undefined : equivalentsPerKilogram(titrated / 1000 / densityAt(row));
    const { low, best } = estimateAcidTo(question, acid, ph(row.number("endPH")), perKilogram);
    return (titrated === null ? low : best) / (row.number("milliequivalents") / 1000) - 1;
  };
  const relative = (row: TableRow, knows: boolean, titrated: number | null): number =>
    (isHot(row) ? byChemistry : byFunction)(row, knows, titrated);
  const titration = (row: TableRow): number =>
    1000 * densityAt(row) * alkalinities(row.totals(), temperatureOf(row)).total;
  const rows = readTable("neutralizations");

  it("needs what PHREEQC needs for a fresh bath in purified water, within 3 %", () => {
    const fresh = rows.filter((row) => row.text("bath") === "opening" && row.text("water") === "RO");
    expect(largest(fresh.map((row) => relative(row, true, null)))).toBeLessThanOrEqual(0.03);
  });

  it("sends a hot bath to be cooled, and asks the chemistry as it is asked here of a cool one", () => {
    const [hot, cool] = [rows.filter(isHot), rows.filter((row) => !isHot(row))];
    expect(Math.min(hot.length, cool.length)).toBeGreaterThan(5);
    for (const row of hot) expect(() => byFunction(row, true, null)).toThrow("Let it cool and read again");
    for (const row of cool) expect(byChemistry(row, false, null)).toBeCloseTo(byFunction(row, false, null), 2);
  });

  it("is a minimum without a titration: never above the need of any bath, and far below it for a spent one", () => {
    for (const row of rows) expect(relative(row, false, null)).toBeLessThanOrEqual(0.01);
    const spent = rows.filter((row) => row.text("bath") === "spent").map((row) => relative(row, false, null));
    expect(Math.min(...spent)).toBeLessThan(-0.5);
  });

  it("comes within 10 % to pH 7 with a titration and a known builder, within 16 % without the builder", () => {
    const to7 = rows.filter((row) => row.number("endPH") === 7);
    expect(largest(to7.map((row) => relative(row, true, titration(row))))).toBeLessThanOrEqual(0.1);
    expect(largest(to7.map((row) => relative(row, false, titration(row))))).toBeLessThanOrEqual(0.16);
  });
});
