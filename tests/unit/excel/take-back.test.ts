import { beforeEach, describe, expect, test } from "vitest";

import { editLog, takeBack } from "../../../src/excel/log-workbook.ts";
import type { LogRow } from "../../../src/joblog/model/definition.ts";
import type { Host } from "../../../src/workbench/host/create-host.ts";
import { firstTwoDays } from "../../demo/days/demo-week.ts";
import { openLog } from "./log/prepared-log.ts";

const reading: LogRow<"readings"> = {
  id: "R011",
  bath: "B-T1-0301",
  when: 46449.302083,
  purpose: "check",
  ph: 10.83,
  temperature: 77,
  note: "=1+1",
};
const claim: LogRow<"claims"> = { claim: "D-0500", insurer: "Some insurer" };
const addition: LogRow<"additions"> = {
  id: "A005",
  bath: "B-T1-0301",
  when: 46449.33,
  kind: "concentrate",
  purpose: "top-up",
  amount: 1.39,
  account: "claims",
};

let host: Host;

beforeEach(async () => {
  host = await openLog(firstTwoDays);
});

/** Sizes of the tables and all that the sheets show. */
function everything(): unknown {
  const { sheets, tables } = host.workbook;
  return {
    tables: tables.list().map(({ name, area }) => ({ name, area })),
    sheets: sheets.ids().map((sheet) => host.values(sheets.nameOf(sheet))),
  };
}

async function typeInto(table: string, header: string, position: number, value: string | number): Promise<void> {
  await Excel.run(async (context) => {
    context.workbook.tables.getItem(table).columns.getItem(header).getDataBodyRange().getCell(position, 0).values = [
      [value],
    ];
    await context.sync();
  });
}

describe("taking the last entry back", () => {
  test("leaves the log as it was: a row beneath goes, a spare line is blank again, and so are cells that were filled in", async () => {
    await editLog({ rows: [{ table: "additions", row: addition }] });
    const before = everything();
    const receipt = await editLog({
      rows: [
        { table: "readings", row: reading },
        { table: "readings", row: { ...reading, id: "R012" } },
        { table: "claims", row: claim },
      ],
      fills: [{ table: "additions", key: "A005", cells: { phAfter: 11.13, minutesMixed: 20 } }],
    });
    expect(receipt.rows.map(({ table, position, grown }) => [table, position, grown])).toEqual([
      ["readings", 10, true],
      ["readings", 11, true],
      ["claims", 3, false],
    ]);
    expect(receipt.fills).toEqual([
      { table: "additions", position: 4, key: "A005", cells: { phAfter: 11.13, minutesMixed: 20 } },
    ]);
    expect(everything()).not.toEqual(before);
    await takeBack(receipt);
    expect(everything()).toEqual(before);
  });

  test("is refused, with nothing changed, once any of its cells was changed or its row moved", async () => {
    const receipt = await editLog({
      rows: [
        { table: "readings", row: reading },
        { table: "claims", row: claim },
      ],
    });
    await typeInto("Claims", "Adjuster", 3, "Ann");
    const changed = everything();
    await expect(takeBack(receipt)).rejects.toThrow(
      /table Claims\) was changed since.*Nothing was changed.*Correct it in the sheet/,
    );
    expect(everything()).toEqual(changed);
    await typeInto("Claims", "Adjuster", 3, "");
    await typeInto("Readings", "Reading", 10, "R099");
    await expect(takeBack(receipt)).rejects.toThrow(/table Readings\) was changed since/);
    await typeInto("Readings", "Reading", 10, "R011");
    await takeBack(receipt);
    await expect(takeBack(receipt)).rejects.toThrow(/was changed since/);
  });

  test("leaves a later row of somebody else where it is and blanks its own, which nothing counts any more", async () => {
    const receipt = await editLog({ rows: [{ table: "readings", row: reading }] });
    await editLog({ rows: [{ table: "readings", row: { ...reading, id: "R012", initials: "BB" } }] });
    await takeBack(receipt);
    const readings = host.workbook.tables.named("Readings");
    expect(readings?.area.rows).toBe(13);
    const ids = host
      .values("Readings")
      .slice((readings?.area.row ?? 0) + 10)
      .map((line) => line[0]);
    expect(ids).toEqual(["R010", "", "R012"]);
  });
});
