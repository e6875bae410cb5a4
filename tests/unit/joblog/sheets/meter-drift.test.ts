import { describe, expect, it } from "vitest";

import { evaluate } from "../../../../functions/evaluate.ts";
import { meterFix } from "../../../../functions/meter/meter-fix.ts";
import type { LogRow } from "../../../../src/joblog/model/definition.ts";
import { demoBath as bath, moment } from "../../../demo/demo-week-times.ts";
import { demoRowsAnd, demoWith, type WorkedLog, workedLog } from "./worked-log.ts";

// Invented, as all of the demo week: the meter's checks, and the readings of Wednesday and Thursday around the second.
const monday: LogRow<"meterChecks"> = {
  id: "M1",
  when: moment(0, "08:00"),
  meter: "M-1",
  buffer1: 7,
  asFound1: 7.01,
  mv1: -4.1,
  buffer2: 10.01,
  asFound2: 10.02,
  mv2: -178.4,
  temperature: 77,
  asLeft1: 7,
  asLeft2: 10.01,
};
const thursday: LogRow<"meterChecks"> = {
  id: "M2",
  when: moment(3, "08:05"),
  meter: "M-1",
  buffer1: 7,
  asFound1: 7.06,
  mv1: -9.8,
  buffer2: 10.01,
  asFound2: 10.15,
  mv2: -180.9,
  temperature: 77,
  asLeft1: 7,
  asLeft2: 10.01,
};
const wednesday = [
  { id: "R013", bath, when: moment(2, "11:20"), purpose: "check", ph: 11, temperature: 76.3, meter: "M-1" },
  { id: "R014", bath, when: moment(2, "16:30"), purpose: "check", ph: 10.96, temperature: 76.3, meter: "M-1" },
  { id: "R015", bath, when: moment(3, "08:15"), purpose: "check", ph: 10.83, temperature: 78.8, meter: "M-1" },
];

const worked = (
  meterChecks: readonly LogRow<"meterChecks">[],
  readings: readonly LogRow<"readings">[] = wednesday,
): Promise<WorkedLog> => workedLog(demoWith({ meterChecks, readings: demoRowsAnd("readings", ...readings) }));

