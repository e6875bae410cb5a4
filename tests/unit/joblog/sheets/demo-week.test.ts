import { describe, expect, it } from "vitest";

import { jobLog } from "../../../../src/joblog/job-log.ts";
import type { Cells, InputColumn } from "../../../../src/joblog/model/definition.ts";
import { firstTwoDays } from "../../../demo/days/demo-week.ts";

const tables = jobLog.sheets.flatMap((sheet) => sheet.tables);

function inputsOf(id: string): readonly InputColumn[] {
  return tables.find((table) => table.id === id)?.columns.filter((column) => column.role === "input") ?? [];
}

const lists: Readonly<Partial<Record<string, readonly Cells[]>>> = firstTwoDays.rows;

const rows = Object.entries<readonly Cells[]>(firstTwoDays.rows).flatMap(([table, list]) =>
  list.map((row) => ({ table, row })),
);

describe("the demo week's first two days", () => {
  it("hold what was noted: 10 bench tests, 10 readings, 4 additions, 3 claims", () => {
    expect(firstTwoDays.rows.benchTests).toHaveLength(10);
    expect(firstTwoDays.rows.readings).toHaveLength(10);
    expect(firstTwoDays.rows.additions).toHaveLength(4);
    expect(firstTwoDays.rows.claims).toHaveLength(3);
  });

  it("fill only input columns, and all that are required", () => {
    for (const { table, row } of rows) {
      const inputs = inputsOf(table);
      for (const id of Object.keys(row))
        expect(
          inputs.map((column) => column.id),
          table,
        ).toContain(id);
      for (const column of inputs.filter((one) => one.required))
        expect(row[column.id], `${table} ${column.id}`).toBeDefined();
    }
  });

  it("keep to the limits and lists that a person's typing is held to", () => {
    for (const { table, row } of rows) {
      for (const column of inputsOf(table)) {
        const value = row[column.id];
        if (value === undefined) continue;
        if (column.limits !== undefined) {
          expect(value, `${table} ${column.id}`).toBeGreaterThanOrEqual(column.limits.US.low);
          expect(value, `${table} ${column.id}`).toBeLessThanOrEqual(column.limits.US.high);
        }
        if (column.choices?.kind === "fixed") expect(column.choices.choices, `${table} ${column.id}`).toContain(value);
        if (column.choices?.kind === "column") {
          const { table: source, column: key } = column.choices;
          expect(
            lists[source]?.map((one) => one[key]),
            `${table} ${column.id}`,
          ).toContain(value);
        }
      }
    }
  });

  it("lie on 1 and 2 March 2027", () => {
    // Days since 30 December 1899, Excel's day 0 for dates after February 1900.
    const serial = (date: string): number =>
      (Date.parse(`${date}T00:00:00Z`) - Date.parse("1899-12-30T00:00:00Z")) / 86_400_000;
    const times = [
      ...(firstTwoDays.rows.readings ?? []),
      ...(firstTwoDays.rows.additions ?? []),
      ...(firstTwoDays.rows.benchTests ?? []),
    ].map((row) => Number(row["when"]));
    expect(Math.min(...times)).toBeGreaterThanOrEqual(serial("2027-03-01"));
    expect(Math.max(...times)).toBeLessThan(serial("2027-03-03"));
  });

  it("say that they are invented", () => {
    expect(String(firstTwoDays.fields.jobNumber)).toContain("invented");
  });
});
