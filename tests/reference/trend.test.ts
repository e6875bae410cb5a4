import { describe, expect, it } from "vitest";

import { callFormula } from "./call-formula.ts";
import { numberIn, readCsv } from "./read-csv.ts";

/**
 * NIST Statistical Reference Datasets, Norris: 36 readings of ozone monitors, with the certified line.
 * The functions fit no least squares; these data are a line whose slope is known.
 */
const points = readCsv("norris.csv").map((row) => ({ x: numberIn(row, "x"), y: numberIn(row, "y") }));
const certified = { slope: 1.00211681802045, slopeDeviation: 0.000429796848199937, intercept: -0.262323073774029 };

/** Readings are pH, so y of up to 998.5 goes in a hundredth of its size. */
const hundredth = 100;

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

function leastSquares(): { readonly slope: number; readonly intercept: number } {
  const x = mean(points.map((point) => point.x));
  const y = mean(points.map((point) => point.y));
  const slope =
    mean(points.map((point) => (point.x - x) * (point.y - y))) / mean(points.map((point) => (point.x - x) ** 2));
  return { slope, intercept: y - slope * x };
}

function medianOfSlopes(): number {
  const slopes = points
    .flatMap((one, index) => points.slice(index + 1).map((other) => (other.y - one.y) / (other.x - one.x)))
    .filter((slope) => Number.isFinite(slope))
    .sort((one, other) => one - other);
  expect(slopes.length % 2).toBe(1);
  return slopes[(slopes.length - 1) / 2] ?? Number.NaN;
}

function worksheetSlope(): number {
  const column = (values: readonly number[]): string => `{${values.join(";")}}`;
  const readings = points.map(({ y }) => Number((y / hundredth).toFixed(3)));
  const slope = callFormula(`=BATH.PHTREND(${column(points.map(({ x }) => x))},${column(readings)})`);
  return hundredth * Number(slope);
}

describe("the trend of NIST's Norris data", () => {
  it("has NIST's certified line by least squares, so the data are copied right", () => {
    const { slope, intercept } = leastSquares();
    expect(points).toHaveLength(36);
    expect(Math.abs(slope - certified.slope)).toBeLessThanOrEqual(1e-12);
    expect(Math.abs(intercept - certified.intercept)).toBeLessThanOrEqual(1e-10);
  });

  it("is the median of the slopes of all pairs", () => {
    expect(Math.abs(worksheetSlope() - medianOfSlopes())).toBeLessThanOrEqual(1e-11);
  });

  it("lies within three of NIST's standard deviations of the certified slope, though it is not least squares", () => {
    expect(Math.abs(worksheetSlope() - certified.slope)).toBeLessThanOrEqual(3 * certified.slopeDeviation);
  });
});
