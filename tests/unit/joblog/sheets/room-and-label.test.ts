import { describe, expect, it } from "vitest";

import type { LogRow } from "../../../../src/joblog/model/definition.ts";
import { firstTwoDays } from "../../../demo/days/demo-week.ts";
import { demoBath as bath, moment } from "../../../demo/demo-week-times.ts";
import { demoRowsAnd, demoWith, workedLog } from "./worked-log.ts";

/** 48 × 24 in to a line at 25 in, less 3.5 gal: 121.175 gal; a tenth of an inch holds 0.499 gal. */
const perInch = (48 * 24) / 231;
const atLine = 25 * perInch - 3.5;

const topUp = (id: string, clock: string, amount: number, more: LogRow<"additions"> = {}): LogRow<"additions"> => ({
  id,
  bath,
  when: moment(2, clock),
  kind: "concentrate",
  purpose: "top-up",
  amount,
  account: "claims",
  ...more,
});

const levelRead = (clock: string, level: number): LogRow<"readings"> => ({
  id: "R099",
  bath,
  when: moment(2, clock),
  purpose: "check",
  ph: 11,
  temperature: 77,
  level,
});

describe("room in the tank", () => {
  it("is reckoned from the last level read and all that went in and was drained since", async () => {
    const log = await workedLog(
      demoWith({
        readings: demoRowsAnd("readings", levelRead("08:00", 24.8)),
        additions: demoRowsAnd("additions", topUp("A005", "09:00", 1.5), topUp("A006", "10:00", 5)),
        care: [{ id: "K1", bath, when: moment(2, "09:30"), kind: "drain", amount: 0.5 }],
      }),
    );
    const held = atLine - 0.2 * perInch;
    expect(log.cell("additions", "A005", "volumeAfter")).toBeCloseTo(held + 1.5, 6);
    expect(log.cell("additions", "A005", "room")).toBe("fits");
    expect(log.cell("additions", "A006", "volumeAfter")).toBeCloseTo(held + 6, 6);
    expect(log.cell("additions", "A006", "room")).toBe("over the fill line");
  });

  it("goes by all that the log holds before any level was read, and by the level typed with the water", async () => {
    const makeUp = { kind: "water", purpose: "make-up", levelBefore: 24, levelAfter: 25 };
    const [, ...rest] = firstTwoDays.rows.readings ?? [];
    const unread = [firstTwoDays.rows.readings?.[0] ?? {}, ...rest].map((row) => ({ ...row, level: undefined }));
    const log = await workedLog(
      demoWith({ readings: unread, additions: demoRowsAnd("additions", topUp("A005", "09:00", 5, makeUp)) }),
    );
    expect(log.cell("additions", "A003", "volumeAfter")).toBeCloseTo(117 + 3.275 + 0.903, 6);
    expect(log.cell("additions", "A005", "volumeAfter")).toBeCloseTo(atLine, 6);
  });

  it("ends at the rim where the tank's height is known", async () => {
    const [tank, ...others] = firstTwoDays.rows.tanks ?? [];
    const high = (height: number) => [{ ...tank, height }, ...others];
    const added = demoRowsAnd("additions", topUp("A005", "09:00", 7));
    const readings = demoRowsAnd("readings", levelRead("08:00", 25));
    const tall = await workedLog(demoWith({ tanks: high(30), additions: added, readings }));
    expect(tall.cell("additions", "A005", "room")).toBe("over the fill line");
    const low = await workedLog(demoWith({ tanks: high(26), additions: added, readings }));
    expect(low.cell("additions", "A005", "room")).toBe("over the rim");
  });
});

describe("the strength reached", () => {
  it("is reckoned from the water and concentrate of the fill", async () => {
    const log = await workedLog(firstTwoDays);
    expect(log.cell("baths", bath, "filledVolume")).toBeCloseTo(121.178, 6);
    expect(log.cell("baths", bath, "strengthReached")).toBe("1+28");
    const less = (firstTwoDays.rows.additions ?? []).map((row) =>
      row["id"] === "A001" ? { ...row, amount: 100 } : row,
    );
    // 100 parts of water to 4.178.
    expect((await workedLog(demoWith({ additions: less }))).cell("baths", bath, "strengthReached")).toBe("1+23.9");
    const unlogged = (firstTwoDays.rows.additions ?? []).map((row) =>
      row["id"] === "A001" ? { ...row, amount: 10 } : row,
    );
    expect((await workedLog(demoWith({ additions: unlogged }))).cell("baths", bath, "strengthReached")).toBe("1+28");
  });
});

