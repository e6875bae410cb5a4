import { describe, expect, it } from "vitest";

import { unitSystems } from "../../../../src/core/units/unit-system.ts";
import { jobLog } from "../../../../src/joblog/job-log.ts";
import { layOut } from "../../../../src/joblog/layout/lay-out.ts";
import type { AreaPlan, SheetPlan } from "../../../../src/joblog/model/plan.ts";
import { firstTwoDays } from "../../../demo/days/demo-week.ts";
import { emptyPlan } from "../formula/formula-reader.ts";

const empty = emptyPlan(jobLog, "US");
const demo = layOut(jobLog, { system: "US" }, firstTwoDays);

function overlap(a: AreaPlan, b: AreaPlan): boolean {
  return (
    a.row < b.row + b.rows &&
    b.row < a.row + a.rows &&
    a.column < b.column + b.columns &&
    b.column < a.column + a.columns
  );
}

function sheetOf(plan: typeof demo, id: string): SheetPlan {
  const sheet = plan.sheets.find((one) => one.id === id);
  if (sheet === undefined) throw new RangeError(`No sheet ${id}`);
  return sheet;
}

function headersOf(plan: typeof demo, name: string): readonly string[] {
  return (
    plan.sheets
      .flatMap((sheet) => sheet.tables)
      .find((table) => table.name === name)
      ?.columns.map((column) => column.header) ?? []
  );
}

