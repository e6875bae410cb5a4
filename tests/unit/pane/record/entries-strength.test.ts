import { beforeAll, describe, expect, test } from "vitest";

import { findRow, type RowFacts, rowFacts } from "../../../../src/advice/bath-facts.ts";
import { editLog, readLog, takeBack } from "../../../../src/excel/log-workbook.ts";
import type { LogSnapshot } from "../../../../src/joblog/model/log-snapshot.ts";
import { additionEntry } from "../../../../src/pane/record/forms/addition/addition-entry.ts";
import { moment, openDemoLog } from "../../excel/log/demo-log.ts";
import { bath, fill, said } from "./entry-forms.ts";

const weak = "B-T2-0301";
const opened = moment("2027-03-01T06:50");

/** A fill in the small tank for 1+36, its whole dose in, that smears on plastic. */
const extra = {
  baths: [{ bath: weak, tank: "T2", water: "RO", concentrate: "CN-1", opened, strength: "1+36" }],
  additions: [
    { id: "A101", bath: weak, when: opened, kind: "concentrate", purpose: "opening", amount: 0.5, account: "claims" },
  ],
  benchTests: [
    { id: "T101", bath: weak, when: moment("2027-03-01T08:00"), strength: "1+36", surface: "plastic", result: "fail" },
  ],
};

let log: LogSnapshot;

async function present(): Promise<LogSnapshot> {
  const read = await readLog();
  if (read === undefined) throw new Error("The workbook holds no log.");
  return read;
}

function factsIn(snapshot: LogSnapshot): RowFacts<"baths"> {
  const row = findRow(snapshot, "baths", "bath", weak);
  if (row === undefined) throw new Error(`No bath ${weak}.`);
  return rowFacts(row);
}

beforeAll(async () => {
  log = await openDemoLog("2027-03-01T09:10", extra);
}, 120_000);

describe("the strength wanted of an open bath", () => {
  test("is asked for only where concentrate goes in as opening", () => {
    const keys = (purpose: string): readonly string[] =>
      fill(additionEntry, log, { bath: weak, purpose }).groups.flatMap(({ fields }) => fields.map(({ key }) => key));
    expect(keys("opening")).toContain("strengthNow");
    expect(keys("top-up")).not.toContain("strengthNow");
  });

  test("is raised together with the concentrate: planned dose and bench test follow, and take back undoes both", async () => {
    const facts = factsIn(log);
    const volume = facts.number("workingVolume") ?? 0;
    // One part in 29 of the working volume, by definition of the ratio; what the water takes up comes to it as before.
    const wanted = volume / 29 + (facts.number("plannedDose") ?? 0) - (facts.number("baseDose") ?? 0);
    const filled = fill(additionEntry, log, { bath: weak, strengthNow: "1+28", when: "2027-03-01T09:15" });
    expect(Number(filled.values["amount"])).toBeCloseTo(wanted - 0.5, 3);
    expect(said(filled)).toMatch(/Strength wanted: 1\+36 becomes 1\+28; planned dose/);
    expect(filled.problems).toEqual([]);
    const receipt = await editLog(filled.meaning);
    const raised = factsIn(await present());
    expect(raised.text("strength")).toBe("1+28");
    expect(raised.number("plannedDose")).toBeCloseTo(wanted, 6);
    expect(raised.number("openingDose")).toBeCloseTo(wanted, 3);
    expect(raised.text("benchState")).toBe("no test since the last concentrate");
    expect((await present()).rows.additions.at(-1)?.cells.note).toBe("strength wanted 1+28, was 1+36");
    await takeBack(receipt);
    expect(await present()).toEqual(log);
  });

  test("is refused where the bath changed meanwhile, with nothing written", async () => {
    const filled = fill(additionEntry, log, { bath: weak, strengthNow: "1+28", when: "2027-03-01T09:15" });
    await Excel.run(async (context) => {
      context.workbook.tables
        .getItem("Baths")
        .columns.getItem("Strength wanted")
        .getDataBodyRange()
        .getCell(findRow(log, "baths", "bath", weak)?.position ?? 0, 0).values = [["1+30"]];
      await context.sync();
    });
    await expect(editLog(filled.meaning)).rejects.toThrow(
      /Strength wanted \(Baths\) was changed since it was read: it holds "1\+30"\. Nothing was written/,
    );
    expect((await present()).rows.additions).toHaveLength(log.rows.additions.length);
  });

  test("is refused where it gives no dose, or less than is in already", () => {
    const problem = (strengthNow: string): string | undefined =>
      fill(additionEntry, log, { bath: weak, strengthNow, amount: "0.1" }).problems.find(
        ({ key }) => key === "strengthNow",
      )?.message;
    expect(problem("strong")).toMatch(/"strong" gives no dose/);
    expect(problem("1+60")).toMatch(/asks for .* gal, and 0\.5 gal are in already/);
    expect(problem("1+20")).toBeUndefined();
  });

  test("changes nothing where it is left as it stands", () => {
    expect(
      fill(additionEntry, log, { bath, purpose: "opening", amount: "0.5", when: "2027-03-01T09:15" }).meaning.changes,
    ).toEqual([]);
  });
});
