/** A formula that reads a cell of the add-in fails with it: money may not, however long the way to it is. */
import { describe, expect, it } from "vitest";

import { type Node, nodeOf } from "../../../../src/joblog/formula/expression.ts";
import { logNames, rowNames } from "../../../../src/joblog/formula/name-log.ts";
import { jobLog } from "../../../../src/joblog/job-log.ts";

const names = logNames(jobLog);

type Place = readonly [place: string, formula: readonly [formula: Node, table: string]];

/** Every formula of the log by the place of its cells: `additions.cost`, or the id of a named cell. */
const formulas: ReadonlyMap<string, readonly [formula: Node, table: string]> = new Map(
  jobLog.sheets.flatMap(({ fields, tables }): readonly Place[] => [
    ...fields.flatMap(({ id, formula }): readonly Place[] =>
      formula === undefined ? [] : [[id, [nodeOf(formula(names)), ""]]],
    ),
    ...tables.flatMap((table) =>
      table.columns.flatMap((column): readonly Place[] =>
        column.role === "input"
          ? []
          : [[`${table.id}.${column.id}`, [nodeOf(column.formula(rowNames(table), names)), table.id]]],
      ),
    ),
  ]),
);

interface Read {
  readonly places: readonly string[];
  readonly calls: boolean;
}

/** What a formula of that table reads itself. */
function readBy(node: Node, table: string): Read {
  const among = (nodes: readonly Node[], calls = false): Read => {
    const all = nodes.map((one) => readBy(one, table));
    return { places: all.flatMap(({ places }) => places), calls: calls || all.some((one) => one.calls) };
  };
  switch (node.kind) {
    case "here":
      return { places: [`${table}.${node.column}`], calls: false };
    case "column":
      return { places: [`${node.table}.${node.column}`], calls: false };
    case "named":
      return { places: [node.field], calls: false };
    case "operation":
      return among([node.left, node.right]);
    case "apply":
      return among(node.to);
    case "call":
      return among(node.to, true);
    case "span":
      throw new RangeError("A span of cells is read by calls alone.");
    default:
      return { places: [], calls: false };
  }
}

/** The way from a place to the first call of the add-in behind it, or undefined where there is none. */
function wayToCall(place: string, seen = new Set<string>()): string | undefined {
  const found = formulas.get(place);
  if (found === undefined || seen.has(place)) return undefined;
  seen.add(place);
  const { calls, places } = readBy(...found);
  if (calls) return place;
  for (const one of places) {
    const way = wayToCall(one, seen);
    if (way !== undefined) return `${place} < ${way}`;
  }
  return undefined;
}

const moneyOf = ({ id, type }: { readonly id: string; readonly type: string }, table = ""): readonly string[] =>
  type === "money" ? [table === "" ? id : `${table}.${id}`] : [];

const money = jobLog.sheets.flatMap(({ fields, tables }) => [
  ...fields.flatMap((field) => moneyOf(field)),
  ...tables.flatMap((table) => table.columns.flatMap((column) => moneyOf(column, table.id))),
]);

/** What a person plays with on What-if is no charge to anyone. */
const playedWith = (place: string): boolean => place.startsWith("whatIf");

describe("what is charged", () => {
  it("is worked out without a function of the add-in, all the way back to what was typed", () => {
    const ways = money.filter((place) => !playedWith(place)).flatMap((place) => wayToCall(place) ?? []);
    expect(ways).toEqual([]);
    expect(money.filter((place) => formulas.has(place)).length).toBeGreaterThan(60);
  });

  it("would be found out: a verdict calls the add-in, and what reads it is traced", () => {
    expect(wayToCall("readings.verdict")).toMatch(/^readings\.verdict/);
    expect(wayToCall("additions.amount")).toBeUndefined();
  });
});
