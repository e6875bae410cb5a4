/** The shape of a job log: what a shop's workbook holds of it whatever rows it has, and what therefore stays for ever once released. */
import path from "node:path";

import { unitSystems } from "../../src/core/units/unit-system.ts";
import type { ColumnDefinition, LogDefinition, ReleasedShape } from "../../src/joblog/model/definition.ts";
import { headerOf } from "../../src/joblog/model/headers.ts";
import { projectFolder } from "../project.ts";

interface ShapeOfTable {
  readonly name: string;
  /** By id: who fills the column in, and its heading; in every unit system where these differ. */
  readonly columns: Readonly<Record<string, string>>;
}

export interface LogShape {
  readonly version: number;
  /** Once it is, a change of the log is a new version. */
  readonly released: boolean;
  /** Names by id. */
  readonly sheets: Readonly<Record<string, string>>;
  readonly names: readonly string[];
  readonly charts: readonly string[];
  readonly tables: Readonly<Record<string, ShapeOfTable>>;
}

export const shapesFolder = path.join(projectFolder, "tests", "unit", "joblog", "shapes");

export function shapeFile(version: number): string {
  return path.join(shapesFolder, `version-${String(version)}.json`);
}

function shapeOfColumn(column: ColumnDefinition): string {
  const headings = unitSystems.map((system) => headerOf(column, system));
  return `${column.role}: ${[...new Set(headings)].length === 1 ? (headings[0] ?? "") : headings.join(" | ")}`;
}

/** The shape of a log as it is described now. */
export function shapeOf(log: LogDefinition, released: boolean): LogShape {
  const tables = log.sheets.flatMap((sheet) => sheet.tables);
  return {
    version: log.version,
    released,
    sheets: Object.fromEntries(log.sheets.map(({ id, name }) => [id, name])),
    names: log.sheets.flatMap((sheet) => sheet.fields).map(({ name }) => name),
    charts: log.sheets.flatMap((sheet) => sheet.charts ?? []).map(({ id }) => id),
    tables: Object.fromEntries(
      tables.map(({ id, name, columns }) => [
        id,
        { name, columns: Object.fromEntries(columns.map((column) => [column.id, shapeOfColumn(column)])) },
      ]),
    ),
  };
}

/** The part of a shape that an upgrade goes by. */
export function releasedShapeOf({ names, charts, tables }: LogShape): ReleasedShape {
  return {
    names,
    charts,
    columns: Object.fromEntries(Object.entries(tables).map(([id, { columns }]) => [id, Object.keys(columns)])),
  };
}

/** Everything that a shape names, with what it is called. */
function parts({ sheets, names, charts, tables }: LogShape): ReadonlyMap<string, string> {
  return new Map([
    ...Object.entries(sheets).map(([id, name]) => [`sheet ${id}`, name] as const),
    ...names.map((name) => [`named cell ${name}`, ""] as const),
    ...charts.map((id) => [`chart ${id}`, ""] as const),
    ...Object.entries(tables).flatMap(([table, { name, columns }]) => [
      [`table ${table}`, name] as const,
      ...Object.entries(columns).map(([id, column]) => [`column ${table}.${id}`, column] as const),
    ]),
  ]);
}

/** What of a recorded shape the log no longer has under that name, each a line. */
export function lost(recorded: LogShape, now: LogShape): readonly string[] {
  const today = parts(now);
  return [...parts(recorded)].flatMap(([part, called]) => {
    const name = today.get(part);
    if (name === undefined) return [`${part} is gone`];
    return name === called ? [] : [`${part} is "${name}", was "${called}"`];
  });
}

/** What the log has that a recorded shape has not, each a line. */
export function added(recorded: LogShape, now: LogShape): readonly string[] {
  const before = parts(recorded);
  return [...parts(now).keys()].filter((part) => !before.has(part)).map((part) => `${part} is new`);
}
