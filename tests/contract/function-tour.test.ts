import { describe, expect, it } from "vitest";

import { catalogue } from "../../functions/catalogue.ts";
import { dose } from "../../functions/charge/dose.ts";
import { hardnessDose } from "../../functions/charge/hardness-dose.ts";
import type { FunctionExample } from "../../functions/define-function.ts";
import { referenceOf } from "../../functions/reference-of.ts";
import { withExamples } from "../../scripts/tour/by-example.ts";
import { charge as chargeSheet } from "../../scripts/tour/charge.ts";
import { functionTour } from "../../scripts/tour/function-tour.ts";
import { layOutTour } from "../../scripts/tour/lay-out-tour.ts";
import { tank as tankSheet } from "../../scripts/tour/tank.ts";
import { formulasOf, functionsOf } from "../../scripts/tour/tour-sheet.ts";
import type { SheetPlan } from "../../src/joblog/model/plan.ts";

const example: FunctionExample = {
  formula: "=BATH.UNUSED(1)",
  cells: [1],
  result: 2,
  source: "made up",
};

const textsOf = ({ cells }: SheetPlan): string =>
  cells.map((cell) => (cell.kind === "value" ? String(cell.value) : "")).join(" ");

describe("the function tour", () => {
  it.each(catalogue.map((fn) => [fn.id, fn.category]))(
    "uses %s on the sheet %s, in a step of the day or by its example",
    (id, category) => {
      const sheet = functionTour.find(({ name }) => name === category);
      expect(sheet === undefined ? [] : functionsOf(sheet)).toContain(id);
    },
  );

  it("shows a function that no step uses by its first example, on the sheet of its family alone", () => {
    const unused = { ...hardnessDose, id: "UNUSED", examples: [example] };
    const rows = [
      [1, 2],
      [3, 4],
    ];
    const spill = { ...hardnessDose, id: "SPILL", examples: [{ ...example, formula: "=BATH.SPILL(1)", result: rows }] };
    const [tank, charge] = withExamples([tankSheet, chargeSheet], [unused, spill, dose]);
    expect(tank).toEqual(tankSheet);
    expect(charge?.steps.slice(0, chargeSheet.steps.length)).toEqual(chargeSheet.steps);
    const [single, table, ...others] = (charge?.steps ?? []).slice(chargeSheet.steps.length);
    expect(others).toEqual([]);
    expect(single?.caption).toBe("The example of BATH.UNUSED");
    expect(single?.parts).toMatchObject([{ kind: "result", formula: example.formula, unit: hardnessDose.result.unit }]);
    expect(table?.parts).toMatchObject([
      { kind: "grid", formula: "=BATH.SPILL(1)", rows: [1, 2], columns: [{ spilled: 1 }, { spilled: 2 }] },
    ]);
  });

  it("has one sheet for each family and no other but the first", () => {
    expect(
      layOutTour()
        .sheets.slice(1)
        .map(({ name }) => name)
        .toSorted(),
    ).toEqual([...new Set(catalogue.map(({ category }) => category))].toSorted());
  });

  it("names no function that the catalogue lacks", () => {
    const known = new Set(catalogue.map(({ id }) => id));
    expect(functionTour.flatMap(functionsOf).filter((id) => !known.has(id))).toEqual([]);
  });

  it("has a formula for every cell to type in", () => {
    const everywhere = functionTour.flatMap(formulasOf).join(" ");
    for (const sheet of functionTour) {
      const here = formulasOf(sheet).join(" ");
      const inputs = sheet.steps
        .flatMap(({ parts }) => parts)
        .flatMap((part) => (part.kind === "input" ? [part.id] : []));
      expect(
        inputs.filter((id) => !here.includes(`[${id}]`) && !everywhere.includes(`[${sheet.id}.${id}]`)),
        sheet.name,
      ).toEqual([]);
    }
  });

  it("shows the text of every result's formula beside it", () => {
    for (const sheet of layOutTour().sheets.slice(1)) {
      const headed = new Set(sheet.cells.filter(({ style }) => style === "headerComputed").map(({ row }) => row));
      const results = sheet.cells.filter(
        (cell) => cell.kind === "formula" && cell.column === 1 && !headed.has(cell.row),
      );
      expect(results.length, sheet.name).toBeGreaterThan(1);
      for (const result of results) {
        const beside = sheet.cells.find(({ row, column }) => row === result.row && column === 4);
        expect(beside?.kind === "value" ? beside.value : undefined, sheet.name).toBe(
          result.kind === "formula" ? result.formula : "",
        );
      }
    }
  });

  it("shows each caution of a sheet's functions once, above the first step", () => {
    for (const [index, sheet] of layOutTour().sheets.slice(1).entries()) {
      const text = textsOf(sheet);
      const tour = functionTour[index];
      const cautions = new Set(
        (tour === undefined ? [] : functionsOf(tour))
          .flatMap((id) => referenceOf(id).cautions)
          .map((caution) => caution.text),
      );
      for (const caution of cautions) expect(text.split(caution).length - 1, sheet.name).toBe(1);
    }
    expect(
      layOutTour()
        .sheets.filter(({ cells }) => cells.some(({ style }) => style === "caution"))
        .map(({ id }) => id),
    ).toEqual(["startHere", "water", "charge", "heat", "topUp", "whatIf", "discharge"]);
  });
});
