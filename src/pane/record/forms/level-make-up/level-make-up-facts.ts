import type { Answer } from "../../../../advice/answer.ts";
import { askRow } from "../../../../advice/ask.ts";
import { type BathTable, findRow, type RowFacts, rowFacts, rowsOfBath } from "../../../../advice/bath-facts.ts";
import { bathFacts } from "../../../../advice/bath-values.ts";
import type { FilledFields } from "../../../../advice/filled-fields.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import { tankOf } from "../../../../advice/tank-limits.ts";
import type { ColumnId } from "../../../../joblog/formula/log-names.ts";

/** Keys of the form's fields. */
export type MakeUpKey = ColumnId<"additions"> | "concentrateAmount";

/** What happened since water last went into the bath, as the Additions sheet counts it. */
export interface SinceWater {
  readonly loads: number;
  readonly drained: number;
  readonly concentrate: number;
}

type Timed = Pick<RowFacts<BathTable>, "number">;

export function sinceWater(context: LogContext, bath: string, when: number): SinceWater {
  const of = <Table extends BathTable>(table: Table): readonly RowFacts<Table>[] =>
    rowsOfBath(context.log, table, bath).map(rowFacts);
  const time = (row: Timed): number => row.number("when") ?? Number.POSITIVE_INFINITY;
  const before = Math.max(
    0,
    ...of("additions")
      .filter((row) => row.text("kind") === "water" && time(row) < when)
      .map(time),
  );
  const since = <Row extends Timed>(rows: readonly Row[]): readonly Row[] =>
    rows.filter((row) => time(row) > before && time(row) <= when);
  const sum = (rows: readonly Pick<RowFacts<"additions" | "care">, "number">[]): number =>
    rows.reduce((total, row) => total + (row.number("amount") ?? 0), 0);
  return {
    loads: since(of("loads")).length,
    drained: sum(since(of("care"))),
    concentrate: sum(
      since(of("additions")).filter((row) => row.text("kind") === "concentrate" && row.text("purpose") !== "opening"),
    ),
  };
}

/** What the rise of the level holds; undefined without both levels or the tank's size. */
export function riseOf(filled: FilledFields<MakeUpKey>, context: LogContext): number | undefined {
  const perDepth = tankOf(context, filled.text("bath"))?.number("volumePerDepth");
  const [before, after] = [filled.number("levelBefore"), filled.number("levelAfter")];
  return perDepth === undefined || before === undefined || after === undefined
    ? undefined
    : (after - before) * perDepth;
}

/** How a fall of the level divides. */
export interface Split {
  readonly evaporated: number;
  readonly carriedOut: number;
  readonly concentrate: number;
}

/** MAKEUP with the arguments of the Additions sheet; undefined where level, drag-out or strength is not known. */
export function splitOf(
  filled: FilledFields<MakeUpKey>,
  since: SinceWater,
  context: LogContext,
): Answer<Split> | undefined {
  const bath = filled.text("bath");
  const facts = bathFacts(context.log, bath);
  const dragOut = tankOf(context, bath)?.number("dragOut");
  const [rise, dose, held] = [riseOf(filled, context), facts?.number("openingDose"), facts?.number("workingVolume")];
  if (rise === undefined || rise <= 0 || dragOut === undefined || dose === undefined || held === undefined)
    return undefined;
  const answer = askRow("MAKEUP", rise + since.concentrate, since.loads, dragOut, since.drained, dose / held);
  if (!answer.known) return answer;
  const [evaporated = 0, carriedOut = 0, concentrate = 0] = answer.value;
  return { known: true, value: { evaporated, carriedOut, concentrate } };
}

/** The row of a water, of a concentrate. */
export function keyed<Table extends "waters" | "concentrates">(
  context: LogContext,
  table: Table,
  column: ColumnId<Table>,
  key: string | undefined,
): RowFacts<Table> | undefined {
  const row = key === undefined ? undefined : findRow(context.log, table, column, key);
  return row === undefined ? undefined : rowFacts(row);
}