describe("the label's highest strength", () => {
  const bathOf = (change: LogRow<"baths">) => (firstTwoDays.rows.baths ?? []).map((row) => ({ ...row, ...change }));

  it.each([
    { strength: "1+28", says: "within the label" },
    { strength: "1+18", says: "within the label" },
    { strength: "1+16", says: "strength wanted is above the label's highest" },
    { strength: "7%", says: "strength wanted is above the label's highest" },
  ])("$strength is $says, where it names 1+18", async ({ strength, says }) => {
    const log = await workedLog(demoWith({ baths: bathOf({ strength }) }));
    expect(log.cell("concentrates", "CN-1", "labelHighest")).toBeCloseTo(1 / 19, 9);
    expect(log.cell("baths", bath, "labelCheck")).toBe(says);
    expect(log.cell("concentrates", "CN-1", "bathsAboveLabel")).toBe(says.startsWith("within") ? 0 : 1);
  });

  it("counts what was poured, less the extras for the water", async () => {
    // 121.175 gal at 1+18 hold 6.378 gal; 4.178 gal are in.
    const poured = async (amount: number) =>
      (
        await workedLog(
          demoWith({ additions: demoRowsAnd("additions", topUp("A005", "09:00", amount, { purpose: "opening" })) }),
        )
      ).cell("baths", bath, "labelCheck");
    expect(await poured(2.2)).toBe("within the label");
    expect(await poured(2.6)).toBe("more poured than the label's highest takes");
  });

  it("is none where the log has no strength of the label", async () => {
    const [concentrate] = firstTwoDays.rows.concentrates ?? [];
    const none = { ...concentrate, labelLight: undefined, labelMedium: undefined, labelHeavy: undefined };
    const log = await workedLog(demoWith({ concentrates: [none] }));
    expect(log.cell("concentrates", "CN-1", "labelHighest")).toBe("");
    expect(log.cell("baths", bath, "labelCheck")).toBe("");
  });
});

describe("a reading after a top-up", () => {
  const added = topUp("A005", "09:00", 1, { phBefore: 10.9, phAfter: 11.2 });
  const after = (ph: number, purpose = "after top-up"): LogRow<"readings"> => ({
    id: "R098",
    bath,
    when: moment(2, "09:30"),
    purpose,
    ph,
    temperature: 77,
  });
  const worked = (ph: number, purpose?: string) =>
    workedLog(
      demoWith({
        additions: demoRowsAnd("additions", { ...added, phAfter: ph }),
        readings: demoRowsAnd("readings", after(ph, purpose)),
      }),
    );

  it("above the trigger and short of the baseline is not back yet, and asks for what the addition's row asks for", async () => {
    const log = await worked(11.2);
    expect(log.cell("additions", "A005", "recovery")).toBe("short");
    expect(log.cell("readings", "R098", "verdict")).toBe("not back yet");
    expect(log.cell("readings", "R098", "firstAddition")).toBe(log.cell("additions", "A005", "nextAddition"));
    expect(Number(log.cell("readings", "R098", "firstAddition"))).toBeGreaterThan(0);
    expect(log.cell("baths", bath, "state")).toBe("top up");
    expect(log.cell("readings", "R098", "flag")).toBe("");
  });

  it("within reach of the baseline holds, as does a check that is as high", async () => {
    expect((await worked(11.33)).cell("readings", "R098", "verdict")).toBe("hold");
    expect((await worked(11.2, "check")).cell("readings", "R098", "verdict")).toBe("hold");
  });

  it("under the trigger asks for a top-up anew", async () => {
    expect((await worked(10.85)).cell("readings", "R098", "verdict")).toBe("top up");
  });

  it("is asked for after water too", async () => {
    const water = topUp("A005", "09:00", 5, { kind: "water", purpose: "make-up" });
    const log = await workedLog(demoWith({ additions: demoRowsAnd("additions", water) }));
    expect(log.cell("baths", bath, "state")).toBe("re-read");
  });
});
