/** @module-tag landing */
import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";

import type { LogSnapshot } from "../../src/joblog/model/log-snapshot.ts";
import { forms } from "../../src/pane/record/forms.ts";
import { firstTwoDays } from "../demo/days/demo-week.ts";
import { runs } from "../setup/random-runs.ts";
import { demoLog } from "../unit/excel/log/demo-log.ts";
import { openLog } from "../unit/excel/log/prepared-log.ts";
import { randomDraft } from "./week/random-draft.ts";
import { anyWeekStep, Week, type WeekStep } from "./week/week-steps.ts";

async function live(steps: readonly WeekStep[]): Promise<readonly string[]> {
  const week = new Week(await openLog(firstTwoDays));
  for (const step of steps) await week.go(step);
  return week.told;
}

describe("a random week", () => {
  let log: LogSnapshot;

  beforeAll(async () => {
    log = await demoLog("2027-03-02T17:00");
  });

  it.each(forms.map((form) => [form.id, form] as const))("answers any draft of the form %s", (_id, form) => {
    const bath = "B-T1-0301";
    fc.assert(
      fc.property(fc.nat(), (seed) => {
        const { problems, meaning } = randomDraft(form, { log, system: "US", bath, now: "2027-03-02T17:00" }, seed);
        const texts = [...problems.map(({ message }) => message), ...meaning.findings.map(({ text }) => text)];
        for (const text of texts) expect(text).not.toMatch(/undefined|\bNaN\b|\[object|Infinity/);
        const writes = [meaning.rows, meaning.fills ?? [], meaning.changes ?? []].flat().length;
        if (problems.length > 0 || meaning.blocked !== undefined) expect(writes).toBe(0);
      }),
      runs(20),
    );
  });

  it("keeps every row that anyone wrote, and no row of what was refused", async () => {
    const told: string[] = [];
    await fc.assert(
      fc.asyncProperty(fc.array(anyWeekStep, { minLength: 1, maxLength: 12 }), async (steps) => {
        told.push(...(await live(steps)));
      }),
      runs(2),
    );
    expect(told.filter((what) => what.endsWith("recorded")).length).toBeGreaterThan(0);
  }, 300_000);
});
