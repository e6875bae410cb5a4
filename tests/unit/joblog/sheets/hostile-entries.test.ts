import { describe, expect, it } from "vitest";

import type { ColumnId } from "../../../../src/joblog/formula/log-names.ts";
import type { Cells, LogContent, LogRow } from "../../../../src/joblog/model/definition.ts";
import type { LogSnapshot } from "../../../../src/joblog/model/log-snapshot.ts";
import { demoBath as bath } from "../../../demo/demo-week-times.ts";
import { errorsIn, fullWeek, shown, weekOf, weekWhere } from "./hostile-log.ts";

/** What a bath, its costs, the stock and a release come to. */
function answersOf(log: LogSnapshot): unknown {
  const [ours] = log.rows.baths.map(({ cells }) => cells).filter((cells) => cells.bath === bath);
  const pick = (columns: readonly ColumnId<"baths">[]): unknown => columns.map((column) => ours?.[column]);
  return {
    bath: pick([
      "state",
      "baseline",
      "trigger",
      "openingDose",
      "topUpTotal",
      "lastReading",
      "lastVerdict",
      "hardnessNow",
      "cost",
      "loads",
    ]),
    shares: Object.fromEntries(
      log.rows.shares.map(({ cells }) => [`${String(cells.claim)} in ${String(cells.bath)}`, cells.share]),
    ) as unknown,
    checks: [ours?.pool, ours?.costOpen, log.fields.costNotPlaced, log.fields.statementCost],
    stock: log.rows.stockBalance.map(({ cells }) => [cells.book, cells.dailyUse]),
    meter: log.rows.meterChecks.map(({ cells }) => [cells.id, cells.readingsReached, cells.verdictsFlipped]).sort(),
    acid: log.rows.releases.map(({ cells }) => cells.acidNeeded),
    makeUp: log.rows.additions
      .filter(({ cells }) => cells.id === "W2")
      .map(({ cells }) => [cells.evaporated, cells.carriedOut]),
  };
}

const tablesChanged = (change: (rows: readonly Cells[]) => readonly Cells[]): LogContent => ({
  fields: fullWeek.fields,
  rows: Object.fromEntries(Object.entries<readonly Cells[]>(fullWeek.rows).map(([id, rows]) => [id, change(rows)])),
});

const dates = ["when", "opened", "closed", "date", "releasedAt"] as const;

/** 1 March 2027 is day 46447; 28 February 2028, before a leap day, 46811; 30 December 2027 46751; 13 March 2027, before US clocks change, 46459. */
const shifts = {
  "a leap day": 46811 - 46447,
  "New Year": 46751 - 46447,
  "the change of the clocks": 46459 - 46447,
} as const;

