import { joined, minus, plus } from "./arithmetic.ts";
import { apply, type Expression, type Node, nodeOf, type Value } from "./expression.ts";
import type { ColumnId, Columns } from "./log-names.ts";
import type { LogTables, TableId } from "./log-types.ts";
import { halfMinute } from "./times.ts";

/** A comparison that picks rows; `Word` is the word that it names. */
export interface Comparison<Word extends string = never> {
  readonly criterion: Node;
  readonly word?: Word;
}

type Criterion<Word extends string> = Word | number | Expression | Comparison<Word>;

type WordOf<Table extends TableId, Id extends ColumnId<Table>> = LogTables[Table][Id] & string;

/** Rows for which every named column meets what stands beside it; several of one column as a list. */
export type Where<Table extends TableId> = {
  readonly [Id in ColumnId<Table>]?: Criterion<WordOf<Table, Id>> | readonly Criterion<WordOf<Table, Id>>[];
};

/** Below, above, … a number, date or time. */
const compared =
  (sign: string) =>
  (value: number | Expression): Comparison => ({
    criterion: typeof value === "number" ? nodeOf(`${sign}${String(value)}`) : joined(sign, value),
  });

export const below = compared("<");

export const above = compared(">");

export const atLeast = compared(">=");

export const atMost = compared("<=");

export const otherThan = <Word extends string>(word: Word): Comparison<Word> => ({ criterion: nodeOf(`<>${word}`) });

export const after = (time: Expression): Comparison => above(plus(time, halfMinute));

export const before = (time: Expression): Comparison => below(minus(time, halfMinute));

/** At that time or later. */
export const from = (time: Expression): Comparison => atLeast(minus(time, halfMinute));

/** At that time or earlier. */
export const upTo = (time: Expression): Comparison => atMost(plus(time, halfMinute));

function isComparison(criterion: Criterion<string>): criterion is Comparison<string> {
  return typeof criterion === "object" && "criterion" in criterion;
}

/** `range,criterion` pairs as COUNTIFS and its kin take them. */
function pairs<Table extends TableId>(columns: Columns<Table>, where: Where<Table>): readonly Value[] {
  const ids = Object.keys(where) as ColumnId<Table>[];
  return ids.flatMap((id) => {
    const criteria = where[id] as Criterion<string> | readonly Criterion<string>[];
    const list: readonly Criterion<string>[] = Array.isArray(criteria) ? criteria : [criteria as Criterion<string>];
    return list.flatMap((one): Value[] => [columns[id], isComparison(one) ? one.criterion : one]);
  });
}

/** How many rows there are of that kind. */
export function countWhere<Table extends TableId>(columns: Columns<Table>, where: Where<Table>): Expression {
  return apply("COUNTIFS", ...pairs(columns, where));
}

const ofRows =
  (name: "SUMIFS" | "MAXIFS" | "MINIFS" | "AVERAGEIFS") =>
  <Table extends TableId>(columns: Columns<Table>, column: ColumnId<Table>, where: Where<Table>): Expression =>
    apply(name, columns[column], ...pairs(columns, where));

export const sumWhere = ofRows("SUMIFS");

/** 0 where there is no such row. */
export const largestWhere = ofRows("MAXIFS");

/** 0 where there is no such row. */
export const smallestWhere = ofRows("MINIFS");

export const averageWhere = ofRows("AVERAGEIFS");

/** Text that begins so. */
export const beginning = (text: string): Comparison => ({ criterion: nodeOf(`${text}*`) });
