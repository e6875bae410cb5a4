import { describe, expect, test } from "vitest";

import { editLog, readLog, takeBack } from "../../../../src/excel/log-workbook.ts";
import type { LogSnapshot } from "../../../../src/joblog/model/log-snapshot.ts";
import { countInEntry } from "../../../../src/pane/record/forms/count-in/count-in-entry.ts";
import { demoLog, openDemoLog } from "../../excel/log/demo-log.ts";
import { asked, fill, said, withRows } from "./entry-forms.ts";

const at = "2027-03-02T17:00";

const withCounts = (log: LogSnapshot, counts: LogSnapshot["rows"]["itemCounts"]): LogSnapshot => ({
  ...log,
  rows: { ...log.rows, itemCounts: counts },
});

describe("counting pieces in", () => {
  test("says how the list stands against it, by the words of the sheet", async () => {
    const plates = { claim: "D-0427", item: "plates", standing: "pending" };
    const log = withRows(withCounts(await demoLog(at), []), "items", [
      { id: "I901", ...plates, quantity: 18 },
      { id: "I902", ...plates, quantity: 3 },
      { id: "I903", ...plates, claim: "D-0431", quantity: 7 },
    ]);
    const listed = 21;
    const filled = (received: number) => fill(countInEntry, log, { claim: "D-0427", received: String(received) });
    expect(said(filled(listed))).toBe("21 pieces listed so far.\nBalances, some pending.");
    expect(said(filled(listed + 3))).toMatch(/3 not accounted for\.$/);
    expect(filled(listed).meaning.rows).toEqual([{ table: "itemCounts", row: { claim: "D-0427", received: listed } }]);
  });

  test("puts another count in the place of one only when asked", async () => {
    const log = withCounts(await demoLog(at), [{ position: 0, cells: { claim: "D-0427", received: 40 } }]);
    const again = fill(countInEntry, log, { claim: "D-0427", received: "42" });
    expect(asked(again)).toBe("Claim D-0427 was counted in at 40 already. Put 42 in its place?");
    expect(again.meaning).toMatchObject({
      rows: [],
      changes: [{ table: "itemCounts", position: 0, cells: { received: { before: 40, after: 42 } } }],
    });
    expect(asked(fill(countInEntry, log, { claim: "D-0427", received: "40" }))).toBe("");
  });

  test.each([
    ["no claim", { claim: "", received: "3" }, "claim"],
    ["a claim that is not in the log", { claim: "X-1", received: "3" }, "claim"],
    ["no count", { claim: "D-0427", received: "" }, "received"],
    ["0", { claim: "D-0427", received: "0" }, "received"],
    ["half a piece", { claim: "D-0427", received: "2.5" }, "received"],
    ["fewer than none", { claim: "D-0427", received: "-3" }, "received"],
    ["a word", { claim: "D-0427", received: "three" }, "received"],
  ])("refuses %s, at its field", async (_, bad, key) => {
    const filled = fill(countInEntry, await demoLog(at), bad);
    expect(filled.problems.map((problem) => problem.key)).toContain(key);
    expect(filled.meaning.rows).toEqual([]);
  });

  test("is written to the sheet, which then says whether it balances, and taken back", async () => {
    await openDemoLog(at);
    const before = await readLog();
    if (before === undefined) throw new Error("no log");
    const { meaning } = fill(countInEntry, before, { claim: "D-0427", received: "500" });
    const receipt = await editLog({ rows: meaning.rows, changes: meaning.changes ?? [] });
    const row = (await readLog())?.rows.itemCounts.find(({ cells }) => cells.claim === "D-0427");
    expect(row?.cells).toMatchObject({
      received: 500,
      balance: expect.stringMatching(/not accounted for$/) as unknown,
    });
    await takeBack(receipt);
    expect((await readLog())?.rows.itemCounts).toEqual(before.rows.itemCounts);
  });
});
