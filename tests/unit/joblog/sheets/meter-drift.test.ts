import { describe, expect, it } from "vitest";

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

  it("comes to the week's published answers once it is: 10.90 and 10.85, two top-ups that were hidden", async () => {
    const log = await worked([monday, thursday]);
    expect(log.cell("readings", "R013", "phCorrected")).toBe(10.9);
    expect(log.cell("readings", "R014", "phCorrected")).toBe(10.85);
    for (const id of ["R013", "R014"]) {
      expect(log.cell("readings", id, "verdictAsRead")).toBe("near");
      expect(log.cell("readings", id, "verdict")).toBe("top up");
      expect(log.cell("readings", id, "flag")).toBe("verdict changed by the meter's drift: top up instead of near");
    }
    expect(log.cell("readings", "R013", "ph")).toBe(11);
    expect(log.cell("readings", "R008", "verdict")).not.toBe("top up");
    // Monday 09:45, 1.75 hours after the check: 0.14 × 1.75 / 72.08 hours = 0.003, under a hundredth.
    expect(log.cell("baths", bath, "baseline")).toBeCloseTo(11.42, 9);
    expect(log.cell("meterChecks", "M2", "verdict")).toBe("as found out of limits");
    // 10 readings of the two demo days and 2 of Wednesday; R015 came after the check.
    expect(log.cell("meterChecks", "M2", "readingsReached")).toBe(12);
    expect(log.cell("meterChecks", "M2", "verdictsFlipped")).toBe(2);
  });

  it("is the same whatever the order of the rows", async () => {
    const log = await worked([thursday, monday], [...wednesday].reverse());
    expect(log.cell("readings", "R014", "phCorrected")).toBe(10.85);
    expect(log.cell("meterChecks", "M2", "verdictsFlipped")).toBe(2);
  });

  it("is each meter's own, and none for a reading that names no meter", async () => {
    const [first, second, third] = wednesday;
    const log = await worked(
      [
        monday,
        thursday,
        { ...monday, id: "M3", meter: "M-2" },
        { ...thursday, id: "M4", meter: "M-2", asFound2: 10.01 },
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
    // Found 0.06 high and left so on Wednesday at 08:00; 0.14 high on Thursday at 08:05. At 16:30: 0.06 + 0.08 × 8.5 / 24.083.
    const unadjusted: LogRow<"meterChecks"> = {
      ...thursday,
      id: "M3",
      when: moment(2, "08:00"),
      asFound2: 10.07,
      asLeft1: undefined,
      asLeft2: undefined,
    };
    const log = await worked([monday, unadjusted, thursday]);
    expect(log.cell("readings", "R014", "phCorrected")).toBeCloseTo(10.96 - 0.06 - (0.08 * 8.5) / 24.083, 2);
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
    { what: "in one buffer only", change: { asFound1: undefined }, says: "incomplete" },
  ])("$what is $says", async ({ change, says }) => {
    const log = await worked([{ ...monday, ...change }], []);
    expect(log.cell("meterChecks", "M1", "verdict")).toBe(says);
  });
});