describe("a log that a person was rough with", () => {
  let asTyped: unknown;

  it("shows no error as it was meant", async () => {
    const log = await weekOf(fullWeek);
    expect(errorsIn(log)).toEqual([]);
    asTyped = answersOf(log);
    // 578.99 of the week and 117 gal of water at 0.031 and 8.05 gal at 0.009; 12 of 33 baskets; 10 of 33 and 46.82 for a bath of its own.
    expect(asTyped).toMatchObject({ shares: { [`D-0427 in ${bath}`]: 211.89 }, checks: [582.69, 0, 0, 223.39] });
  });

  it("comes to the same with blank rows in the middle of every table", async () => {
    const log = await weekOf(
      tablesChanged((rows) => rows.flatMap((row, index) => (index === 1 ? [{}, row, {}, {}] : [row]))),
    );
    expect(errorsIn(log)).toEqual([]);
    expect(answersOf(log)).toEqual(asTyped);
  });

  it("comes to the same with every table sorted the other way round", async () => {
    const log = await weekOf(tablesChanged((rows) => [...rows].reverse()));
    expect(errorsIn(log)).toEqual([]);
    expect(answersOf(log)).toEqual(asTyped);
  });

  it.each(Object.entries(shifts))("comes to the same over %s", async (_name, days) => {
    const later = (row: Cells): Cells => ({
      ...row,
      ...Object.fromEntries(dates.flatMap((id) => (typeof row[id] === "number" ? [[id, row[id] + days]] : []))),
    });
    expect(answersOf(await weekOf(tablesChanged((rows) => rows.map(later))))).toEqual(asTyped);
  });

  it("says which lines count nowhere once a bath is renamed on Baths alone", async () => {
    const log = await weekOf(weekWhere({ baths: (row) => (row.bath === bath ? { ...row, bath: "B-NEW" } : row) }));
    expect(errorsIn(log)).toEqual([]);
    const of = (table: "additions" | "costLines"): number =>
      (fullWeek.rows[table] ?? []).filter((row) => row.bath === bath).length;
    expect(log.rows.additions.filter(({ cells }) => cells.gap !== undefined)).toHaveLength(of("additions"));
    expect(log.rows.costLines.filter(({ cells }) => cells.check === "bath not on Baths")).toHaveLength(of("costLines"));
    expect(log.fields.costOpen).toMatch(/not on Baths$/);
    expect(
      new Set(log.rows.readings.filter(({ cells }) => cells.purpose !== "rinse").map(({ cells }) => cells.verdict)),
    ).toEqual(new Set(["not counted: bath missing"]));
    expect(shown(log, "loads", "L001", "check")).toBe("bath missing");
  });

  it("shows no bare error where a bath's tank is not on the Job sheet", async () => {
    const log = await weekOf(weekWhere({ baths: (row) => ({ ...row, tank: "T9" }) }));
    expect(errorsIn(log)).toEqual([]);
    expect(shown(log, "additions", "W2", "evaporated")).toBeUndefined();
  });
});

describe("text where a number or a date belongs", () => {
  it("is named on its row, and no sum passes over it in silence", async () => {
    const texts: Readonly<Record<string, LogRow<"readings">>> = {
      R004: { ph: "11,33" },
      R005: { temperature: "25.0 C" },
      R006: { when: "2.3.2027 7 Uhr 50" },
    };
    const log = await weekOf(
      weekWhere({
        readings: (row) => ({ ...row, ...texts[String(row.id)] }),
        tanks: (row) => ({ ...row, dragOut: "0.2 gal" }),
        waters: (row) => ({
          ...row,
          hardness: row.water === "CITY" ? "19 gpg" : row.hardness,
          ph: "6,1",
          price: "3 ct",
        }),
        additions: (row) => (row.id === "W1" ? { ...row, amount: "117 gal" } : row),
        costLines: (row, index) => (index === 0 ? { ...row, amount: "$11.80" } : row),
        items: (row, index) => (index === 0 ? { ...row, quantity: "18 pcs" } : row),
      }),
    );
    expect(errorsIn(log)).toEqual([]);
    expect(["R004", "R005", "R006"].map((id) => shown(log, "readings", id, "verdict"))).toEqual([
      "not counted: pH is no number",
      "temperature missing",
      "not counted: when is no date",
    ]);
    expect(shown(log, "additions", "W2", "evaporated")).toBe("drag-out of the tank missing");
    expect(shown(log, "additions", "W2", "hardnessCarried")).toBe("water not tested");
    const [line] = log.rows.costLines;
    expect(line?.cells.check).toBe("amount is no number");
    expect(shown(log, "additions", "W1", "gap")).toBe("W1: amount is no number");
    expect(shown(log, "itemCounts", "D-0427", "balance")).toBe("lines without pieces: 1");
  });

  it("in every reading's time leaves the bath without a last reading, not with an error", async () => {
    const log = await weekOf(weekWhere({ readings: (row) => ({ ...row, when: "yesterday" }) }));
    expect(errorsIn(log)).toEqual([]);
    expect(shown(log, "baths", bath, "lastReading")).toBeUndefined();
  });
});

