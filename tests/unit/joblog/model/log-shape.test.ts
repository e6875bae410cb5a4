import { existsSync, readFileSync } from "node:fs";

import { describe, expect, test } from "vitest";

import { added, type LogShape, lost, releasedShapeOf, shapeFile, shapeOf } from "../../../../scripts/log/log-shape.ts";
import { jobLog } from "../../../../src/joblog/job-log.ts";
import type {
  ColumnDefinition,
  FieldDefinition,
  LogDefinition,
  SheetDefinition,
  TableDefinition,
} from "../../../../src/joblog/model/definition.ts";

function recordedShape(version: number): LogShape {
  const file = shapeFile(version);
  if (!existsSync(file))
    throw new Error(`Nothing says what version ${String(version)} of the job log holds. Run: npm run describe-log`);
  return JSON.parse(readFileSync(file, "utf8")) as LogShape;
}

const recorded = recordedShape(jobLog.version);
const now = shapeOf(jobLog, recorded.released);

/** What somebody who changed the log does next. */
function advice(shape: LogShape): string {
  const [version, next] = [String(shape.version), String(shape.version + 1)];
  return shape.released
    ? `Shops have logs of version ${version}. Bring back what is gone; for what is new raise version in src/joblog/job-log.ts to ${next}, add version ${version}'s names, charts and column ids to its "released", and run: npm run describe-log`
    : `Version ${version} is not released yet. If this is meant, run: npm run describe-log`;
}

/** The log with one sheet of it changed. */
function withSheet(id: string, change: (sheet: SheetDefinition) => SheetDefinition): LogDefinition {
  return { ...jobLog, sheets: jobLog.sheets.map((sheet) => (sheet.id === id ? change(sheet) : sheet)) };
}

function withReadings(change: (columns: readonly ColumnDefinition[]) => readonly ColumnDefinition[]): LogDefinition {
  return withSheet("readings", (sheet) => ({
    ...sheet,
    tables: sheet.tables.map((table): TableDefinition => ({ ...table, columns: change(table.columns) })),
  }));
}

function withShopFields(change: (fields: readonly FieldDefinition[]) => readonly FieldDefinition[]): LogDefinition {
  return withSheet("shop", (sheet) => ({ ...sheet, fields: change(sheet.fields) }));
}

describe("the recorded shape of the job log", () => {
  test("is that of today's log", () => {
    const changes = [...lost(recorded, now), ...added(recorded, now)];
    if (changes.length > 0)
      throw new Error(
        `The job log is not as ${shapeFile(jobLog.version)} has it: ${changes.join("; ")}. ${advice(recorded)}`,
      );
    expect(now).toEqual(recorded);
  });

  const earlier = Array.from({ length: jobLog.version - 1 }, (_, index) => recordedShape(index + 1));

  test("of every earlier version is released, stands in today's log, and is what an upgrade goes by", () => {
    expect(Object.keys(jobLog.released).map(Number)).toEqual(earlier.map(({ version }) => version));
    for (const shape of earlier) {
      expect(shape.released, `version ${String(shape.version)}`).toBe(true);
      expect(lost(shape, now), `version ${String(shape.version)}`).toEqual([]);
      expect(jobLog.released[shape.version]).toEqual(releasedShapeOf(shape));
    }
  });

  test.each([
    [
      "a column added",
      withReadings((columns) => [
        ...columns,
        {
          id: "madeUp",
          label: "Made up",
          type: "text",
          role: "input",
          required: false,
          width: 8,
          help: "Of this test.",
        },
      ]),
      ["column readings.madeUp is new"],
    ],
    [
      "a column taken away",
      withReadings((columns) => columns.filter(({ id }) => id !== "level")),
      ["column readings.level is gone"],
    ],
    [
      "a column under another id",
      withReadings((columns) => columns.map((column) => (column.id === "level" ? { ...column, id: "depth" } : column))),
      ["column readings.level is gone", "column readings.depth is new"],
    ],
    [
      "a heading changed",
      withReadings((columns) => columns.map((column) => (column.id === "ph" ? { ...column, label: "pH" } : column))),
      ['column readings.ph is "input: pH", was "input: pH as read"'],
    ],
    [
      "a table renamed",
      withSheet("loads", (sheet) => ({
        ...sheet,
        tables: sheet.tables.map((table) => ({ ...table, name: "Batches" })),
      })),
      ['table loads is "Batches", was "Loads"'],
    ],
    [
      "a sheet renamed",
      withSheet("loads", (sheet) => ({ ...sheet, name: "Batches" })),
      ['sheet loads is "Batches", was "Loads"'],
    ],
    [
      "a named cell renamed",
      withShopFields((fields) =>
        fields.map((field) => (field.id === "bathLife" ? { ...field, name: "Bath.Age" } : field)),
      ),
      ["named cell Bath.Life is gone", "named cell Bath.Age is new"],
    ],
    [
      "a chart taken away",
      withSheet("costs", (sheet) => ({ ...sheet, charts: [] })),
      ["chart Bathsheet.Shares is gone"],
    ],
  ])("tells of %s", (_what, changed, lines) => {
    const shape = shapeOf(changed, false);
    expect([...lost(now, shape), ...added(now, shape)]).toEqual(lines);
  });

  test("says what to do: record anew before the release, a new version after it", () => {
    expect(advice({ ...now, version: 1, released: false })).toMatch(/not released yet.*npm run describe-log/);
    expect(advice({ ...now, version: 1, released: true })).toMatch(
      /raise version in src\/joblog\/job-log\.ts to 2, add version 1's/,
    );
  });
});
