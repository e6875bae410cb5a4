import { beforeAll, describe, expect, it } from "vitest";

import { readLog } from "../../../../src/excel/log-workbook.ts";
import type { LogSnapshot } from "../../../../src/joblog/model/log-snapshot.ts";
import { bathHistory } from "../../../../src/pane/claims/bath-history.ts";
import { shareBath } from "../../../../src/pane/claims/share-bath.ts";
import { basisOf, sharePlan } from "../../../../src/pane/claims/share-plan.ts";
import { shareResult } from "../../../../src/pane/claims/share-result.ts";
import { costLineEntry } from "../../../../src/pane/record/forms/cost-line/cost-line-entry.ts";
import { moment, openDemoLog } from "../../excel/log/demo-log.ts";
import { asked, bath, fill, said, withCells } from "../record/entry-forms.ts";

const load = (id: string, claim: string | undefined, when: string, baskets: number, minutes: number | undefined) => ({
  id,
  bath,
  claim,
  when: moment(when),
  baskets,
  soil: "medium",
  minutes,
});

const loads = [
  load("L001", "D-0431", "2027-03-01T11:05", 3, 10),
  load("L002", "D-0427", "2027-03-01T13:05", 1, 10),
  load("L003", "D-0436", "2027-03-02T09:00", 2, 20),
];

let log: LogSnapshot;

beforeAll(async () => {
  log = await openDemoLog("2027-03-02T17:00", {
    loads,
    care: [{ id: "K001", bath, when: moment("2027-03-02T08:00"), kind: "skim" }],
  });
}, 120_000);

async function readAgain(): Promise<LogSnapshot> {
  const read = await readLog();
  if (read === undefined) throw new Error("no log");
  return read;
}

describe("sharing a bath out", () => {
  it("says before it writes what it will list and which typed units it will empty", () => {
    const { findings } = sharePlan(log, bath, "basket-minutes");
    const text = findings.map((finding) => finding.text).join("\n");
    expect(text).toContain("Not among the shares yet: D-0436.");
    expect(text).toContain("(D-0427: 11, D-0431: 3)");
  });

  it("changes basis and list together, and the shares add up to the cent", async () => {
    const { changes } = sharePlan(log, bath, "basket-minutes");
    if (changes === undefined) throw new Error("nothing to change");
    await shareBath.run(changes);
    const after = await readAgain();
    const result = shareResult(after, bath);
    // 3 × 10, 1 × 10 and 2 × 20 basket-minutes of 80.
    expect(result?.shares.map(({ claim, units, part }) => [claim, units, part])).toEqual([
      ["D-0427", 10, 0.125],
      ["D-0431", 30, 0.375],
      ["D-0436", 40, 0.5],
    ]);
    const sums = new Map(result?.sums);
    expect(sums.get("Not placed")).toBe(0);
    expect(sums.get("Shared out")).toBe(sums.get("To share out"));
    expect(result?.findings).toEqual([
      { tone: "good", text: "Every cost of this bath is charged to someone, to the cent." },
    ]);
    expect(sharePlan(after, bath, "basket-minutes").changes).toBeUndefined();
  }, 60_000);

  it("refuses, and writes nothing, where the list was changed since it was read", async () => {
    const now = await readAgain();
    const stale = withCells(now, "shares", bath, { units: 11 });
    const { changes } = sharePlan(stale, bath, "baskets");
    await expect(shareBath.run(changes ?? {})).rejects.toMatchObject({
      what: expect.stringMatching(/Units \(Costs\) was changed/) as string,
    });
    expect(basisOf(await readAgain(), bath)).toBe("basket-minutes");
  }, 60_000);

  it("tells who shared the bath in what order, and what was done between", async () => {
    const visits = bathHistory(await readAgain(), bath);
    expect(visits.map(({ claim }) => claim)).toEqual(["D-0431", "D-0427", "D-0436"]);
    expect(visits[0]?.words).toBe("Mar 1, 11:05, 1 load. No skimming or filtering before it.");
    expect(visits[2]?.words).toContain("Skimmed or filtered before it: Mar 2, 08:00.");
  });

  it("names what is open, of the bath and of the whole log", () => {
    const open = withCells(
      { ...log, fields: { ...log.fields, costNotPlaced: 12, costOpen: "load L003: claim missing" } },
      "baths",
      bath,
      { costState: "provisional: load L003: claim missing" },
    );
    const text = shareResult(open, bath)
      ?.findings.map((finding) => finding.text)
      .join("\n");
    expect(text).toContain("Provisional: load L003: claim missing. Complete it, and the shares follow.");
    expect(text).toContain(
      "12.00 of the log's costs is not charged to anyone yet; the first row to complete is load L003: claim missing.",
    );
  });

  it("says that a load of no bath holds every claim up", () => {
    const astray = { ...log, fields: { ...log.fields, loadAstray: "L009: bath missing" } };
    expect(shareResult(astray, bath)?.findings.map(({ text }) => text)).toContain(
      "Load L009: bath missing. It could be of any bath, so every claim's figure is provisional.",
    );
  });
});

