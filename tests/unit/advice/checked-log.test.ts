import { describe, expect, it } from "vitest";

import { lastReadingOf } from "../../../src/advice/bath-facts.ts";
import { checkedLog } from "../../../src/advice/checked-log.ts";
import { nextStep } from "../../../src/advice/next-step/next-step.ts";
import { trendOf } from "../../../src/advice/readings/trend-points.ts";
import { waitingSentence, waitingWords, workingOut } from "../../../src/advice/waiting.ts";
import type { TableId } from "../../../src/joblog/formula/log-types.ts";
import { jobLog } from "../../../src/joblog/job-log.ts";
import type { Cells } from "../../../src/joblog/model/definition.ts";
import type { AnyRow, LogSnapshot } from "../../../src/joblog/model/log-snapshot.ts";
import { demoLog, moment } from "../excel/log/demo-log.ts";
import { bath, withCells } from "../pane/record/entry-forms.ts";

const until = "2027-03-04T17:00";
const stepIn = (log: LogSnapshot) => nextStep(log, bath, "US", moment(until));

/** Every computed cell of a log as Excel may show it until the add-in has answered. */
function withComputed(log: LogSnapshot, shown: (cells: Cells, column: string) => Cells[string]): LogSnapshot {
  const rows: Partial<Record<TableId, readonly AnyRow[]>> = {};
  for (const { id: table, columns } of jobLog.sheets.flatMap(({ tables }) => tables)) {
    const computed = columns.filter(({ role }) => role === "computed");
    rows[table] = log.rows[table].map(({ position, cells }: AnyRow) => ({
      position,
      cells: { ...cells, ...Object.fromEntries(computed.map(({ id }) => [id, shown(cells, id)])) },
    }));
  }
  return { ...log, rows: rows as LogSnapshot["rows"] };
}

