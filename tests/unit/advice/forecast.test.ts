import { describe, expect, it } from "vitest";

import { forecast, hoursLeft, learnedTopUp } from "../../../src/advice/readings/forecast.ts";
import { bench } from "../../../src/joblog/model/words.ts";
import { demoLog, moment } from "../excel/log/demo-log.ts";
import { withCells } from "../pane/record/entry-forms.ts";

const bath = "B-T1-0301";

const reading = (id: string, when: string, ph: number, purpose = "check") => ({
  id,
  bath,
  when: moment(when),
  purpose,
  ph,
  temperature: 77,
});
const topUp = (id: string, when: string, amount: number, phBefore: number, phAfter: number) => ({
  id,
  bath,
  when: moment(when),
  kind: "concentrate",
  purpose: "top-up",
  amount,
  account: "claims",
  phBefore,
  phAfter,
});

describe("what a bath's readings and additions foretell", () => {
  it("is the time to the trigger at the pace since the last addition", async () => {
    const falling = [
      reading("R020", "2027-03-04T10:00", 11.4),
      reading("R021", "2027-03-04T11:00", 11.3),
      reading("R022", "2027-03-04T12:00", 11.2),
      reading("R023", "2027-03-04T13:00", 11.1),
    ];
    const log = await demoLog("2027-03-02T17:00", {
      additions: [topUp("A005", "2027-03-04T09:00", 1.4, 10.8, 11.4)],
      readings: falling,
    });
    // 0.18 above the trigger of 10.92, falling by 0.1 an hour; each reading is moved a little to the baseline's 76.8 °F.
    expect(hoursLeft(log, bath)).toBeCloseTo(1.8, 0);
    expect(forecast(log, bath, "US")).toEqual([
      expect.stringMatching(/: 2 hours from the last reading to the trigger/),
    ]);
  }, 90_000);

  it("is nothing with fewer than four readings since the last addition", async () => {
    const log = await demoLog("2027-03-02T17:00", {
      additions: [topUp("A005", "2027-03-04T09:00", 1.4, 10.8, 11.4)],
      readings: [reading("R020", "2027-03-04T10:00", 11.4), reading("R021", "2027-03-04T11:00", 11.3)],
    });
    expect(hoursLeft(log, bath)).toBeUndefined();
    expect(forecast(log, bath, "US")).toEqual([]);
  }, 90_000);

  it("is a top-up learned from the bath's own additions, once one was read", async () => {
    const additions = [
      topUp("A005", "2027-03-04T08:30", 1.39, 10.83, 11.13),
      topUp("A006", "2027-03-04T08:55", 1.39, 11.13, 11.33),
      topUp("A007", "2027-03-04T09:20", 0.4, 11.33, 11.39),
    ];
    const log = await demoLog("2027-03-02T17:00", {
      additions,
      readings: [
        reading("R018", "2027-03-04T09:40", 11.39, "after top-up"),
        reading("R030", "2027-03-05T08:15", 10.83),
      ],
    });
    // 0.824 of the opening dose of 4.178 gal: the invented week's own answer from the same three additions, told by a
    // meter that is good to 0.02.
    const fine = { ...log, fields: { ...log.fields, meterLimit: 0.02 } };
    expect(Number(learnedTopUp(fine, bath, 10.83)) / 4.178).toBeCloseTo(0.824, 2);
    expect(forecast(fine, bath, "US")).toEqual([expect.stringMatching(/own additions did: 3\.4\d gal in all/)]);
    // To the shop's 0.05 the third addition, a rise of 0.06, tells nothing: (10^11.42 − 10^10.83) over the mean of
    // (10^11.13 − 10^10.83) and (10^11.33 − 10^11.13), by 0.3327 of the opening dose, is 0.889 of it.
    expect(Number(learnedTopUp(log, bath, 10.83)) / 4.178).toBeCloseTo(0.889, 2);
  }, 90_000);

  // 121.175 gal at 1+28 holds 4.178 gal; four fifths of 28 parts of water, 1+22.4, takes 121.175 / 23.4 = 5.178 gal.
  it("is the step up after a bench test that failed with the planned dose in", async () => {
    const pure = withCells(await demoLog("2027-03-02T17:00"), "waters", "RO", { hardness: 0, alkalinity: 0 });
    const log = withCells(pure, "baths", bath, {
      state: "bench test",
      benchState: bench.refused,
      plannedDose: 4.178,
    });
    const stepUp = "A step up is 1 gal more: 20 % less water per part of concentrate.";
    expect(forecast(log, bath, "US")).toContain(stepUp);
    expect(forecast(withCells(log, "baths", bath, { plannedDose: 5.5 }), bath, "US")).not.toContain(stepUp);
    // At 1+18, the strongest that its label names, there is none.
    const strongest = withCells(log, "baths", bath, { strength: "1+18", baseDose: 121.175 / 19, labelHighest: 1 / 19 });
    expect(forecast(strongest, bath, "US").join()).not.toMatch(/step up/);
  }, 90_000);
});
