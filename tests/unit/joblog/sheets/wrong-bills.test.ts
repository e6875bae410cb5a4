import { describe, expect, it } from "vitest";

import type { LogRow } from "../../../../src/joblog/model/definition.ts";
import { moment } from "../../../demo/demo-week-times.ts";
import { weekCostLines, weekLoads } from "./demo-week-facts.ts";
import { weekShares, weekWith } from "./week-of-sheets.ts";
import { type WorkedLog, workedLog } from "./worked-log.ts";

const shared = "B-T1-0301";
const own = "B-T2-0303";
const claims = ["D-0427", "D-0431", "D-0436"] as const;

/** Loads of another claim in the bath that D-0436 had to itself: three of its baskets, three of theirs. */
const others = (row: LogRow<"loads">): readonly LogRow<"loads">[] => [
  ...weekLoads,
  { id: "L030", bath: own, claim: "D-0431", when: moment(4, "15:00"), baskets: 3, soil: "light", minutes: 5, ...row },
];

const withOthers = (row: LogRow<"loads">, shares: readonly LogRow<"shares">[] = weekShares): Promise<WorkedLog> =>
  workedLog(weekWith({ statementClaim: "D-0436" }, { loads: others(row), shares }));

const standing = (log: WorkedLog, bath: string): unknown => log.cell("baths", bath, "costState");

/** Cost = claims + shop + not placed, of the log and of each bath; nothing is on nobody without a word. */
function holdsToTheCent(log: WorkedLog, baths: readonly string[] = [shared, own]): void {
  const amount = (value: unknown): number => Math.round(Number(value) * 100);
  expect(amount(log.field("costTotal"))).toBe(
    amount(log.field("costToClaims")) + amount(log.field("costToShop")) + amount(log.field("costNotPlaced")),
  );
  for (const bath of baths) {
    const of = (id: "costInAll" | "costDirect" | "costShared" | "costShop" | "costOpen"): number =>
      amount(log.cell("baths", bath, id));
    expect(of("costInAll"), bath).toBe(of("costDirect") + of("costShared") + of("costShop") + of("costOpen"));
    if (of("costOpen") !== 0) expect(standing(log, bath)).toMatch(/^provisional: /);
  }
}

describe("a load that cannot be read", () => {
  it.each([
    ["its claim", { claim: undefined }, "L030: claim missing"],
    ["a claim that is on Job", { claim: "D-431" }, "L030: claim missing"],
    ["its time", { when: undefined }, "L030: time missing"],
    ["its baskets as a number", { baskets: "3 baskets" }, "L030: units missing"],
  ])("for want of %s makes its bath provisional, by name and on paper", async (_what, row, why) => {
    const log = await withOthers(row);
    expect(standing(log, own)).toBe(`provisional: load ${why}`);
    expect(log.cell("claims", "D-0436", "costState")).toBe("provisional");
    expect(log.field("statementState")).toMatch(/^provisional: /);
    expect(log.cell("statementShares", own, "how")).toBe(`provisional: load ${why}`);
    expect(log.field("costOpen")).toBe(`load ${why}`);
    holdsToTheCent(log);
  });

  it("for want of a bath makes every claim provisional: it could be of any", async () => {
    const log = await withOthers({ bath: undefined });
    expect(log.field("loadAstray")).toBe("L030: bath missing");
    expect(claims.map((claim) => log.cell("claims", claim, "costState"))).toEqual([
      "provisional",
      "provisional",
      "provisional",
    ]);
    expect(log.field("statementState")).toBe("provisional: load L030: bath missing");
    holdsToTheCent(log);
  });

  it("bills half of the bath to each claim once it can be read: 23.41, not 46.82", async () => {
    const listed = [...weekShares, { bath: own, claim: "D-0431" }];
    const unlisted = await withOthers({});
    expect(standing(unlisted, own)).toBe("provisional: load L030: no line in Shares");
    expect(unlisted.cell("loads", "L030", "check")).toBe("no line in Shares: cost not shared");
    holdsToTheCent(unlisted);
    const log = await withOthers({}, listed);
    expect([log.share(own, "D-0436", "share"), log.share(own, "D-0431", "share")]).toEqual([23.41, 23.41]);
    expect(log.field("statementCost")).toBe(198.86);
    expect(log.field("statementState")).toBe("placed to the cent");
    holdsToTheCent(log);
  });
});

