import { expect, test } from "vitest";

import { buildLog, readLog } from "../../../src/excel/log-workbook.ts";
import { jobLog } from "../../../src/joblog/job-log.ts";
import { layOut } from "../../../src/joblog/layout/lay-out.ts";
import { openWorkbook } from "./log/open-workbook.ts";

const plan = layOut(jobLog, { system: "US" }, { fields: {}, rows: {} });

/** A workbook of the person's own; Excel takes names that differ in capitals alone for one. */
async function ownWorkbook(names: readonly string[], table?: string): Promise<() => unknown> {
  const host = openWorkbook();
  await Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getActiveWorksheet();
    sheet.getRange("A1:B2").values = [
      ["Number", "Who"],
      ["4711", "Ann"],
    ];
    if (table !== undefined) sheet.tables.add("A1:B2", true).name = table;
    await context.sync();
    for (const name of names) context.workbook.names.add(name, sheet.getRange("D4"));
    await context.sync();
  });
  return () => ({
    sheets: host.workbook.sheets.ids().map((sheet) => host.values(host.workbook.sheets.nameOf(sheet))),
    names: host.workbook.names.list(),
    tables: host.workbook.tables.list().map(({ name }) => name),
  });
}

test.each(["claims", "CLAIMS", "Claims"])(
  "a table of their own named %s is refused by name, with the way out",
  async (table) => {
    const everything = await ownWorkbook([], table);
    const before = everything();
    expect(await readLog()).toBeUndefined();
    await expect(buildLog(plan)).rejects.toThrow(
      /table of its own named Claims \(capitals do not count\).*Nothing was changed.*Table Design, Table Name.*new workbook/,
    );
    expect(everything()).toEqual(before);
  },
);

test.each([
  [
    ["Unit.System"],
    /a defined name of its own, Unit\.System, and.*that name\. Nothing was changed.*Give it another name/,
  ],
  [["unit.system"], /a defined name of its own, unit\.system,/],
  [["unit.system", "HOUSE.SHARE"], /defined names of its own, unit\.system, HOUSE\.SHARE, and.*Give them other names/],
] as const)(
  "defined names of their own like the log's, %s, are refused by name, with the way out",
  async (names, words) => {
    const everything = await ownWorkbook(names);
    const before = everything();
    expect(await readLog()).toBeUndefined();
    await expect(buildLog(plan)).rejects.toThrow(words);
    await expect(buildLog(plan)).rejects.toThrow(/Formulas, Name Manager.*new workbook/);
    expect(everything()).toEqual(before);
  },
);

test("such a name is refused beside a table of their own, too, that is like none of the log's", async () => {
  await ownWorkbook(["Unit.System"], "Ours");
  await expect(buildLog(plan)).rejects.toThrow(/a defined name of its own, Unit\.System/);
});

test("a name that Excel already holds for another purpose does not make a table of their own the log's", async () => {
  await ownWorkbook(["Unit.System"], "claims");
  await expect(buildLog(plan)).rejects.toThrow(/table of its own named Claims/);
});
