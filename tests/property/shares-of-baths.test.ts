import fc from "fast-check";
import { describe, expect, it } from "vitest";

import { shareOut } from "../../src/core/money/share.ts";
import { EvaluatedLog } from "../../src/joblog/evaluate/evaluated-log.ts";
import { jobLog } from "../../src/joblog/job-log.ts";
import type { LogRow } from "../../src/joblog/model/definition.ts";
import type { AnyRow, LogSnapshot } from "../../src/joblog/model/log-snapshot.ts";
import { shareBases } from "../../src/joblog/model/words.ts";
import { runs } from "../setup/random-runs.ts";

const claims = ["C-1", "C-2", "C-3", "C-4", "C-5"] as const;
const baths = ["B-1", "B-2", "B-3"] as const;

const cents = (low: number, high: number): fc.Arbitrary<number> =>
  fc.integer({ min: low, max: high }).map((amount) => amount / 100);

const load = fc.record({
  bath: fc.constantFrom(...baths),
  claim: fc.constantFrom(...claims),
  baskets: fc.oneof(
    fc.integer({ min: 1, max: 12 }),
    fc.integer({ min: 1, max: 48 }).map((part) => part / 4),
  ),
  soil: fc.constantFrom("light", "medium", "heavy"),
  minutes: fc.integer({ min: 1, max: 45 }),
  rework: fc.constantFrom("yes", "no", undefined),
});

const line = fc.record({
  bath: fc.constantFrom(...baths),
  amount: fc.oneof(cents(1, 200_000), cents(-20_000, -1)),
  account: fc.constantFrom("claims", "claims", "claims", "shop"),
  claim: fc.oneof({ weight: 5, arbitrary: fc.constant(undefined) }, fc.constantFrom(...claims)),
});

/** A job with loads and cost lines in three baths, a row in Shares for each claim in each. */
const job = fc.record({
  basis: fc.constantFrom(...shareBases),
  loads: fc.array(load, { minLength: 1, maxLength: 20 }),
  lines: fc.array(line, { minLength: 1, maxLength: 12 }),
});

type Job = typeof job extends fc.Arbitrary<infer One> ? One : never;

const placed = (rows: readonly object[]): readonly AnyRow[] =>
  rows.map((cells, position) => ({ position, cells: cells as AnyRow["cells"] }));

function logOf({ basis, loads, lines }: Job): EvaluatedLog {
  const visits = new Map(loads.map(({ bath, claim }) => [`${bath} ${claim}`, { bath, claim }]));
  const rows: Partial<Record<keyof LogSnapshot["rows"], readonly AnyRow[]>> = Object.fromEntries(
    jobLog.sheets.flatMap(({ tables }) => tables.map(({ id }) => [id, []])),
  );
  const filled = {
    ...rows,
    claims: placed(claims.map((claim) => ({ claim }))),
    baths: placed(baths.map((bath) => ({ bath }))),
    loads: placed(
      loads.map((one, index): LogRow<"loads"> => ({ id: `L${String(index)}`, when: 46447 + index, ...one })),
    ),
    costLines: placed(
      lines.map((one, index): LogRow<"costLines"> => ({ id: `C${String(index)}`, what: "cost", ...one })),
    ),
    shares: placed([...visits.values()]),
  };
  const fields = { unitSystem: "US", shareBasis: basis, weightLight: 1, weightMedium: 2, weightHeavy: 3 };
  return new EvaluatedLog(jobLog, { fields, rows: filled as LogSnapshot["rows"] }, [], "everything");
}

const inCents = (value: unknown): number => Math.round(Number(value) * 100);

const unitsOf = ({ baskets, soil, minutes, rework }: Job["loads"][number], basis: Job["basis"]): number => {
  const weight = { light: 1, medium: 2, heavy: 3 }[soil as "light"];
  const by = { baskets, "soil-weighted baskets": baskets * weight, "basket-minutes": baskets * minutes };
  return rework === "yes" ? 0 : by[basis];
};

describe("the costs of a random job", () => {
  it("are what BATH.SHARE gives, in every bath, to the cent", () => {
    fc.assert(
      fc.property(job, (one) => {
        const log = logOf(one);
        const shares = Array.from({ length: log.linesIn("shares") }, (_, at) => ({
          bath: log.cell("shares", "bath", at),
          claim: log.cell("shares", "claim", at),
          share: log.cell("shares", "share", at),
        }));
        for (const bath of baths) {
          const pool = one.lines
            .filter((cost) => cost.bath === bath && cost.account === "claims" && cost.claim === undefined)
            .reduce((sum, { amount }) => sum + inCents(amount), 0);
          const ours = shares.filter((row) => row.bath === bath);
          const units = ours.map(({ claim }) =>
            one.loads
              .filter((row) => row.bath === bath && row.claim === claim)
              .reduce((sum, row) => sum + unitsOf(row, one.basis), 0),
          );
          const isBilled = units.some((unit) => unit > 0);
          const expected = isBilled ? shareOut(pool / 100, units) : units.map(() => 0);
          expect(ours.map(({ share }) => share)).toEqual(expected);
        }
      }),
      runs(60),
    );
  });

  it("are claims, shop and not placed, in the whole and bath by bath, with no cent lost", () => {
    fc.assert(
      fc.property(job, (one) => {
        const log = logOf(one);
        const total = one.lines.reduce((sum, { amount }) => sum + inCents(amount), 0);
        const named = (["costToClaims", "costToShop", "costNotPlaced"] as const).map((id) => inCents(log.named(id)));
        expect(inCents(log.named("costTotal"))).toBe(total);
        expect(named.reduce((sum, part) => sum + part, 0)).toBe(total);
        const billed = claims.reduce((sum, _, at) => sum + inCents(log.cell("claims", "cost", at)), 0);
        expect(billed).toBe(named[0]);
        baths.forEach((bath, at) => {
          const of = (["costDirect", "costShared", "costShop", "costOpen"] as const).map((id) =>
            inCents(log.cell("baths", id, at)),
          );
          const cost = one.lines.filter((row) => row.bath === bath).reduce((sum, row) => sum + inCents(row.amount), 0);
          expect(of.reduce((sum, part) => sum + part, 0)).toBe(cost);
          if (of[3] !== 0) expect(log.cell("baths", "costState", at)).toBe("provisional: no claim has loads in it");
        });
      }),
      runs(60),
    );
  });
});
