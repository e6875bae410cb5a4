import { readFileSync } from "node:fs";
import * as z from "zod";
import { unitSystems } from "../../../src/core/units/unit-system.ts";
import type { LogContent, LogRow } from "../../../src/joblog/definition.ts";
import { jobLog } from "../../../src/joblog/job-log.ts";
import type { AreaPlan, CellPlan, SheetPlan, TablePlan, WorkbookPlan } from "../../../src/joblog/plan.ts";

const column = z.strictObject({ id: z.string(), headers: z.record(z.enum(unitSystems), z.string()), formula: z.string().exactOptional() });

const table = z.strictObject({
  id: z.string(),
  name: z.string(),
  area: z.tuple([z.number(), z.number(), z.number(), z.number()]),
  columns: z.array(column),
});

const field = z.strictObject({
  name: z.string(),
  row: z.number(),
  column: z.number(),
  labelColumn: z.number(),
  label: z.string(),
  value: z.union([z.string(), z.number(), z.boolean()]).exactOptional(),
  formula: z.string().exactOptional(),
});

const sheetOfFile = z.strictObject({ id: z.string(), name: z.string(), widths: z.array(z.number()), tables: z.array(table), fields: z.array(field) });

const releasedLog = z.strictObject({ version: z.number(), sheets: z.array(sheetOfFile) });

type FixtureTable = z.infer<typeof table>;
type FixtureField = z.infer<typeof field>;
type FixtureSheet = z.infer<typeof sheetOfFile>;

/** What a released version laid out; formulas as a log in US units has them. */
export type ReleasedLog = z.infer<typeof releasedLog>;

function released(version: number): ReleasedLog {
  return releasedLog.parse(JSON.parse(readFileSync(new URL(`../../fixtures/log-version-${String(version)}.json`, import.meta.url), "utf8")));
}

export const releasedLogs: readonly ReleasedLog[] = [released(1), released(2)];

const fieldIds = new Map(jobLog.sheets.flatMap((sheet) => sheet.fields).map(({ name, id }) => [name, id]));

/** Stacked tables keep three blank rows between one's last row and the next one's caption. */
function areaOf({ area: [row, column, rows, columns] }: FixtureTable, content: readonly LogRow[]): AreaPlan {
  return { row, column, rows: Math.max(rows, content.length + 1), columns };
}

function tableCells(table: TablePlan, rows: readonly LogRow[]): readonly CellPlan[] {
  const { row, column } = table.area;
  return table.columns.flatMap(({ id, header, formula }, index): readonly CellPlan[] => [
    { row, column: column + index, style: "headerInput", kind: "value", value: header },
    ...Array.from({ length: table.area.rows - 1 }, (_, line): CellPlan => {
      const place = { row: row + 1 + line, column: column + index, style: "input" } as const;
      const value = rows[line]?.[id];
      if (formula !== undefined) return { ...place, kind: "formula", formula };
      return value === undefined ? { ...place, kind: "blank" } : { ...place, kind: "value", value };
    }),
  ]);
}

function fieldCells({ name, row, column, labelColumn, label, value, formula }: FixtureField, content: LogContent): readonly CellPlan[] {
  const given = content.fields[fieldIds.get(name) ?? ""] ?? value;
  const place = { row, column, style: "fieldInput" } as const;
  const cell: CellPlan = formula !== undefined ? { ...place, kind: "formula", formula } : given === undefined ? { ...place, kind: "blank" } : { ...place, kind: "value", value: given };
  return [{ row, column: labelColumn, style: "fieldLabel", kind: "value", value: label }, cell];
}

function sheetPlan(sheet: FixtureSheet, content: LogContent): SheetPlan {
  const tables = sheet.tables.map((table): TablePlan => ({
    id: table.id,
    name: table.name,
    area: areaOf(table, content.rows[table.id as keyof LogContent["rows"]] ?? []),
    columns: table.columns.map(({ id, headers, formula }) => ({ id, header: headers.US, style: "input", ...(formula === undefined ? {} : { formula }) })),
  }));
  return {
    id: sheet.id,
    name: sheet.name,
    tabColor: "#3C7A6B",
    columnWidths: sheet.widths,
    rowHeights: [],
    cells: [
      { row: 0, column: 0, style: "title", kind: "value", value: sheet.name },
      ...sheet.fields.flatMap((field) => fieldCells(field, content)),
      ...tables.flatMap((table) => tableCells(table, content.rows[table.id as keyof LogContent["rows"]] ?? [])),
    ],
    tables,
    validations: [],
    conditionalFormats: [],
    charts: [],
    frozenRows: 0,
    orientation: "landscape",
    footer: "",
    lastPrintedColumn: 5,
    pagesWide: 1,
  };
}

/** A released version's log in US units with rows of one's own, as far as it has their columns. */
export function releasedPlan(log: ReleasedLog, content: LogContent): WorkbookPlan {
  return {
    version: log.version,
    sheets: log.sheets.map((sheet) => sheetPlan(sheet, content)),
    names: log.sheets.flatMap((sheet) => sheet.fields.map(({ name, row, column }) => ({ name, sheet: sheet.name, row, column }))),
  };
}

/** The same content without what that version has no column for. */
export function releasedContent(log: ReleasedLog, content: LogContent): LogContent {
  const columns = new Map(log.sheets.flatMap((sheet) => sheet.tables).map((table) => [table.id, new Set(table.columns.map(({ id }) => id))]));
  const names = new Set(log.sheets.flatMap((sheet) => sheet.fields).map(({ name }) => name));
  const rows = Object.entries(content.rows).flatMap(([table, all]) => {
    const known = columns.get(table);
    return known === undefined ? [] : [[table, all.map((row) => Object.fromEntries(Object.entries(row).filter(([id]) => known.has(id))))] as const];
  });
  const fields = Object.entries(content.fields).filter(([id]) => [...fieldIds].some(([name, known]) => known === id && names.has(name)));
  return { fields: Object.fromEntries(fields), rows: Object.fromEntries(rows) };
}
