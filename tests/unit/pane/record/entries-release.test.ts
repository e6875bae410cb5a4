import { beforeAll, describe, expect, test } from "vitest";

import type { LogSnapshot } from "../../../../src/joblog/model/log-snapshot.ts";
import { releaseEntry } from "../../../../src/pane/record/forms/release/release-entry.ts";
import { demoLog, moment } from "../../excel/log/demo-log.ts";
import { asked, bath, fill, said, withCells, withRows, written } from "./entry-forms.ts";

/** The invented week's release: 3.32 eq to pH 8.5, 0.213 kg of citric acid, limits 6.0 to 10.0. */
const neutralizing = {
  when: "2027-03-06T09:30",
  volume: "120.1",
  ph: "11.22",
  temperature: "24.5 C",
  alkalinity: "13.65 meq/L",
  acid: "citric",
  target: "8.5",
};
const results = { analysesResult: "within limits", analyses: "lead in the water 0.08 mg/L, permit 0.5" };
const stages = {
  stage1: "0.128 kg",
  phAfter1: "10.1",
  stage2: "0.064 kg",
  phAfter2: "9.2",
  stage3: "0.026 kg",
  phAfter3: "8.4",
};
const gone = {
  releasedAt: "2027-03-09T14:10",
  releasedVolume: "117.1",
  point: "sanitary sewer connection SC-2",
  initials: "KT",
};
const now = "2027-03-09T15:00";

let open: LogSnapshot;
let closed: LogSnapshot;
let limited: LogSnapshot;

beforeAll(async () => {
  open = await demoLog("2027-03-02T17:00");
  closed = withCells(open, "baths", bath, { closed: moment("2027-03-06T08:30"), state: "closed" });
  limited = { ...closed, fields: { ...closed.fields, sewerLow: 6, sewerHigh: 10, permit: "QH-IU-017" } };
}, 120_000);

const keys = (log: LogSnapshot, typed: Record<string, string>): readonly string[] =>
  fill(releaseEntry, log, typed, now).groups.flatMap((group) => group.fields.map(({ key }) => key));