describe("units that are typed", () => {
  it.each([
    ["12,5", "units are no number"],
    [-5, "units under 0"],
  ])("as %j bill nobody until they are put right", async (units, why) => {
    const shares = weekShares.map((row, index) => (index === 0 ? { ...row, units } : row));
    const log = await workedLog(weekWith({ statementClaim: "D-0431" }, { shares }));
    expect(claims.map((claim) => log.share(shared, claim, "share"))).toEqual(["", "", ""]);
    expect(log.cell("baths", shared, "costOpen")).toBe(578.99);
    expect(standing(log, shared)).toBe(`provisional: share of D-0427: ${why}`);
    expect(log.field("statementCost")).toBe("not complete: see below");
    expect(log.field("costNotPlaced")).toBe(578.99);
    // The other bath is not held up by it.
    expect(log.share(own, "D-0436", "share")).toBe(46.82);
    holdsToTheCent(log);
  });

  it("of a claim that is listed twice bill nobody", async () => {
    const log = await workedLog(weekWith({}, { shares: [...weekShares, { bath: shared, claim: "D-0427", units: 3 }] }));
    expect(standing(log, shared)).toBe("provisional: share of D-0427: listed twice");
    expect(log.cell("baths", shared, "costShared")).toBe(0);
    holdsToTheCent(log);
  });
});

describe("who pays for a bath", () => {
  it("is the shop where it had rework and nothing else", async () => {
    const rework = weekLoads.map((row) => (row.bath === own ? { ...row, rework: "yes" } : row));
    const log = await workedLog(weekWith({ statementClaim: "D-0436" }, { loads: rework }));
    expect([log.cell("baths", own, "pool"), log.cell("baths", own, "costShop")]).toEqual([0, 46.82]);
    expect(log.share(own, "D-0436", "share")).toBe(0);
    expect(log.field("statementCost")).toBe(175.45);
    expect(standing(log, own)).toBe("placed to the cent");
    holdsToTheCent(log);
  });

  it("is nobody yet where it has cost and no load, and the log says so", async () => {
    const log = await workedLog(
      weekWith({}, { loads: weekLoads.filter(({ bath }) => bath !== own), shares: weekShares.slice(0, 3) }),
    );
    expect(standing(log, own)).toBe("provisional: no claim has loads in it");
    expect([log.field("costNotPlaced"), log.cell("baths", own, "costOpen")]).toEqual([46.82, 46.82]);
    holdsToTheCent(log);
  });

  it("is every claim of each of two shared baths, with a total on one statement", async () => {
    const log = await withOthers({}, [...weekShares, { bath: own, claim: "D-0431" }]);
    expect([log.cell("claims", "D-0431", "cost"), log.cell("claims", "D-0436", "cost")]).toEqual([216.41, 198.86]);
    holdsToTheCent(log);
  });

  it("is nobody where every share is 0, with no error in sight", async () => {
    const log = await workedLog(
      weekWith({}, { additions: [], costLines: weekCostLines.map((row) => ({ ...row, account: "shop" })) }),
    );
    expect(claims.map((claim) => log.share(shared, claim, "share"))).toEqual([0, 0, 0]);
    expect(standing(log, shared)).toBe("placed to the cent");
    holdsToTheCent(log);
  });
});

describe("a cost that nobody is charged with", () => {
  const line = (row: LogRow<"costLines">): readonly LogRow<"costLines">[] => [
    ...weekCostLines,
    { id: "C20", bath: shared, what: "Labor", amount: 12.5, account: "claims", ...row },
  ];

  it.each([
    ["no account", { account: undefined }, "account missing", 12.5],
    ["no bath and no claim", { bath: undefined }, "bath missing", 12.5],
    ["a bath that is not on Baths", { bath: "B-T9" }, "bath not on Baths", 12.5],
    ["a claim that is not on Job", { claim: "D-9" }, "claim not on Job", 12.5],
    ["an amount that is text", { amount: "12,50" }, "amount is no number", 0],
  ])("for %s is named, and left over to the cent", async (_what, row, why, open) => {
    const log = await workedLog(weekWith({}, { costLines: line(row) }));
    expect(log.cell("costLines", "C20", "check")).toBe(why);
    expect(log.field("costOpen")).toBe(`cost line C20: ${why}`);
    expect(log.field("costNotPlaced")).toBe(open);
    holdsToTheCent(log);
  });

  it("is not the shop's: a line on its account needs no bath", async () => {
    const log = await workedLog(weekWith({}, { costLines: line({ bath: undefined, account: "shop" }) }));
    expect([log.field("costToShop"), log.field("costNotPlaced"), log.field("costOpen")]).toEqual([119.71, 0, ""]);
    holdsToTheCent(log);
  });

  it("is concentrate without a price, which no pool holds: the bath says so", async () => {
    const log = await workedLog(weekWith({}, { concentrates: [{ concentrate: "CN-1" }] }));
    expect(standing(log, shared)).toMatch(/^provisional: addition \S+: no price$/);
    holdsToTheCent(log);
  });
});
