import { expect, test } from "vitest";

import { editLog, readLog } from "../../../src/excel/log-workbook.ts";
import type { Host } from "../../../src/workbench/host/create-host.ts";
import { firstTwoDays } from "../../demo/days/demo-week.ts";
import { typeAt } from "./log/in-between.ts";
import { openLog } from "./log/prepared-log.ts";

/** The color behind the key of a data row. */
function fillOf(host: Host, table: string, position: number): unknown {
  const area = host.workbook.tables.named(table)?.area;
  if (area === undefined) throw new Error(`There is no table ${table}.`);
  const { sheet: sheetId, row, column } = area;
  return host.model.getters.getCellComputedStyle({ sheetId, row: row + 1 + position, col: column }).fillColor;
}

test("a number that is typed twice gets a color in all its rows, a new row's included, and loses it with the second", async () => {
  const host = await openLog(firstTwoDays);
  const usual = fillOf(host, "Readings", 3);
  expect([0, 1, 9].map((position) => fillOf(host, "Readings", position))).toEqual([usual, usual, usual]);
  await editLog({ rows: [{ table: "readings", row: { id: "R077", bath: "B-T1-0301", when: 46449.3, ph: 11 } }] });
  typeAt(host, "Readings", 10, 0, "r001");
  const colors = [0, 10].map((position) => fillOf(host, "Readings", position));
  expect(colors).toEqual([colors[0], colors[0]]);
  expect(colors[0]).not.toBe(usual);
  expect(fillOf(host, "Readings", 1)).toBe(usual);
  typeAt(host, "Readings", 10, 0, "R078");
  expect(fillOf(host, "Readings", 0)).toBe(usual);
});

test("an entry that fills in a row by its number is refused where two rows bear it, and writes nothing", async () => {
  const host = await openLog(firstTwoDays);
  typeAt(host, "Additions", 1, 0, "A001");
  const before = await readLog();
  const edit = editLog({
    rows: [{ table: "readings", row: { id: "R901", bath: "B-T1-0301", when: 46449.3, ph: 11 } }],
    fills: [{ table: "additions", key: "A001", cells: { note: "foam" } }],
  });
  await expect(edit).rejects.toThrow(/Two rows of table Additions .* number A001.*Nothing was written.*another number/);
  expect(await readLog()).toEqual(before);
});
