import { describe, expect, it } from "vitest";

import { catalogue } from "../../functions/catalogue.ts";
import { referenceOf } from "../../functions/reference-of.ts";
import { functionTour } from "../../scripts/tour/function-tour.ts";
import { layOutTour } from "../../scripts/tour/lay-out-tour.ts";
import { formulasOf, functionsOf } from "../../scripts/tour/tour-sheet.ts";
import type { SheetPlan } from "../../src/joblog/model/plan.ts";

const textsOf = ({ cells }: SheetPlan): string =>
  cells.map((cell) => (cell.kind === "value" ? String(cell.value) : "")).join(" ");

describe("the function tour", () => {
  it.each(catalogue.map((fn) => [fn.id, fn.category]))(
    "uses %s on the sheet %s (add a line to scripts/tour if not)",
    (id, category) => {
      const sheet = functionTour.find(({ name }) => name === category);
      expect(sheet === undefined ? [] : functionsOf(sheet)).toContain(id);
    },
  );

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
