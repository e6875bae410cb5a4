import { amountProblems, heldBy, levelProblems } from "../../../../advice/amounts/tank-limits.ts";
import { closedOn } from "../../../../advice/books/closed-months.ts";
import type { FieldProblem } from "../../../../advice/filled-fields.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import { isSettledIn, settlingPlace } from "../../../../advice/settled-baths.ts";
import { shortMoment } from "../../../../advice/wording/moments.ts";
import { settledTables } from "../../../../joblog/formula/calling-columns.ts";
import type { ColumnId } from "../../../../joblog/formula/log-names.ts";
import type { TableId } from "../../../../joblog/formula/log-types.ts";
import { jobLog } from "../../../../joblog/job-log.ts";
import { entryTimes } from "../../bath-times.ts";
import type { EntryField } from "../../entry-form.ts";
import { describedColumn, fieldOf } from "../../fields-of.ts";
import { impossibleTimes } from "../../impossible-times.ts";
import { correctedIds, type Correction, correctionLabel } from "./correction.ts";
import { firstAfterOpening, openingMoves } from "./correction-opening.ts";

type ColumnsByTable = { readonly [Table in TableId]?: readonly ColumnId<Table>[] };

/** Amounts of which 0 is nothing, though their column takes it. */
const moreThanNothing: ColumnsByTable = {
  loads: ["baskets", "minutes"],
  costLines: ["amount"],
  stockMoves: ["amount"],
};

const volumes: ColumnsByTable = {
  additions: ["amount"],
  care: ["amount"],
  releases: ["volume", "releasedVolume"],
};

const levels: ColumnsByTable = {
  readings: ["level"],
  additions: ["levelBefore", "levelAfter"],
};

const afterClose: readonly ColumnId<"releases">[] = ["when", "releasedAt"];

function amounts({ table, filled, changed }: Correction, context: LogContext): readonly FieldProblem[] {
  const bath = filled.text("bath");
  const isCount = table === "stockMoves" && filled.text("kind") === "count";
  const nothing = (moreThanNothing[table] ?? []).filter((id) => filled.number(id) === 0 && !isCount);
  return [
    ...nothing.map((id) => ({ key: id, message: `${correctionLabel(table, id)}: 0 is nothing to record.` })),
    ...(volumes[table] ?? []).flatMap((id) =>
      amountProblems(id, correctionLabel(table, id), filled.number(id), heldBy(context, bath), context),
    ),
    ...(levels[table] ?? []).flatMap((id) =>
      levelProblems(id, correctionLabel(table, id), filled.number(id), bath, context),
    ),
  ].filter(({ key }) => changed.includes(key));
}

/** A bath is open while things happen in it. */
function bathSpan(correction: Correction, context: LogContext): readonly FieldProblem[] {
  const { table, row, filled, changed } = correction;
  if (table !== "baths") return [];
  const last = entryTimes(context, String(row.cells.bath ?? "")).at(-1);
  const [opened, closed] = [filled.number("opened"), filled.number("closed")];
  const first = firstAfterOpening(correction, context);
  const moved = openingMoves(correction, context).map(({ to }) => to);
  const lastMoved = Math.max(opened ?? 0, ...moved);
  const problems: FieldProblem[] = [];
  if (opened !== undefined && first !== undefined && lastMoved > first)
    problems.push({
      key: "opened",
      message:
        opened > first
          ? `Opened: ${shortMoment(opened)} is after the bath's first entry, ${shortMoment(first)}. Check the date.`
          : `Opened: the opening water and concentrate would move along to ${shortMoment(lastMoved)}, after the bath's next entry, ${shortMoment(first)}. Correct their times one by one first.`,
    });
  if (closed !== undefined && last !== undefined && closed < last)
    problems.push({
      key: "closed",
      message: `Closed: ${shortMoment(closed)} is before the bath's last entry, ${shortMoment(last)}. Check the date.`,
    });
  if (closed !== undefined && opened !== undefined && closed < opened)
    problems.push({
      key: "closed",
      message: `Closed: ${shortMoment(closed)} is before it was opened, ${shortMoment(opened)}. Check the date.`,
    });
  return problems.filter(({ key }) => changed.includes(key));
}

/** The time counts anew where the time or the bath is another now. */
function times({ table, filled, changed }: Correction, context: LogContext): readonly FieldProblem[] {
  const held = correctedIds(table);
  const ids = ["when", "opened", "closed", "releasedAt", "date"].filter(
    (id) => changed.includes(id) || (id === "when" && held.includes(id) && changed.includes("bath")),
  );
  const fields = ids.map((id): EntryField =>
    fieldOf(context.log, describedColumn(table, id), {
      afterClose: table === "releases" && afterClose.some((one) => one === id),
    }),
  );
  return impossibleTimes(fields, filled, context);
}

/** An entry of a month that is closed stands as it was handed to the books; its note may still grow. */
function closedEntry({ row, changed }: Correction, { log }: LogContext): readonly FieldProblem[] {
  const { when, date, opened } = row.cells;
  const dated = [when, date, opened].find((time) => typeof time === "number");
  const [key] = changed.filter((id) => id !== "note");
  const closed = typeof dated === "number" && key !== undefined ? closedOn(log, dated) : undefined;
  return key === undefined || closed === undefined ? [] : [{ key, message: closed }];
}

/** Rows that hold values where a bath is settled, and those by which its release counts its alkalinity. */
const restsOn: ReadonlySet<TableId> = new Set([...settledTables(jobLog).map(({ id }) => id), "loads", "care"]);

/** Values do not follow what is typed beside them. */
function settledRows({ table, row, filled, changed }: Correction, { log }: LogContext): readonly FieldProblem[] {
  const isSettled = isSettledIn(log.rows);
  const [key] = changed.filter((id) => id !== "note");
  if (key === undefined || !restsOn.has(table)) return [];
  const bath = [row.cells.bath, changed.includes("bath") ? filled.text("bath") : undefined].find(isSettled);
  if (bath === undefined) return [];
  return [
    {
      key,
      message: `Bath ${String(bath)} is settled, so its figures would not follow. Put its formulas back first (${settlingPlace}).`,
    },
  ];
}

/** What cannot be so of a row as it will stand: the same limits as where it was recorded. Keys are those of the columns. */
export function correctionProblems(correction: Correction, context: LogContext): readonly FieldProblem[] {
  return [
    ...amounts(correction, context),
    ...bathSpan(correction, context),
    ...times(correction, context),
    ...closedEntry(correction, context),
    ...settledRows(correction, context),
  ];
}