describe("a true zero", () => {
  it("is taken as one: a pack that cost nothing, a concentrate that holds no hardness", async () => {
    const log = await weekOf(
      weekWhere({
        concentrates: (row) => ({ ...row, packPrice: 0, capacity: 0, alkalinityStrength: 0, labelHardness: undefined }),
        tanks: (row) => ({ ...row, dragOut: 0 }),
      }),
    );
    expect(errorsIn(log)).toEqual([]);
    expect(shown(log, "concentrates", "CN-1", "unitPrice")).toBe(0);
    expect([shown(log, "baths", bath, "hardnessDose"), shown(log, "baths", bath, "alkalinityDose")]).toEqual([
      "capacity not known",
      "strength not known",
    ]);
  });
});

describe("twelve claims in a bath", () => {
  const claims = Array.from({ length: 12 }, (_, index) => `C-${String(index + 1)}`);
  const load = (claim: string, index: number): LogRow<"loads"> => ({
    ...fullWeek.rows.loads?.[0],
    id: `L${String(index)}`,
    claim,
    baskets: 1,
  });
  const twelve = (loads: readonly LogRow<"loads">[], more: LogContent["rows"] = {}): LogContent => ({
    fields: { ...fullWeek.fields, shareBasis: "baskets", statementClaim: "C-12" },
    rows: {
      ...fullWeek.rows,
      claims: claims.map((claim) => ({ claim })),
      shares: claims.map((claim) => ({ bath, claim })),
      additions: [],
      items: [],
      loads,
      costLines: [{ id: "C1", bath, what: "Labor", amount: 578.99, account: "claims" }],
      ...more,
    },
  });
  const fewest = twelve([], { shares: claims.slice(0, 11).map((claim) => ({ bath, claim })) });
  const open = (log: LogSnapshot): unknown => shown(log, "baths", bath, "costOpen");
  const sharesIn = (log: LogSnapshot): readonly unknown[] => log.rows.shares.map(({ cells }) => cells.share);

  // 578.99 / 12 is 48.2491…: eleven claims get the cents that are over.
  it("share to the cent", async () => {
    const log = await weekOf(twelve(claims.map(load)), fewest);
    expect(sharesIn(log)).toEqual([...Array<number>(11).fill(48.25), 48.24]);
    expect([open(log), log.fields.costNotPlaced, log.fields.statementCost]).toEqual([0, 0, 48.24]);
    expect(errorsIn(log)).toEqual([]);
  });

  // 578.99 / 11 is 52.6354…: 52.63 each, and six cents over.
  it("give nothing to one without a load", async () => {
    const log = await weekOf(twelve(claims.slice(0, 11).map(load)), fewest);
    expect(sharesIn(log)).toEqual([...Array<number>(6).fill(52.64), ...Array<number>(5).fill(52.63), 0]);
    expect(open(log)).toBe(0);
    expect(errorsIn(log)).toEqual([]);
  });

  it("share a credit that is more than the cost, and say which load has no share", async () => {
    const log = await weekOf(
      twelve(claims.map(load), {
        costLines: [{ id: "C1", bath, what: "Credit", amount: -100, account: "claims" }],
        shares: claims.slice(0, 11).map((claim) => ({ bath, claim })),
      }),
      fewest,
    );
    // −100 / 11 is −9.0909…: −9.09 each, and one cent more of the credit.
    expect(
      sharesIn(log)
        .map(Number)
        .sort((a, b) => a - b),
    ).toEqual([-9.1, ...Array<number>(10).fill(-9.09)]);
    expect([open(log), shown(log, "baths", bath, "costState"), log.fields.statementState]).toEqual([
      0,
      "provisional: load L11: no line in Shares",
      "provisional: load L11: no line in Shares",
    ]);
    expect(errorsIn(log)).toEqual([]);
  });

  it("without any load share nothing and show no error", async () => {
    const log = await weekOf(twelve([]), fewest);
    expect(errorsIn(log)).toEqual([]);
    expect(sharesIn(log).every((share) => share === undefined)).toBe(true);
  });
});
