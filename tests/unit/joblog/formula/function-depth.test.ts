import { describe, expect, it } from "vitest";

import { jobLog } from "../../../../src/joblog/job-log.ts";
import { callsIn, dependencies, emptyPlan, formulasByCell } from "./formula-reader.ts";

const plan = emptyPlan(jobLog, "US");
const formulas = formulasByCell(plan);
const reads = dependencies(plan);
const found = new Map<string, readonly string[]>();

/** The longest chain of cells with BATH functions that ends in this one. */
function chainOf(cell: string): readonly string[] {
  const known = found.get(cell);
  if (known !== undefined) return known;
  const before = (reads.get(cell) ?? [])
    .map(chainOf)
    .reduce<readonly string[]>((best, one) => (one.length > best.length ? one : best), []);
  const calls = callsIn(formulas.get(cell) ?? "").some((name) => name.startsWith("BATH."));
  const chain = calls ? [...before, cell] : before;
  found.set(cell, chain);
  return chain;
}

describe("BATH functions that wait for one another", () => {
  it("stand at most three cells deep anywhere in the log", () => {
    for (const cell of formulas.keys()) expect(chainOf(cell).length, chainOf(cell).join(" > ")).toBeLessThanOrEqual(3);
  });

  it("stand three deep from the meter's drift to the first addition", () => {
    expect(chainOf("Readings[First addition, gal]")).toHaveLength(3);
    expect(chainOf("Readings[First addition, gal]")[0]).toBe("Readings[pH, drift taken out]");
  });
});
