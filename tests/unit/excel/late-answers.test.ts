import { describe, expect, it, vi } from "vitest";

import { checkedLog } from "../../../src/advice/checked-log.ts";
import { nextStep } from "../../../src/advice/next-step/next-step.ts";
import { editLog, readLog } from "../../../src/excel/log-workbook.ts";
import type { LogSnapshot } from "../../../src/joblog/model/log-snapshot.ts";
import { settledLog } from "../../../src/pane/claims/settled-log.ts";
import type { Host } from "../../../src/workbench/host/create-host.ts";
import { firstTwoDays } from "../../demo/days/demo-week.ts";
import { bath } from "../pane/record/entry-forms.ts";
import { moment } from "./log/demo-log.ts";
import { openLog } from "./log/prepared-log.ts";

async function present(): Promise<LogSnapshot> {
  const log = await readLog();
  if (log === undefined) throw new Error("The workbook holds no log.");
  return log;
}

const stepIn = (log: LogSnapshot): string => nextStep(log, bath, "US", moment("2027-03-02T18:00")).sentence;

const allowDrop = async (
  host: Host,
  drop: number,
  until: "former value" | "#BUSY!" = "former value",
): Promise<void> => {
  const before = (await present()).rows.baths.find(({ cells }) => cells.bath === bath);
  if (before === undefined) throw new Error("There is no bath.");
  host.answerLate({ until, seed: 1 });
  await editLog({
    changes: [
      {
        table: "baths",
        position: before.position,
        cells: { dropAllowed: { before: before.cells.dropAllowed, after: drop } },
      },
    ],
  });
};

describe("a log in a workbook whose functions answer late", () => {
  it("shows former figures, which the pane takes for what they are", async () => {
    const host = await openLog(firstTwoDays);
    await allowDrop(host, 0.05);
    const early = await present();
    host.workbook.answers.answerAll();
    const late = await present();
    expect(stepIn(early)).not.toBe(stepIn(late));
    const { log, noting } = checkedLog(early);
    const { answer, unlike } = noting(() => stepIn(log));
    expect(answer).toBe(stepIn(late));
    expect(unlike).not.toEqual([]);
    const checked = checkedLog(late);
    expect(checked.noting(() => stepIn(checked.log))).toEqual({ answer, unlike: [] });
  });

  it("takes an entry while figures are unfinished", async () => {
    const host = await openLog(firstTwoDays);
    host.answerLate({ until: "#BUSY!", seed: 1 });
    const row = { bath, when: moment("2027-03-02T17:30"), purpose: "check", ph: 11.3, temperature: 77 } as const;
    await editLog({ rows: [{ table: "readings", row: { ...row, id: "R901" } }] });
    expect(host.workbook.answers.areComplete).toBe(false);
    await editLog({ rows: [{ table: "readings", row: { ...row, id: "R902" } }] });
    const typed = (await present()).rows.readings.map(({ cells }) => cells.id);
    expect(typed).toEqual(expect.arrayContaining(["R901", "R902"]));
  });

  it("is not frozen for the adjuster before its figures are what their formulas give", async () => {
    const host = await openLog(firstTwoDays);
    await allowDrop(host, 0.05);
    vi.useFakeTimers();
    try {
      const frozen = vi.fn();
      const waiting = settledLog().then(frozen);
      await vi.advanceTimersByTimeAsync(1500);
      expect(frozen).not.toHaveBeenCalled();
      host.workbook.answers.answerAll();
      await vi.advanceTimersByTimeAsync(1500);
      await waiting;
      expect(frozen).toHaveBeenCalledOnce();
    } finally {
      vi.useRealTimers();
    }
  });

  it.each([
    [
      "former value",
      /^No copy was made: .+ shows .+, and its formula gives .+: typed over, or not worked out by Excel\.$/,
    ],
    ["#BUSY!", /^No copy was made: Excel has not worked out .+\.$/],
  ] as const)("is not frozen at all where a figure goes on showing %s, and says which", async (until, words) => {
    const host = await openLog(firstTwoDays);
    await allowDrop(host, 0.05, until);
    vi.useFakeTimers();
    try {
      const waiting = settledLog().catch((error: unknown) => error);
      await vi.advanceTimersByTimeAsync(10_000);
      expect(await waiting).toMatchObject({ what: expect.stringMatching(words) as unknown });
    } finally {
      vi.useRealTimers();
    }
  });
});