describe("the release form", () => {
  test("waits for the change-out of the bath", () => {
    const filled = fill(releaseEntry, open, neutralizing, now);
    expect(filled.meaning.blocked?.first.id).toBe("change-out");
    expect(filled.meaning.rows).toEqual([]);
  });

  // 0.213 kg is 0.470 lb; the chemistry of the whole bath, with its silicate or carbonate, moves it.
  test("gives the acid from the titration, in stages of 60, 30 and 10 %", () => {
    const text = said(fill(releaseEntry, limited, neutralizing, now));
    const [, needed] = /Acid needed: ([\d.]+) lb of citric, by the titration\./.exec(text) ?? [];
    expect(Number(needed)).toBeGreaterThan(0.47 * 0.75);
    expect(Number(needed)).toBeLessThan(0.47 * 1.4);
    const [, first, second] = /In stages: ([\d.]+) lb, mix, read; ([\d.]+) lb, mix, read/.exec(text) ?? [];
    expect(Number(first) / Number(needed)).toBeCloseTo(0.6, 1);
    expect(Number(second) / Number(needed)).toBeCloseTo(0.3, 1);
  });

  test("without a titration the acid is an estimate by water and concentrate, or else a minimum", () => {
    const untitrated = { ...neutralizing, alkalinity: "" };
    expect(said(fill(releaseEntry, limited, untitrated, now))).toMatch(
      /an estimate by the water and concentrate logged/,
    );
    const unknown = withCells(limited, "baths", bath, { alkaliBrought: undefined, bicarbonateBrought: 1.4 });
    const text = said(fill(releaseEntry, unknown, untitrated, now));
    expect(text).toMatch(/by the pH alone, so a minimum/);
    // 1.4 eq at 64.04 g of citric acid are 89.7 g, 0.198 lb.
    expect(text).toContain("The waters brought 1.4 eq of carbonate, which is not in it: about 0.2 lb more.");
  });

  test("asks where many times the acid worked out went in", () => {
    const poured = (stage1: string) => asked(fill(releaseEntry, limited, { ...neutralizing, stage1 }, now));
    expect(poured("3")).toMatch(/3 lb of acid is \d times the 0\.\d+ lb worked out\. Was so much poured\?/);
    expect(poured("0.5")).not.toMatch(/worked out/);
  });

  test("asks for a stage once the pH after the one before is known, and takes acid in the log's unit", () => {
    expect(keys(limited, neutralizing)).not.toContain("stage2");
    expect(keys(limited, { ...neutralizing, stage1: "0.28", phAfter1: "10.1" })).toContain("stage2");
    const filled = fill(releaseEntry, limited, { ...neutralizing, ...stages }, now);
    expect(filled.problems).toEqual([]);
    // 0.128 kg are 0.2822 lb.
    expect(written(filled, "releases", "stage1")[0]?.[0]).toBeCloseTo(0.2822, 4);
    expect(filled.converted["stage1"]).toBe("0.28 lb");
  });

  test("keeps the release closed until limits, pH and results are in", () => {
    const all = { ...neutralizing, ...stages, ...results };
    expect(keys(closed, all)).not.toContain("releasedAt");
    expect(said(fill(releaseEntry, closed, all, now))).toContain("Not released: limits missing.");
    expect(keys(limited, { ...neutralizing, ...stages })).not.toContain("releasedAt");
    expect(said(fill(releaseEntry, limited, { ...neutralizing, ...stages }, now))).toContain(
      "Not released: results awaited. Limits: pH 6.0 to 10.0, QH-IU-017.",
    );
    expect(keys(limited, { ...all, analysesResult: "over a limit" })).not.toContain("releasedAt");
    expect(keys(limited, { ...neutralizing, ...results })).not.toContain("releasedAt");
    expect(said(fill(releaseEntry, limited, { ...neutralizing, ...results }, now))).toContain(
      "Not released: pH above the limits.",
    );
    expect(keys(limited, all)).toContain("releasedAt");
  });

  test("never says that a release is allowed", () => {
    const text = said(fill(releaseEntry, limited, { ...neutralizing, ...stages, ...results, ...gone }, now));
    expect(text).toMatch(/The permit and the person who signs for it decide whether it may go/);
    expect(text).not.toMatch(/allowed|permitted|may be released|safe to/i);
  });

  test("writes one row in one go, kept for three years", () => {
    const filled = fill(releaseEntry, limited, { ...neutralizing, ...stages, ...results, ...gone }, now);
    expect(filled.problems).toEqual([]);
    expect(filled.meaning.rows).toHaveLength(1);
    expect(filled.meaning.rows[0]).toMatchObject({
      table: "releases",
      row: {
        id: "D001",
        bath,
        acid: "citric",
        analysesResult: "within limits",
        releasedVolume: 117.1,
        point: "sanitary sewer connection SC-2",
        retainedUntil: moment("2030-03-09"),
      },
    });
  });

  test("completes an earlier row: stages, results and release as they come", () => {
    const begun = withRows(limited, "releases", [
      {
        id: "D001",
        bath,
        when: moment("2027-03-06T09:30"),
        volume: 120.1,
        ph: 11.22,
        acid: "citric",
        target: 8.5,
        stage1: 0.28,
        phAfter1: 10.1,
        stage2: 0.14,
        phAfter2: 9.2,
      },
    ]);
    const filled = fill(releaseEntry, begun, { stage3: "0.06", phAfter3: "8.4", ...results, ...gone }, now);
    expect(filled.problems).toEqual([]);
    expect(filled.meaning.rows).toEqual([]);
    expect(filled.meaning.fills).toEqual([
      {
        table: "releases",
        key: "D001",
        cells: expect.objectContaining({
          phAfter3: 8.4,
          point: "sanitary sewer connection SC-2",
          initials: "KT",
        }) as unknown,
      },
    ]);
    expect(keys(begun, {})).not.toContain("volume");
    expect(fill(releaseEntry, begun, {}, now).problems[0]?.message).toMatch(/Nothing new yet/);
  });

  test("after a result over its limit treats the bath again in a row of its own, and leaves the first as it is", () => {
    const over = withRows(limited, "releases", [
      {
        id: "D001",
        bath,
        when: moment("2027-03-06T09:30"),
        volume: 120.1,
        ph: 11.22,
        acid: "citric",
        target: 8.5,
        stage1: 0.28,
        phAfter1: 8.4,
        analysesResult: "over a limit",
        analyses: "lead 6.1 mg/L",
        state: "not released: a result over its limit",
      },
    ]);
    const filled = fill(
      releaseEntry,
      over,
      {
        ...neutralizing,
        when: "2027-03-08T09:00",
        ph: "8.4",
        alkalinity: "2.1 meq/L",
        stage1: "0.02",
        phAfter1: "8.1",
        ...results,
        ...gone,
      },
      now,
    );
    expect(said(filled)).toMatch(
      /D001 stays as it is \(not released: a result over its limit\)\. This is a further treatment/,
    );
    expect(filled.problems).toEqual([]);
    expect(filled.meaning.fills ?? []).toEqual([]);
    expect(filled.meaning.rows).toEqual([
      {
        table: "releases",
        row: expect.objectContaining({
          id: "D002",
          bath,
          analysesResult: "within limits",
          releasedVolume: 117.1,
        }) as unknown,
      },
    ]);
    expect(keys(over, { ...neutralizing })).not.toContain("releasedAt");
  });

  test("after three stages that left the pH outside treats the bath again", () => {
    const row = {
      id: "D001",
      bath,
      when: moment("2027-03-06T09:30"),
      volume: 120.1,
      ph: 11.22,
      acid: "citric",
      target: 8.5,
      stage1: 0.1,
      phAfter1: 10.9,
      stage2: 0.1,
      phAfter2: 10.6,
      stage3: 0.05,
      phAfter3: 10.4,
    };
    const above = withRows(limited, "releases", [{ ...row, state: "not released: pH above the limits" }]);
    expect(
      written(
        fill(releaseEntry, above, { ...neutralizing, ph: "10.4", when: "2027-03-07T09:30" }, now),
        "releases",
        "id",
      )[0]?.[0],
    ).toBe("D002");
    const within = withRows(limited, "releases", [{ ...row, phAfter3: 8.4, state: "not released: results awaited" }]);
    expect(fill(releaseEntry, within, results, now).meaning.fills?.[0]?.key).toBe("D001");
  });

  test("a release names when, how much, where, who and the permit", () => {
    const filled = fill(
      releaseEntry,
      limited,
      { ...neutralizing, ...stages, ...results, releasedAt: gone.releasedAt },
      now,
    );
    expect(filled.problems.map(({ key }) => key)).toEqual(["releasedVolume", "point", "initials"]);
  });

  test("refuses a target outside the limits, limits upside down, a reading without its acid and a release before the neutralizing", () => {
    const problems = (change: Record<string, string>): readonly string[] =>
      fill(releaseEntry, limited, { ...neutralizing, ...change }, now).problems.map(({ key }) => key);
    expect(problems({ target: "10.5" })).toEqual(["target"]);
    expect(problems({ limitLow: "10", limitHigh: "6" })).toContain("limitLow");
    expect(problems({ phAfter1: "9.5" })).toEqual(["stage1"]);
    expect(problems({ ...stages, ...results, ...gone, releasedAt: "2027-03-06T09:00" })).toEqual(["releasedAt"]);
    expect(problems({ when: "2027-03-06T07:00" })).toEqual(["when"]);
    expect(problems({ volume: "500" })).toEqual(["volume"]);
  });

  // 40 CFR 261.22: from 12.5; 40 CFR 403.5(b)(5): 104 °F.
  test("says D002 at 12.5 and asks a hot bath to cool", () => {
    expect(said(fill(releaseEntry, limited, { ...neutralizing, ph: "12.6" }, now))).toMatch(/D002/);
    const hot = said(fill(releaseEntry, limited, { ...neutralizing, temperature: "130" }, now));
    expect(hot).toMatch(/Let it cool and read again: acid makes a hot bath foam and spit/);
    expect(hot.match(/Let it cool/g)).toHaveLength(1);
    const noAcidYet = { ...neutralizing, temperature: "130", acid: "" };
    expect(said(fill(releaseEntry, limited, noAcidYet, now))).toMatch(/Let it cool .* Acid into a hot bath foams/);
    expect(said(fill(releaseEntry, limited, neutralizing, now))).not.toMatch(/D002|foam/);
  });

  test("takes no limit below the federal floor or at hazardous waste, no target under 6, no alkalinity that was meq/L", () => {
    const refused = (typed: Readonly<Record<string, string>>): readonly string[] =>
      fill(releaseEntry, closed, { ...neutralizing, ...typed }, now).problems.map(({ key }) => key);
    expect(refused({ limitLow: "4.5", limitHigh: "9" })).toContain("limitLow");
    expect(refused({ limitLow: "6", limitHigh: "13" })).toContain("limitHigh");
    expect(refused({ target: "5.5" })).toContain("target");
    expect(refused({ alkalinity: "13.65" })).toContain("alkalinity");
    expect(refused({})).toEqual([]);
  });

  // 121.175 gal at 25 in, 4.987 gal/in.
  test("proposes the volume by the level of the last reading", () => {
    const low = withCells(limited, "readings", "R010", { level: 24 });
    expect(Number(fill(releaseEntry, low, {}, now).values["volume"])).toBeCloseTo(121.175 - 4.987, 1);
  });
});
