import { describe, expect, it } from "vitest";

import { unitSystems } from "../../../../src/core/units/unit-system.ts";
import { jobLog } from "../../../../src/joblog/job-log.ts";
import type { WorkbookPlan } from "../../../../src/joblog/model/plan.ts";
import { bareCode, callsIn, dependencies, emptyPlan, formulasOf, mentionsIn } from "./formula-reader.ts";

const plan = emptyPlan(jobLog, "US");
const formulas = formulasOf(plan);

function tablesOf(workbook: WorkbookPlan): ReadonlyMap<string, readonly string[]> {
  return new Map(
    workbook.sheets.flatMap((sheet) =>
      sheet.tables.map((table) => [table.name, table.columns.map((column) => column.header)] as const),
    ),
  );
}

function circle(graph: ReadonlyMap<string, readonly string[]>): readonly string[] | undefined {
  const done = new Set<string>();
  const walk = (node: string, path: readonly string[]): readonly string[] | undefined => {
    if (path.includes(node)) return [...path.slice(path.indexOf(node)), node];
    if (done.has(node)) return undefined;
    for (const next of graph.get(node) ?? []) {
      const found = walk(next, [...path, node]);
      if (found !== undefined) return found;
    }
    done.add(node);
    return undefined;
  };
  for (const node of graph.keys()) {
    const found = walk(node, []);
    if (found !== undefined) return found;
  }
  return undefined;
}

describe("the job log's formulas", () => {
  it.each(unitSystems)("refer only to tables and headers that the log in %s units has", (system) => {
    const workbook = emptyPlan(jobLog, system);
    const tables = tablesOf(workbook);
    for (const { place, formula } of formulasOf(workbook)) {
      for (const { table, area, header } of mentionsIn(formula)) {
        expect(tables.get(table), `${place}: ${table}`).toContain(header);
        expect(["#This Row", "#Data", "#Headers"], place).toContain(area);
      }
      expect(bareCode(formula), place).not.toContain("[");
    }
  });

  it("refer only to names that the log defines", () => {
    const names = plan.names.map((name) => name.name);
    for (const { place, formula } of formulas) {
      const words = [...bareCode(formula).matchAll(/[A-Za-z]+\.[A-Za-z]+(?!\w*\()/g)]
        .map(([word]) => word)
        .filter((word) => !word.startsWith("BATH."));
      for (const word of words) expect(names, place).toContain(word);
    }
  });

  it("name no cell by its address", () => {
    for (const { place, formula } of formulas) expect(bareCode(formula), place).not.toMatch(/\$?\b[A-Z]{1,2}\$?\d+\b/);
  });

  it("call nothing volatile, nothing that hides errors and nothing that other grids lack", () => {
    const banned = [
      "NOW",
      "TODAY",
      "RAND",
      "RANDBETWEEN",
      "OFFSET",
      "INDIRECT",
      "CELL",
      "INFO",
      "IFERROR",
      "IFNA",
      "LET",
      "LAMBDA",
      "FILTER",
      "SORT",
      "UNIQUE",
      "XLOOKUP",
      "AGGREGATE",
      "BYROW",
    ];
    for (const { place, formula } of formulas)
      for (const call of callsIn(formula)) expect(banned, `${place}: ${call}`).not.toContain(call);
  });

  it("never run in a circle", () => {
    expect(circle(dependencies(plan))).toBeUndefined();
  });

  it("stay within what a cell can hold", () => {
    // Excel specifications: 8,192 characters, 64 levels of nesting.
    for (const { place, formula } of formulas) {
      expect(formula.length, place).toBeLessThan(4000);
      let depth = 0;
      let deepest = 0;
      for (const character of bareCode(formula)) {
        if (character === "(") deepest = Math.max(deepest, (depth += 1));
        if (character === ")") depth -= 1;
      }
      expect(depth, place).toBe(0);
      expect(deepest, place).toBeLessThan(40);
    }
  });

  it("keep BATH functions out of colors, lists and names", () => {
    const rules = plan.sheets.flatMap((sheet) => [
      ...sheet.conditionalFormats.map((format) => format.formula),
      ...sheet.validations.map((validation) => JSON.stringify(validation.rule)),
    ]);
    expect(rules.length).toBeGreaterThan(20);
    for (const rule of rules) expect(rule).not.toContain("BATH");
    for (const name of plan.names) expect(name.name).not.toContain("BATH");
  });

  it("hand the log's unit system to every BATH function that converts units, as the last argument", () => {
    const converting = [
      "TANKVOLUME",
      "DOSE",
      "HARDNESSDOSE",
      "ALKALINITYDOSE",
      "PHAT",
      "VERDICT",
      "TOPUPRANGE",
      "NEXTADD",
      "METERSLOPE",
      "ACIDTO",
    ];
    const seen = new Set<string>();
    for (const { place, formula } of formulas) {
      for (const name of converting) {
        let from = formula.indexOf(`BATH.${name}(`);
        while (from >= 0) {
          seen.add(name);
          let depth = 0;
          let end = formula.indexOf("(", from);
          do {
            if (formula[end] === "(") depth += 1;
            if (formula[end] === ")") depth -= 1;
            end += 1;
          } while (depth > 0);
          expect(formula.slice(from, end), place).toMatch(/,Unit\.System\)$/);
          from = formula.indexOf(`BATH.${name}(`, end);
        }
      }
    }
    expect([...seen].sort()).toEqual([...converting].sort());
  });
});