describe("a log whose figures the pane works out itself", () => {
  it("agrees with a sheet that is worked out", async () => {
    const log = await demoLog(until);
    const { log: checked, noting } = checkedLog(log);
    const { answer, unlike } = noting(() => stepIn(checked));
    expect(unlike).toEqual([]);
    expect(answer).toEqual(stepIn(log));
  });

  it.each(["#BUSY!", "#GETTING_DATA", "#NAME?", 0, undefined])(
    "gives the same answer, and what it rests on, while every formula shows %s",
    async (shown) => {
      const log = await demoLog(until);
      const { log: checked, noting } = checkedLog(withComputed(log, () => shown));
      const { answer, unlike } = noting(() => stepIn(checked));
      expect(answer).toEqual(stepIn(log));
      expect(unlike.map(({ place }) => place)).toContain(`${bath} on the sheet Baths`);
      for (const cell of unlike) expect(cell.shown).toBe(shown);
    },
  );

  it("notes the one cell that shows its former figure, where an answer rests on it", async () => {
    const log = await demoLog(until);
    const { log: checked, noting } = checkedLog(withCells(log, "baths", bath, { trigger: 9 }));
    expect(noting(() => stepIn(checked)).unlike).toEqual([
      { place: `${bath} on the sheet Baths`, under: "Trigger pH", shown: 9, due: expect.any(Number) as number },
    ]);
    expect(noting(() => checked.rows.waters.map(({ cells }) => cells.hardness)).unlike).toEqual([]);
  });

  it("notes nothing for the last digit of a sum", async () => {
    const log = await demoLog(until);
    const trigger = log.rows.baths[0]?.cells.trigger;
    if (typeof trigger !== "number") throw new Error("The demo has no trigger.");
    const near = checkedLog(withCells(log, "baths", bath, { trigger: trigger * (1 + 1e-12) }));
    expect(near.noting(() => stepIn(near.log)).unlike).toEqual([]);
  });

  it("tells the outer of two works what the inner one rests on", async () => {
    const log = await demoLog(until);
    const { log: checked, noting } = checkedLog(withComputed(log, () => "#BUSY!"));
    const { answer, unlike } = noting(() => noting(() => checked.rows.baths[0]?.cells.trigger));
    expect(answer.unlike).toHaveLength(1);
    expect(unlike).toEqual(answer.unlike);
  });

  it.each<readonly [TableId, string, Cells, string]>([
    ["readings", "R004", { verdict: "top up" }, "Verdict"],
    ["readings", "R004", { firstAddition: 3 }, "First addition"],
    ["readings", "R004", { trigger: 9 }, "Trigger here"],
    ["readings", "R004", { phCorrected: 9 }, "pH, drift taken out"],
    ["readings", "R004", { flag: "none" }, "Drift"],
    ["baths", bath, { trigger: 9 }, "Trigger pH"],
    ["additions", "A002", { cost: 1 }, "Cost"],
  ])("finds what was typed over in %s %s, though no advice looks at it: %j", async (table, key, typed, under) => {
    const log = await demoLog("2027-03-02T17:00");
    expect(checkedLog(log).typedOver()).toBeUndefined();
    expect(checkedLog(withCells(log, table, key, typed)).typedOver()).toMatchObject({ under });
  });

  describe("names, once waiting no longer helps, the cell that was typed over", () => {
    const waiting = (typedOver: LogSnapshot): string => {
      const { log, noting, rootOf } = checkedLog(typedOver);
      const { unlike } = noting(() => [stepIn(log), trendOf(log, bath)]);
      expect(waitingSentence(unlike, undefined)).toBe(workingOut);
      return waitingSentence(unlike, rootOf);
    };

    it("in the last reading, whether or not its helper was too", async () => {
      const log = await demoLog("2027-03-02T17:00");
      const last = lastReadingOf(log, bath)?.cells;
      const id = String(last?.id);
      expect(waiting(withCells(log, "readings", id, { verdict: "top up" }))).toContain(
        `Reading ${id} of Mar 2, 16:45, on the sheet Readings shows “top up” under Verdict, and its formula gives “${String(last?.verdict)}”: typed over, or not worked out by Excel. More, Shop, Formulas puts it right.`,
      );
      expect(waiting(withCells(log, "readings", id, { verdict: "top up", judged: "top up" }))).toContain(
        `Reading ${id} of Mar 2, 16:45, on the sheet Readings shows “top up”`,
      );
    });

    it("in an earlier reading", async () => {
      const log = await demoLog("2027-03-02T17:00");
      expect(waiting(withCells(log, "readings", "R006", { verdict: "near" }))).toContain(
        "Reading R006 of Mar 2, 07:50, on the sheet Readings shows “near”",
      );
    });

    it("as a row of a settled bath, with what puts it right", async () => {
      const log = withCells(await demoLog("2027-03-02T17:00"), "baths", bath, { settledBy: "TF" });
      expect(
        waiting(withCells(log, "readings", "R006", { againstTrigger: "near", judged: "near", verdict: "near" })),
      ).toMatch(
        /^No advice while .* Reading R006 of Mar 2, 07:50, on the sheet Readings shows “near” under .*: bath B-T1-0301 was settled, and something that this rests on changed since\. More, Shop, Closed baths, Put the formulas back puts it right\.$/,
      );
    });

    it("in the row of the bath", async () => {
      const log = await demoLog("2027-03-02T17:00");
      expect(waiting(withCells(log, "baths", bath, { state: "closed" }))).toContain(
        "B-T1-0301 on the sheet Baths shows “closed” under State, and its formula gives “in use”",
      );
    });

    it("unless it shows that Excel has not finished, or does not know the functions", async () => {
      const log = await demoLog("2027-03-02T17:00");
      expect(waiting(withCells(log, "baths", bath, { trigger: 9 }))).toMatch(/shows 9 under Trigger pH/);
      const busy = checkedLog(withCells(log, "baths", bath, { trigger: "#BUSY!" }));
      const { unlike: unfinished } = busy.noting(() => stepIn(busy.log));
      expect(waitingWords(unfinished, busy.rootOf)).toEqual({
        sentence: workingOut,
        reason: `${bath} on the sheet Baths still shows “#BUSY!”. If it stays so, press Ctrl+Alt+F9: Excel recalculates everything.`,
      });
      const { log: checked, noting, rootOf } = checkedLog(withComputed(log, () => "#NAME?"));
      const { unlike } = noting(() => stepIn(checked));
      expect(waitingSentence(unlike, rootOf)).toMatch(/^Excel does not know the BATH functions yet/);
    });
  });
});