describe("laying out the log", () => {
  it.each([
    ["empty", empty],
    ["filled", demo],
  ] as const)("puts no two cells in the same place in the %s log", (_, plan) => {
    for (const sheet of plan.sheets) {
      const places = sheet.cells.map((cell) => `${String(cell.row)},${String(cell.column)}`);
      expect(new Set(places).size, sheet.name).toBe(places.length);
    }
  });

  it.each([
    ["empty", empty],
    ["filled", demo],
  ] as const)("keeps tables and charts of the %s log apart", (_, plan) => {
    for (const sheet of plan.sheets) {
      const areas = [...sheet.tables, ...sheet.charts].map((one) => one.area);
      areas.forEach((area, index) => {
        for (const other of areas.slice(index + 1)) expect(overlap(area, other), sheet.name).toBe(false);
      });
    }
  });

  it("leaves every table free to grow downward, or, above another one, keeps spare rows and room", () => {
    const fixed: ReadonlySet<string> = new Set(
      jobLog.sheets.flatMap((sheet) =>
        sheet.tables.filter((table) => table.fixedRows === true).map((table) => table.id),
      ),
    );
    for (const sheet of demo.sheets) {
      for (const table of sheet.tables) {
        const bottom = table.area.row + table.area.rows;
        const below = sheet.cells.filter(
          (cell) =>
            cell.row >= bottom &&
            cell.column >= table.area.column &&
            cell.column < table.area.column + table.area.columns,
        );
        const nearest = Math.min(...below.map((cell) => cell.row));
        if (below.length === 0) continue;
        expect(sheet.tables.indexOf(table), table.name).toBeLessThan(sheet.tables.length - 1);
        if (fixed.has(table.id)) continue;
        expect(table.area.rows - 1, table.name).toBeGreaterThanOrEqual(3);
        expect(nearest - bottom, table.name).toBeGreaterThanOrEqual(3);
      }
    }
  });

  it("starts Job's tables with 6 claims, 3 tanks, 4 waters and 3 concentrates to fill in", () => {
    expect(sheetOf(empty, "job").tables.map((table) => table.area.rows - 1)).toEqual([6, 3, 4, 3]);
  });

  it("says beside the title of each sheet with functions of the add-in, and of no other, what #NAME? needs", () => {
    for (const { name, cells, lastPrintedColumn } of empty.sheets) {
      const calls = cells.some((cell) => cell.kind === "formula" && cell.formula.includes("BATH."));
      const notes = cells.filter((cell) => cell.kind === "value" && String(cell.value).includes("#NAME? need"));
      expect(
        notes.map(({ row, column }) => row === 0 && column <= lastPrintedColumn),
        name,
      ).toEqual(calls ? [true] : []);
    }
    expect(
      sheetOf(empty, "costs").cells.some((cell) => cell.kind === "formula" && cell.formula.includes("BATH.")),
    ).toBe(false);
  });

  it("has the chart of the shares above the tables, where none of them grows into it", () => {
    const { charts, tables } = sheetOf(demo, "costs");
    const bottom = Math.max(...charts.map(({ area }) => area.row + area.rows));
    expect(charts).toHaveLength(1);
    expect(Math.min(...tables.map(({ area }) => area.row))).toBeGreaterThan(bottom);
  });

  it("folds away the helper columns beyond the page, but none that a chart draws or a word stands in", () => {
    const helpers = jobLog.sheets.flatMap(({ tables }) =>
      tables.flatMap(({ id, columns }) =>
        columns.flatMap((column) =>
          column.role === "computed" && column.helper === true ? [`${id}.${column.id}`] : [],
        ),
      ),
    );
    const charts = demo.sheets.flatMap((sheet) => sheet.charts);
    for (const { name, tables, folded = [], lastPrintedColumn, cells } of demo.sheets) {
      for (const { first, last } of folded) {
        expect(first, name).toBeGreaterThan(lastPrintedColumn);
        const isIn = (column: number): boolean => column >= first && column <= last;
        const held = tables.flatMap(({ id, area, columns }) =>
          columns.flatMap((column, index) => (isIn(area.column + index) ? [`${id}.${column.id}`] : [])),
        );
        expect(
          held.filter((column) => !helpers.includes(column)),
          name,
        ).toEqual([]);
        const rows = new Set(
          tables.flatMap(({ area }) => Array.from({ length: area.rows }, (_, row) => area.row + row)),
        );
        expect(cells.some(({ row, column }) => isIn(column) && !rows.has(row))).toBe(false);
        for (const { dataSheet, x, y } of charts.flatMap(({ series }) => series))
          if (dataSheet === name)
            expect([x, y].some((area) => isIn(area.column) || isIn(area.column + area.columns - 1))).toBe(false);
      }
    }
    const count = demo.sheets
      .flatMap(({ folded = [] }) => folded)
      .reduce((sum, { first, last }) => sum + last - first + 1, 0);
    expect(count).toBeGreaterThan(200);
  });

  it("repeats on every page the headings of the table that goes on, also where they cannot be frozen", () => {
    const titled = demo.sheets.filter(({ titleRows }) => titleRows !== undefined);
    for (const { name, tables, titleRows } of titled) {
      expect(titleRows?.first, name).toBe(tables.at(-1)?.area.row);
      expect(titleRows?.last, name).toBe(tables.at(-1)?.area.row);
    }
    const names = titled.map(({ name }) => name);
    for (const name of ["Baths", "Items", "Costs", "Month end", "Journal"]) expect(names).toContain(name);
    for (const name of ["Claim statement", "Charts"]) expect(names).not.toContain(name);
  });

  it("prints the statement's shares and total before its chemistry, its fields two on a line", () => {
    const { tables, cells } = sheetOf(demo, "statement");
    const order = [...tables].sort((one, other) => one.area.row - other.area.row).map(({ id }) => id);
    expect(order.slice(0, 5)).toEqual([
      "statementShares",
      "statementCharges",
      "statementAlone",
      "statementTotal",
      "statementBaths",
    ]);
    const rowOf = (name: string): number | undefined => demo.names.find((one) => one.name === name)?.row;
    expect(rowOf("Statement.Invoice")).toBe(rowOf("Statement.Claim"));
    const labels = cells.filter(({ style }) => style === "fieldLabel");
    expect(new Set(labels.map(({ row, column }) => `${String(row)} ${String(column)}`)).size).toBe(labels.length);
  });

  it("shows no label of the statement whose value is blank, unless it is to be signed", () => {
    const { cells, conditionalFormats } = sheetOf(demo, "statement");
    const unseen = conditionalFormats.filter(({ look }) => look === "unseen").map(({ area }) => area);
    const shown = cells
      .filter(
        (cell) =>
          cell.style === "fieldLabel" && !unseen.some(({ row, column }) => row === cell.row && column === cell.column),
      )
      .map((cell) => (cell.kind === "value" ? cell.value : ""));
    expect(shown).toEqual(["Claim", "Prepared by", "Date", "Accepted by, date"]);
    expect(unseen.length).toBeGreaterThan(12);
  });

  it("writes units into headers by the log's system", () => {
    const sample = (system: (typeof unitSystems)[number]): readonly string[] =>
      headersOf(layOut(jobLog, { system }, firstTwoDays), "Readings").filter(
        (header) => header.startsWith("Sample") || header.startsWith("Top-up, best"),
      );
    expect(sample("US")).toEqual(["Sample temp, °F", "Top-up, best, gal"]);
    expect(sample("metric")).toEqual(["Sample temp, °C", "Top-up, best, L"]);
    expect(sample("imperial")).toEqual(["Sample temp, °C", "Top-up, best, imperial gal"]);
  });

  it("makes the temperature gap 2 °C, which is 3.6 °F", () => {
    const gap = (system: (typeof unitSystems)[number]): unknown => {
      const plan = emptyPlan(jobLog, system);
      const name = plan.names.find((one) => one.name === "Temperature.Gap");
      const cell = sheetOf(plan, "job").cells.find((one) => one.row === name?.row && one.column === name.column);
      return cell?.kind === "value" ? cell.value : undefined;
    };
    expect(gap("metric")).toBe(2);
    expect(gap("US")).toBe(3.6);
  });

  it("stores the unit system and the log's version in named cells", () => {
    const stored = (name: string): unknown => {
      const at = demo.names.find((one) => one.name === name);
      const cell = demo.sheets
        .find((sheet) => sheet.name === at?.sheet)
        ?.cells.find((one) => one.row === at?.row && one.column === at.column);
      return cell?.kind === "value" ? cell.value : undefined;
    };
    expect(stored("Unit.System")).toBe("US");
    expect(stored("Log.Version")).toBe(jobLog.version);
  });

  it("writes every given value and leaves out none", () => {
    const starts = jobLog.sheets.flatMap((sheet) => sheet.tables).flatMap((table) => table.start?.("US") ?? []);
    const given = [...starts, ...Object.values(firstTwoDays.rows).flat()].flatMap((row) =>
      Object.values(row).filter((value) => value !== undefined),
    );
    const written = demo.sheets.flatMap((sheet) =>
      sheet.tables.flatMap((table) =>
        sheet.cells.filter(
          (cell) =>
            cell.kind === "value" &&
            cell.row > table.area.row &&
            cell.row < table.area.row + table.area.rows &&
            cell.column >= table.area.column &&
            cell.column < table.area.column + table.area.columns,
        ),
      ),
    );
    expect(written.length).toBe(given.length);
  });

  it("keeps messages and lists within what Excel takes", () => {
    // Data validation in Excel: title 32, message 255, list 255 characters.
    for (const validation of demo.sheets.flatMap((sheet) => sheet.validations)) {
      expect(validation.errorTitle.length).toBeLessThanOrEqual(32);
      expect(validation.errorMessage.length).toBeLessThanOrEqual(255);
      if (validation.rule.kind === "list") {
        expect(validation.rule.choices.join(",").length).toBeLessThanOrEqual(255);
        for (const choice of validation.rule.choices) expect(choice).not.toContain(",");
      }
    }
  });

  it("draws each bath's pH from the readings' own cells, and its baseline and trigger between two cells each", () => {
    const charts = sheetOf(demo, "charts");
    const readings = sheetOf(demo, "readings").tables[0];
    const lines = charts.tables[0];
    const pH = charts.charts.filter(({ id }) => id.startsWith("Bathsheet.pH"));
    expect(pH).toHaveLength(4);
    pH.forEach(({ series }, index) => {
      const [points, ...levels] = series;
      expect(points).toMatchObject({
        label: "pH",
        dataSheet: "Readings",
        x: { row: (readings?.area.row ?? 0) + 1, rows: 10 },
        y: { rows: 10 },
      });
      expect(readings?.columns[points?.y.column ?? 0]?.id).toBe(
        index === 0 ? "chartPh" : `chartPh${String(index + 1)}`,
      );
      expect(levels.map(({ label }) => label)).toEqual(["Baseline", "Trigger"]);
      if (index === 0) return;
      for (const { dataSheet, x, y } of levels) {
        expect(dataSheet).toBe("Charts");
        for (const area of [x, y])
          expect(area).toMatchObject({ row: (lines?.area.row ?? 0) + 1 + index, rows: 1, columns: 2 });
      }
    });
  });

  it("prints all charts on one page, without the cells that they read", () => {
    const charts = sheetOf(demo, "charts");
    expect(charts.onePage).toBe(true);
    expect(Math.max(...charts.charts.map(({ area }) => area.column + area.columns - 1))).toBe(charts.lastPrintedColumn);
    expect(charts.tables[0]?.area.column).toBeGreaterThan(charts.lastPrintedColumn);
  });

  it("leaves no bare point behind a whole number, as a format of optional decimals alone would", () => {
    const formats = jobLog.sheets
      .flatMap((sheet) => [...sheet.fields, ...sheet.tables.flatMap((table) => table.columns)])
      .map(({ format }) => format ?? "");
    expect(formats.filter((format) => /\.#/.test(format))).toEqual([]);
    expect(formats.filter((format) => format.includes("."))).not.toEqual([]);
  });

  it("prints the caution in every footer and no helper column", () => {
    for (const sheet of demo.sheets) {
      expect(sheet.footer).toBe("Arithmetic aid. The label, SDS and permit win.");
      const printed = sheet.cells.filter((cell) => cell.column <= sheet.lastPrintedColumn);
      expect(
        printed.some((cell) => cell.style === "helper"),
        sheet.name,
      ).toBe(false);
    }
  });
});
