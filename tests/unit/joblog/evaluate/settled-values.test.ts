/** A settled cell that showed nothing is blank, where its formula had given "": what rests on it must not take that for 0. */
import { expect, test } from "vitest";

import { asShown, isError, type Scalar } from "../../../../src/joblog/evaluate/cell-value.ts";
import { EvaluatedLog } from "../../../../src/joblog/evaluate/evaluated-log.ts";
import { callingColumns, settledTables } from "../../../../src/joblog/formula/calling-columns.ts";
import { jobLog } from "../../../../src/joblog/job-log.ts";
import type { LogDefinition, LogRow, TableDefinition } from "../../../../src/joblog/model/definition.ts";
import type { AnyRow } from "../../../../src/joblog/model/log-snapshot.ts";
import { demoLog, moment } from "../../excel/log/demo-log.ts";
import { bath } from "../../pane/record/entry-forms.ts";

const tables = settledTables(jobLog);
const allTables = jobLog.sheets.flatMap((sheet) => sheet.tables);

/** The log with its calls typed: every row of every bath settled. */
const settled: LogDefinition = {
  ...jobLog,
  sheets: jobLog.sheets.map((sheet) => ({
    ...sheet,
    tables: sheet.tables.map((table): TableDefinition => {
      const calling = tables.includes(table) ? callingColumns(table, jobLog) : new Set<string>();
      return {
        ...table,
        columns: table.columns.map((column) => {
          if (column.role === "input" || !calling.has(column.id)) return column;
          const { id, label, type, width, help } = column;
          return { id, label, type, width, help, role: "input", required: false };
        }),
      };
    }),
  })),
};

function inWords(value: Scalar | undefined): string {
  return value === null ? "blank" : JSON.stringify(isError(value ?? null) ? asShown(value) : value);
}

const at = moment("2027-03-03T08:00");

/** Rows as nobody should type them, so that as many calls as can be give nothing. */
const odd: readonly LogRow<"readings">[] = [
  { id: "X1", bath, when: at, purpose: "check", temperature: 77 },
  { id: "X2", bath, when: at + 0.01, purpose: "check", ph: 11.2 },
  { id: "X3", bath, when: at + 0.02, purpose: "rinse", ph: 8.2, temperature: 70 },
  { id: "X4", bath, when: at + 0.03, purpose: "after top-up", ph: 0, temperature: 77 },
  { id: "X5", bath, when: at + 0.04, ph: 11.3, temperature: 77 },
  { id: "X6", bath, purpose: "check", ph: 10.2, temperature: 77, confirmed: "yes" },
  { id: "X7", bath: "nowhere", when: at + 0.05, purpose: "check", ph: 11.3, temperature: 77 },
  { id: "X8", bath: "B-T2-0303", when: at + 0.05, purpose: "check", ph: 11.3, temperature: 77 },
  { id: "X9", bath, when: at + 0.06, purpose: "after top-up", ph: 10.8, temperature: 77, confirmed: "yes" },
  { id: "X10", bath, when: at + 0.07, purpose: "check", ph: 10.4, temperature: 77, confirmed: "yes" },
];

test("every other figure is the same with values in place of calls, blank where they gave nothing", async () => {
  const log = await demoLog("2027-03-04T17:00", {
    readings: odd,
    baths: [{ bath: "B-T2-0303", opened: at }],
    additions: [{ id: "Y1", bath, when: at, kind: "concentrate", purpose: "top-up" }],
    releases: [
      { id: "Z1", bath, when: at, volume: 20, ph: 10.9, acid: "citric", target: 8.5 },
      { id: "Z2", bath, when: at, alkalinity: 900 },
      { id: "Z3", bath: "B-T2-0303", volume: 20, ph: 10.9, acid: "citric", target: 8.5 },
    ],
  });
  const [follows, holds] = [jobLog, settled].map((definition) => new EvaluatedLog(definition, log, [], "everything"));
  let blanks = 0;
  const compared = allTables.flatMap((table) => {
    const calling = tables.includes(table) ? callingColumns(table, jobLog) : new Set<string>();
    return log.rows[table.id].flatMap(({ position, cells }: AnyRow) =>
      table.columns.flatMap(({ id }) => {
        if (calling.has(id)) {
          if (cells[id] === undefined) blanks += 1;
          return [];
        }
        // As they are worked out: Excel would show a blank that a formula passes on as 0, and "" as nothing.
        const [due, shown] = [follows, holds].map((one) => inWords(one?.cell(table.id, id, position)));
        return [{ place: `${table.id} ${String(position)} ${id}`, due, shown }];
      }),
    );
  });
  expect(blanks).toBeGreaterThan(50);
  expect(compared.filter(({ due, shown }) => due !== shown)).toEqual([]);
});