describe("the meter's drift", () => {
  it("changes nothing before a later check is recorded", async () => {
    const log = await worked([monday]);
    expect(log.cell("readings", "R013", "phCorrected")).toBe(11);
    expect(log.cell("readings", "R013", "verdict")).toBe("near");
    expect(log.cell("readings", "R013", "flag")).toBe("");
    expect(log.cell("baths", bath, "baseline")).toBeCloseTo(11.42, 9);
  });

  it("comes to 10.88 and 10.83 once it is: two top-ups that were hidden", async () => {
    const log = await worked([monday, thursday]);
    // As found 7.06 in 7 and 10.15 in 10.01: 11.00 is 0.14 + 0.85 × (1 − 3.01 / 3.09) = 0.162 too high by Thursday, of
    // which 51.33 of 72.08 hours; 10.96 is 0.161 too high, of which 56.5 hours.
    expect(log.cell("readings", "R013", "phCorrected")).toBe(10.88);
    expect(log.cell("readings", "R014", "phCorrected")).toBe(10.83);
    for (const id of ["R013", "R014"]) {
      expect(log.cell("readings", id, "verdictAsRead")).toBe("near");
      expect(log.cell("readings", id, "verdict")).toBe("top up");
      expect(log.cell("readings", id, "flag")).toBe("verdict changed by the meter's drift: top up instead of near");
    }
    expect(log.cell("readings", "R013", "ph")).toBe(11);
    expect(log.cell("readings", "R008", "verdict")).not.toBe("top up");
    // Monday 09:45, 1.75 hours after the check: 0.173 × 1.75 / 72.08 hours = 0.004, under a hundredth.
    expect(log.cell("baths", bath, "baseline")).toBeCloseTo(11.42, 9);
    expect(log.cell("meterChecks", "M2", "verdict")).toBe("as found out of limits");
    // 10 readings of the two demo days and 2 of Wednesday; R015 came after the check.
    expect(log.cell("meterChecks", "M2", "readingsReached")).toBe(12);
    expect(log.cell("meterChecks", "M2", "verdictsFlipped")).toBe(2);
  });

  it("is the same whatever the order of the rows", async () => {
    const log = await worked([thursday, monday], [...wednesday].reverse());
    expect(log.cell("readings", "R014", "phCorrected")).toBe(10.83);
    expect(log.cell("meterChecks", "M2", "verdictsFlipped")).toBe(2);
  });

  it("of a reading at the next check is what METERFIX makes of it", async () => {
    const atCheck = { ...wednesday[1], when: moment(3, "08:04") };
    const log = await worked([monday, thursday], [atCheck]);
    const fixed = evaluate(meterFix, [10.96, 7, 7.06, 10.01, 10.15]);
    expect(log.cell("readings", "R014", "phCorrected")).toBeCloseTo(Number(fixed), 2);
    expect(log.cell("readings", "R014", "errorAfter")).toBeCloseTo(10.96 - Number(fixed), 9);
  });

  it("goes by the one buffer where the other was not read, or where both make no line", async () => {
    for (const change of [{ asFound1: undefined }, { asFound1: 10.15 }, { asFound1: 12 }]) {
      const log = await worked([monday, { ...thursday, ...change }]);
      // 0.14 × 56.5 / 72.08 hours.
      expect(log.cell("readings", "R014", "phCorrected")).toBe(10.85);
    }
  });

  it("is each meter's own, and none for a reading that names no meter", async () => {
    const [first, second, third] = wednesday;
    const log = await worked(
      [
        monday,
        thursday,
        { ...monday, id: "M3", meter: "M-2" },
        { ...thursday, id: "M4", meter: "M-2", asFound1: 7, asFound2: 10.01 },
      ],
      [
        { ...first, meter: "M-2" },
        { ...second, meter: undefined },
        { ...third, meter: "M-9" },
      ],
    );
    for (const [id, ph] of [
      ["R013", 11],
      ["R014", 10.96],
      ["R015", 10.83],
    ] as const)
      expect(log.cell("readings", id, "phCorrected")).toBe(ph);
  });

  it("starts from what a check without an adjustment had left", async () => {
    // 10.96 is 0.06 high on Wednesday at 08:00 by both buffers, and left so; 0.161 on Thursday at 08:05. At 16:30: 0.06 + 0.101 × 8.5 / 24.083.
    const unadjusted: LogRow<"meterChecks"> = {
      ...thursday,
      id: "M3",
      when: moment(2, "08:00"),
      asFound1: 7.06,
      asFound2: 10.07,
      asLeft1: undefined,
      asLeft2: undefined,
    };
    const log = await worked([monday, unadjusted, thursday]);
    expect(log.cell("readings", "R014", "phCorrected")).toBeCloseTo(10.96 - 0.06 - (0.101 * 8.5) / 24.083, 2);
  });
});

describe("a meter check", () => {
  it("gives the slope that the week's sheet noted, 97.9 and 96.1 % (57.91 and 56.84 of 59.16 mV at 25 °C)", async () => {
    const log = await worked([monday, thursday]);
    expect(log.cell("meterChecks", "M1", "slope")).toBeCloseTo(97.9, 1);
    expect(log.cell("meterChecks", "M2", "slope")).toBeCloseTo(96.1, 1);
    expect(log.cell("meterChecks", "M1", "verdict")).toBe("within limits");
  });

  it.each([
    { what: "exactly at the limit", change: { asFound2: 10.06 }, says: "within limits" },
    { what: "over it", change: { asFound2: 10.07 }, says: "as found out of limits" },
    { what: "of a tired electrode", change: { mv2: -165 }, says: "slope out of limits" },
    { what: "of voltages that were swapped", change: { mv1: -175, mv2: -2 }, says: "slope out of limits" },
    { what: "of a dead electrode", change: { mv2: -30 }, says: "slope out of limits" },
    { what: "in one buffer only", change: { asFound1: undefined }, says: "incomplete" },
  ])("$what is $says", async ({ change, says }) => {
    const log = await worked([{ ...monday, ...change }], []);
    expect(log.cell("meterChecks", "M1", "verdict")).toBe(says);
  });
});
