import { beforeAll, describe, expect, test } from "vitest";

import type { LogSnapshot } from "../../../../src/joblog/model/log-snapshot.ts";
import type { Draft } from "../../../../src/pane/record/entry-form.ts";
import { fillForm } from "../../../../src/pane/record/fill-form.ts";
import { chargeEntry } from "../../../../src/pane/record/forms/charge/charge-entry.ts";
import { fillStart } from "../../../../src/pane/start/start-entry.ts";
import { logOf } from "../../excel/log/prepared-log.ts";

const typed: Draft = {
  shop: "Quillhaven Contents Works",
  "claims.claim": "D-1",
  "tanks.tank": "T1",
  "tanks.length": "120",
  "tanks.width": "60",
  "tanks.fillDepth": "60",
  "tanks.displacement": "10",
  "waters.water": "TAP",
  "concentrates.concentrate": "CN-1",
};

let log: LogSnapshot | undefined;

beforeAll(async () => {
  log = await logOf(fillStart(typed, "metric", "2027-03-01").content, "metric");
});

describe("a log in metric units, started from the form", () => {
  // 120 × 60 × 60 cm³ are 432 L, less 10 L.
  test("says the working volume in liters while the tank is typed, and the sheet agrees", () => {
    expect(fillStart(typed, "metric", "2027-03-01").findings[0]?.text).toBe("Working volume 422 L.");
    expect(log?.rows.tanks[0]?.cells.workingVolume).toBeCloseTo(422, 9);
  });

  test("takes inches where a person types them", () => {
    const { converted } = fillStart({ ...typed, "tanks.length": "48 in" }, "metric", "2027-03-01");
    // An inch is 2.54 cm.
    expect(converted["tanks.length"]).toBe("121.92 cm");
  });

  // 422 L / 41 = 10.293 L.
  test("the charge form works in liters and says which extras are not known", () => {
    if (log === undefined) throw new Error("no log");
    const filled = fillForm(
      chargeEntry,
      { strength: "1+40" },
      { log, system: "metric", bath: undefined, now: "2027-03-01T07:00" },
    );
    const text = filled.meaning.findings.map((finding) => finding.text).join("\n");
    expect(text).toContain("Dose for 1+40: 10.29 L (10292.7 mL).");
    expect(text).toContain("Extra for hardness: not known, the water's hardness is not in the log.");
    expect(filled.problems).toEqual([]);
  });

  test("the form names what is missing", () => {
    const { problems } = fillStart({ "tanks.length": "a lot" }, "metric", "2027-03-01");
    expect(problems.map(({ key }) => key)).toEqual([
      "claims.claim",
      "tanks.tank",
      "tanks.length",
      "tanks.width",
      "tanks.fillDepth",
      "waters.water",
      "concentrates.concentrate",
    ]);
    expect(problems.find(({ key }) => key === "tanks.length")?.message).toMatch(
      /Inside length: "a lot" is not a number\. Allowed: 0 to 1000 cm/,
    );
  });
});
