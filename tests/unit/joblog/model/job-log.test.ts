import { describe, expect, it } from "vitest";

import { unitSystems } from "../../../../src/core/units/unit-system.ts";
import { jobLog } from "../../../../src/joblog/job-log.ts";
import { headerOf } from "../../../../src/joblog/model/headers.ts";

const tables = jobLog.sheets.flatMap((sheet) => sheet.tables);
const fields = jobLog.sheets.flatMap((sheet) => sheet.fields);

function repeated(words: readonly string[]): readonly string[] {
  const lower = words.map((word) => word.toLowerCase());
  return lower.filter((word, index) => lower.indexOf(word) !== index);
}

describe("the job log's vocabulary", () => {
  it("gives every sheet, table and field an id of its own", () => {
    expect(repeated(jobLog.sheets.map((sheet) => sheet.id))).toEqual([]);
    expect(repeated(tables.map((table) => table.id))).toEqual([]);
    expect(repeated(fields.map((field) => field.id))).toEqual([]);
  });

  it("gives every column of a table an id of its own", () => {
    for (const table of tables) expect(repeated(table.columns.map((column) => column.id)), table.name).toEqual([]);
  });

  it("never uses a name for two tables or cells, whatever the case, since Excel keeps them in one list", () => {
    expect(repeated([...tables.map((table) => table.name), ...fields.map((field) => field.name)])).toEqual([]);
  });

  it("uses no name that Excel would take for a cell's address", () => {
    for (const name of [...tables.map((table) => table.name), ...fields.map((field) => field.name)]) {
      expect(name).toMatch(/^[A-Za-z][A-Za-z.]*$/);
      expect(name).not.toMatch(/^[A-Za-z]{1,3}\d+$|^[RrCc]$/);
    }
  });

  it.each(unitSystems)("never repeats a header within a table in %s units", (system) => {
    for (const table of tables)
      expect(repeated(table.columns.map((column) => headerOf(column, system))), table.name).toEqual([]);
  });

  it("starts every table with a column that is never computed, so that no row can look empty, but where nobody types", () => {
    for (const table of tables.filter((one) => one.fixedRows !== true))
      expect(table.columns[0]?.role, table.name).toBe("input");
  });

  it("keeps helper columns at the right edge", () => {
    for (const table of tables) {
      const roles = table.columns.map((column) => column.role === "computed" && column.helper === true);
      const first = roles.indexOf(true);
      if (first >= 0) expect(roles.slice(first).every(Boolean), table.name).toBe(true);
    }
  });

  it("holds every number and choice that is typed to limits or a list", () => {
    for (const table of tables) {
      for (const column of table.columns) {
        if (column.role === "computed") continue;
        if (column.type === "choice") expect(column.choices, `${table.name} ${column.id}`).toBeDefined();
        if (column.type === "number" || column.type === "money")
          expect(column.limits, `${table.name} ${column.id}`).toBeDefined();
      }
    }
  });

  it("explains every column and field in a sentence of its own", () => {
    for (const one of [...tables.flatMap((table) => table.columns), ...fields])
      expect(one.help, one.id).toMatch(/^(?:[A-Z0-9]|pH ).+\.$/);
  });

  it("colors only columns that the table has", () => {
    for (const table of tables) {
      for (const signal of table.signals ?? [])
        expect(
          table.columns.map((column) => column.id),
          table.name,
        ).toContain(signal.column);
    }
  });

  it("shows a caution on every sheet, once", () => {
    for (const sheet of jobLog.sheets) expect(sheet.caution, sheet.name).toMatch(/\.$/);
  });
});
