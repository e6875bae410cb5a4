/**
 * What a person without the add-in gets who changes a figure of the money in LibreOffice.
 *
 * @module-tag landing
 */
import { beforeAll, describe, expect, it } from "vitest";

import { writeWorkbook } from "../../../src/files/xlsx-writer.ts";
import { CellError, type Scalar } from "../../../src/joblog/evaluate/cell-value.ts";
import { EvaluatedLog } from "../../../src/joblog/evaluate/evaluated-log.ts";
import type { TableId } from "../../../src/joblog/formula/log-types.ts";
import { jobLog } from "../../../src/joblog/job-log.ts";
import { cellAddress } from "../../../src/joblog/layout/addresses.ts";
import { layOut } from "../../../src/joblog/layout/lay-out.ts";
import { typedLog } from "../../../src/joblog/layout/typed-cells.ts";
import type { LogContent, LogRow } from "../../../src/joblog/model/definition.ts";
import { firstTwoDays } from "../../demo/days/demo-week.ts";
import { demoBath as bath, moment } from "../../demo/demo-week-times.ts";
import { demoWith } from "../joblog/sheets/worked-log.ts";
import { hasLibreOffice, recalculated } from "./libre-office.ts";
import { storedResult, words } from "./native-formulas.ts";
import { cellsOf, partsOf } from "./read-parts.ts";

/** Tables of what is charged to whom; none of their formulas calls the add-in. */
const money: readonly TableId[] = [
  "loads",
  "shares",
  "costLines",
  "monthEnd",
  "statementShares",
  "statementCharges",
  "statementTotal",
];

/** Beginnings of the names of their sums. */
const sums = /^(?:Cost|Month|Statement)\./;

const load = (id: string, claim: string, clock: string, baskets: number): LogRow<"loads"> => ({
  id,
  bath,
  claim,
  when: moment(1, clock),
  baskets,
  soil: claim === "D-0427" ? "heavy" : "light",
  minutes: 8,
});

const { rows } = firstTwoDays;

const edits: readonly (readonly [name: string, content: LogContent])[] = [
  [
    "a cost line",
    { costLines: (rows.costLines ?? []).map((one) => (one.id === "C002" ? { ...one, amount: 81.37 } : one)) },
  ],
  ["a basket count", { loads: [load("L001", "D-0427", "10:00", 7), load("L002", "D-0431", "11:00", 3)] }],
  ["the basis", { baths: (rows.baths ?? []).map((one) => ({ ...one, shareBasis: "soil-weighted baskets" as const })) }],
  ["a pack's price", { concentrates: (rows.concentrates ?? []).map((one) => ({ ...one, packPrice: 160 })) }],
].map(([name, changed]) => [
  name as string,
  demoWith({
    loads: [load("L001", "D-0427", "10:00", 11), load("L002", "D-0431", "11:00", 3)],
    shares: [
      { bath, claim: "D-0427" },
      { bath, claim: "D-0431" },
    ],
    ...(changed as LogContent["rows"]),
  }),
]);

const fields = jobLog.sheets.flatMap((sheet) => sheet.fields);

const shown = (value: Scalar | undefined): string => (value instanceof CellError ? value.code : words(value ?? ""));

describe.skipIf(!hasLibreOffice).each(edits)("after %s is changed [needs LibreOffice]", (_name, content) => {
  const expected: string[] = [];
  const found: string[] = [];

  beforeAll(async () => {
    const withClaim = { ...content, fields: { ...content.fields, statementClaim: "D-0427" } };
    const plan = layOut(jobLog, { system: "US" }, withClaim);
    const log = new EvaluatedLog(jobLog, typedLog(plan), [], "everything");
    // Stored with a 0, so that nothing but LibreOffice can make them right; calls of the add-in come to #NAME? there.
    const parts = partsOf(await recalculated(await writeWorkbook(plan, () => 0)));
    plan.sheets.forEach((sheet, index) => {
      const cells = cellsOf(parts, index + 1);
      for (const { name, row, column } of plan.names.filter((one) => one.sheet === sheet.name && sums.test(one.name))) {
        const field = fields.find((one) => one.name === name);
        if (field?.formula === undefined) continue;
        expected.push(`${name}: ${shown(log.named(field.id))}`);
        found.push(`${name}: ${words(storedResult(cells.get(cellAddress(row, column))))}`);
      }
      for (const { id, area, columns } of sheet.tables) {
        const table = money.find((one) => one === id);
        if (table === undefined) continue;
        for (let line = 0; line < log.linesIn(table); line += 1)
          columns.forEach((column, place) => {
            if (column.formula === undefined) return;
            const name = `${table} ${String(line)} ${column.id}: `;
            expected.push(name + shown(log.cell(table, column.id, line)));
            found.push(name + words(storedResult(cells.get(cellAddress(area.row + 1 + line, area.column + place)))));
          });
      }
    });
  }, 120_000);

  it("every figure of shares, cost lines, statement and month end is right", () => {
    expect(expected.length).toBeGreaterThan(150);
    expect(expected.filter((line) => sums.test(line)).length).toBeGreaterThan(30);
    expect(expected.filter((line) => /^shares \d+ share: \d/.test(line))).toHaveLength(2);
    expect(found).toEqual(expected);
  });
});