describe("a bath whose loads were not logged", () => {
  it("is shared by typed units without a word about loads", () => {
    const typedOnly = withCells(
      withCells({ ...log, rows: { ...log.rows, loads: [] } }, "shares", bath, { check: "the loads say 0" }),
      "baths",
      bath,
      { costState: "placed to the cent" },
    );
    expect(shareResult(typedOnly, bath)?.findings.map(({ tone }) => tone)).toEqual(["good"]);
  });
});

describe("the cost line form", () => {
  const typed = { what: "Filter bags", amount: "12.50", document: "INV 7" };

  it("writes one row on the claims' account unless told otherwise, and says who pays it", () => {
    const filled = fill(costLineEntry, log, typed, "2027-03-02T17:00");
    expect(filled.problems).toEqual([]);
    expect(filled.meaning.rows).toEqual([
      {
        table: "costLines",
        row: {
          id: "C005",
          bath,
          date: moment("2027-03-02"),
          what: "Filter bags",
          document: "INV 7",
          amount: 12.5,
          account: "claims",
        },
      },
    ]);
    const shared = Number(log.rows.baths.find(({ cells }) => cells.bath === bath)?.cells.pool);
    expect(said(filled)).toContain(
      `The claims of bath ${bath} pay 12.50. With it, ${(shared + 12.5).toFixed(2)} of bath ${bath} is shared out.`,
    );
    expect(said(fill(costLineEntry, log, { ...typed, account: "shop" }))).toContain("it is not charged to any claim");
  });

  it("says that one claim pays alone, and the shop where the bath had rework and nothing else", () => {
    expect(said(fill(costLineEntry, log, { ...typed, claim: "D-0431" }))).toBe("Claim D-0431 pays 12.50 alone.");
    const reworked = {
      ...log,
      rows: { ...log.rows, loads: log.rows.loads.map((row) => ({ ...row, cells: { ...row.cells, rework: "yes" } })) },
    };
    expect(said(fill(costLineEntry, reworked, typed))).toBe(
      `The shop pays 12.50: bath ${bath} had rework and nothing else, so no claim shares its cost.`,
    );
  });

  it("says who pays a line of no bath, and why nobody does", () => {
    const ofNoBath = { ...typed, bath: "" };
    expect(said(fill(costLineEntry, log, { ...ofNoBath, account: "shop" }))).toBe(
      "The shop pays 12.50: it is not charged to any claim.",
    );
    expect(said(fill(costLineEntry, log, { ...ofNoBath, claim: "D-0431" }))).toBe("Claim D-0431 pays 12.50 alone.");
    expect(said(fill(costLineEntry, log, ofNoBath))).toBe(
      "Nobody is charged with 12.50 as the line stands: bath missing.",
    );
    expect(said(fill(costLineEntry, log, { ...typed, account: "" }))).toBe(
      "Nobody is charged with 12.50 as the line stands: account missing.",
    );
  });

  it("asks once before a document is booked twice", () => {
    expect(asked(fill(costLineEntry, log, typed))).toBe("");
    expect(asked(fill(costLineEntry, log, { ...typed, document: "meter 0301" }))).toMatch(/is on line C001 already/);
  });

  it("refuses no amount, and takes a credit", () => {
    const keys = (amount: string): readonly string[] =>
      fill(costLineEntry, log, { ...typed, amount }).problems.map(({ key }) => key);
    expect(keys("")).toEqual(["amount"]);
    expect(keys("0")).toEqual(["amount"]);
    expect(keys("-5")).toEqual([]);
  });
});
