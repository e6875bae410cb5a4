import { expect, it } from "vitest";

import { unitSystems } from "../../../../src/core/units/unit-system.ts";
import { jobLog } from "../../../../src/joblog/job-log.ts";
import { layOut } from "../../../../src/joblog/layout/lay-out.ts";

/** A longer formula is one that nobody follows in the formula bar. */
const longest = 500;

/**
 * A median without array formulas, and a balance in words: their steps would be printed, for either table stands above a
 * wider one and within its width.
 */
const inOneCell = ["itemCounts.balance", "stockBalance.dailyUse"];

it.each(unitSystems)("no formula of the log is longer than 500 characters in %s units", (system) => {
  const { sheets } = layOut(jobLog, { system }, { fields: {}, rows: {} });
  const ofColumns = sheets.flatMap(({ tables }) =>
    tables.flatMap(({ id, columns }) =>
      columns.flatMap(({ id: column, formula }) =>
        formula === undefined ? [] : [[`${id}.${column}`, formula] as const],
      ),
    ),
  );
  const known = new Set(ofColumns.map(([, formula]) => formula));
  const ofFields = sheets.flatMap(({ name, cells }) =>
    cells.flatMap((cell) =>
      cell.kind === "formula" && !known.has(cell.formula)
        ? [[`${name}, row ${String(cell.row + 1)}`, cell.formula] as const]
        : [],
    ),
  );
  expect(ofColumns.length).toBeGreaterThan(300);
  expect(ofFields.length).toBeGreaterThan(20);
  const tooLong = [...ofColumns, ...ofFields].filter(([, formula]) => formula.length > longest);
  expect(tooLong.map(([where]) => where)).toEqual(inOneCell);
});
