import { type Line, type Measure, measures } from "./log-lines.ts";

/** A way to add lines up: by which of their parts, and which of the measures make sense of it. */
export interface Grouping {
  readonly id: string;
  readonly name: string;
  readonly by: readonly {
    readonly part: "shop" | "month" | "claim" | "file" | "bath" | "concentrate";
    readonly label: string;
  }[];
  readonly measures: readonly Measure[];
}

export const groupings: readonly Grouping[] = [
  { id: "ByShop", name: "By shop", by: [{ part: "shop", label: "Shop" }], measures },
  {
    id: "ByMonth",
    name: "By month",
    by: [
      { part: "shop", label: "Shop" },
      { part: "month", label: "Month" },
    ],
    measures: ["cost", "loads", "baskets", "concentrate", "topUps", "unpriced", "uncounted"],
  },
  {
    id: "ByClaim",
    name: "By claim",
    by: [
      { part: "shop", label: "Shop" },
      { part: "claim", label: "Claim" },
    ],
    measures: ["claimCost", "loads", "baskets", "pieces", "restored", "uncounted", "provisional"],
  },
  {
    id: "ByBath",
    name: "By bath",
    by: [
      { part: "shop", label: "Shop" },
      { part: "file", label: "File" },
      { part: "bath", label: "Bath" },
    ],
    measures: ["cost", "loads", "baskets", "concentrate", "topUps", "unpriced", "uncounted"],
  },
  {
    id: "ByConcentrate",
    name: "By concentrate",
    by: [
      { part: "shop", label: "Shop" },
      { part: "concentrate", label: "Concentrate" },
    ],
    measures: ["cost", "concentrate", "topUps", "unpriced"],
  },
];

export interface Total {
  readonly keys: readonly string[];
  readonly currency: string;
  readonly amounts: Readonly<Partial<Record<Measure, number>>>;
}

const order = (one: string, other: string): number => (one < other ? -1 : one > other ? 1 : 0);

/** Lines added up; those that a part of the grouping says nothing of are in none of its totals. Sorted by key. */
export function totalsOf(lines: readonly Line[], { by }: Grouping): readonly Total[] {
  const totals = new Map<
    string,
    { keys: readonly string[]; currency: string; amounts: Partial<Record<Measure, number>> }
  >();
  for (const line of lines) {
    const keys = by.map(({ part }) => line[part]);
    if (keys.includes("")) continue;
    // Amounts in two currencies do not add up.
    const id = JSON.stringify([...keys, line.currency]);
    const total = totals.get(id) ?? { keys, currency: line.currency, amounts: {} };
    totals.set(id, total);
    for (const measure of measures) {
      const amount = line.amounts[measure];
      if (amount !== undefined) total.amounts[measure] = (total.amounts[measure] ?? 0) + amount;
    }
  }
  return [...totals.entries()].sort(([one], [other]) => order(one, other)).map(([, total]) => total);
}
