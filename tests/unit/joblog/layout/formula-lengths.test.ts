import { expect, it } from "vitest";

import type { TableId } from "../../../../src/joblog/formula/log-types.ts";
import { jobLog } from "../../../../src/joblog/job-log.ts";
import { layOut } from "../../../../src/joblog/layout/lay-out.ts";

/** A longer formula is one that nobody follows in the formula bar. */
const longest = 500;

/** A median without array formulas; its steps would be printed, for the table above stands within the width of another. */
const inOneCell = ["stockBalance.dailyUse"];

/** Where a bookkeeper checks what is charged to whom. */
const money: readonly TableId[] = [
  "stockBalance",
  "stockMoves",
  "monthEnd",
  "journal",
  "loads",
  "shares",
  "costLines",
  "statementShares",
  "statementCharges",
  "statementCounts",
  "statementAlone",
  "statementTotal",
];

it.each(["US", "metric"] as const)(
  "no formula of the money's tables is longer than 500 characters in %s units",
  (system) => {
    const formulas = layOut(jobLog, { system }, { fields: {}, rows: {} }).sheets.flatMap(({ tables }) =>
      tables
        .filter(({ id }) => money.some((one) => one === id))
        .flatMap(({ id, columns }) =>
          columns.flatMap((column) =>
            column.formula === undefined ? [] : [[`${id}.${column.id}`, column.formula.length] as const],
          ),
        ),
    );
    expect(formulas.length).toBeGreaterThan(80);
    expect(formulas.filter(([, length]) => length > longest).map(([id]) => id)).toEqual(inOneCell);
  },
);
