import { ArrowUndoRegular } from "@fluentui/react-icons/svg/arrow-undo";
import { PinRegular } from "@fluentui/react-icons/svg/pin";

import { findRow } from "../../advice/bath-facts.ts";
import { isSettledIn } from "../../advice/settled-baths.ts";
import type { UnlikeCell } from "../../advice/unlike-cells.ts";
import { mendingPlace, typedOverWords } from "../../advice/waiting.ts";
import { countOf } from "../../advice/wording/figure-words.ts";
import { serialOf } from "../../advice/wording/moments.ts";
import { editLog, readLog } from "../../excel/log-workbook.ts";
import { LogProblem } from "../../excel/office-problems.ts";
import type { RowChange } from "../../excel/record/cell-changes.ts";
import type { SettledRow } from "../../excel/record/settled-cells.ts";
import { callingColumns, settledTables } from "../../joblog/formula/calling-columns.ts";
import { jobLog } from "../../joblog/job-log.ts";
import type { RowValue } from "../../joblog/model/definition.ts";
import { type AnyRow, isCellError, isUnfinished, type LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import { isSameText } from "../../joblog/model/same-text.ts";
import type { Action } from "../record/action.ts";

interface BathRow {
  readonly settled: Omit<SettledRow, "cells">;
  readonly row: AnyRow;
  readonly sheet: string;
  /** Its columns that call functions. */
  readonly calling: ReadonlySet<string>;
}

/** The rows of a bath that have such columns, its own among them. */
function bathRows({ rows }: LogSnapshot, bath: string): readonly BathRow[] {
  return settledTables(jobLog).flatMap((table): readonly BathRow[] => {
    const calling = callingColumns(table, jobLog);
    const sheet = jobLog.sheets.find(({ tables }) => tables.includes(table))?.name ?? "";
    const [first] = table.columns;
    return rows[table.id].flatMap((row: AnyRow): readonly BathRow[] => {
      const held = row.cells["bath"];
      if (held === undefined || !isSameText(String(held), bath)) return [];
      const key = row.cells[first?.id ?? ""];
      const settled = {
        table: table.id,
        position: row.position,
        key: key === undefined ? undefined : String(key),
        bath: held,
      };
      return [{ settled, row, sheet, calling }];
    });
  });
}

const settledRow = ({ settled, row: { cells }, calling }: BathRow): SettledRow => ({
  ...settled,
  cells: Object.fromEntries([...calling].map((id) => [id, cells[id]])),
});

const notSettled = (what: string, remedy: string): LogProblem =>
  new LogProblem({ what: `${what} Nothing was settled.`, remedy });

function unlikeProblem(unlike: UnlikeCell): LogProblem {
  return isUnfinished(unlike.shown)
    ? notSettled(
        `Excel has not worked out ${unlike.place}${unlike.under === undefined ? "" : `, ${unlike.under}`}.`,
        "Wait until Excel has finished, then try again.",
      )
    : notSettled(
        typedOverWords(unlike),
        `Wait until Excel has finished, or choose ${mendingPlace(unlike)}. Then try again.`,
      );
}

/** Throws a LogProblem where a cell of these does not show what its formula gives, or shows an error. */
async function refuseUnfinished(read: LogSnapshot, bath: string): Promise<void> {
  const { checkedLog } = await import(/* webpackChunkName: "pane-figures" */ "../../advice/checked-log.ts");
  const checked = checkedLog(read);
  const { unlike } = checked.noting(() => bathRows(checked.log, bath).map(settledRow));
  const [first] = unlike;
  if (first !== undefined) throw unlikeProblem(first);
  for (const { row, sheet, settled, calling } of bathRows(read, bath)) {
    const wrong = [...calling].find((id) => isCellError(row.cells[id]));
    if (wrong !== undefined)
      throw notSettled(
        `${settled.key ?? `Row ${String(row.position + 1)}`} on the sheet ${sheet} shows ${String(row.cells[wrong])}.`,
        "Put right what was typed there, then try again.",
      );
  }
}

/** A row's formulas weigh some 8 kB, and Excel on the web takes and gives 5 MB at once; a bath is read some thirty times. */
const mostRows = 300;

async function openLog(): Promise<LogSnapshot> {
  const read = await readLog();
  if (read === undefined) throw new LogProblem({ what: "This workbook holds no log.", remedy: "Open the log's own." });
  return read;
}

type Mark = Readonly<Record<"settledAt" | "settledBy", RowValue | undefined>>;

/** The bath's own row, found by its name. Throws a LogProblem where there is none. */
function markChange(read: LogSnapshot, bath: string, after: Mark): RowChange {
  const row = findRow(read, "baths", "bath", bath);
  if (row === undefined)
    throw new LogProblem({ what: `The log has no bath ${bath} any more.`, remedy: "Choose another one." });
  const { cells, position } = row;
  return {
    table: "baths",
    position,
    cells: {
      bath: { before: cells.bath, after: cells.bath },
      // Another person may reopen it meanwhile.
      closed: { before: cells.closed, after: cells.closed },
      settledAt: { before: cells.settledAt, after: after.settledAt },
      settledBy: { before: cells.settledBy, after: after.settledBy },
    },
  };
}

export interface Settle {
  readonly bath: string;
  readonly by: string;
  /** As a date-time field writes it. */
  readonly now: string;
}

/**
 * Puts values in place of the formulas that call functions, in the rows of a closed bath, and notes when and by whom, all
 * in one batch. Only where each of those cells shows what its formula gives.
 */
export const settleBath: Action<Settle, string> = {
  name: "Settle this bath",
  icon: PinRegular,
  needs: "bath",
  run: async ({ bath, by, now }) => {
    const read = await openLog();
    const mark = markChange(read, bath, { settledAt: serialOf(now), settledBy: by });
    if (findRow(read, "baths", "bath", bath)?.cells.closed === undefined)
      throw notSettled(`Bath ${bath} is not closed.`, "Record its change-out first.");
    if (isSettledIn(read.rows)(bath))
      throw notSettled(`Bath ${bath} is settled already.`, "Put its formulas back first.");
    const rows = bathRows(read, bath).map(settledRow);
    if (rows.length > mostRows)
      throw notSettled(
        `Bath ${bath} has ${String(rows.length)} rows, more than the ${String(mostRows)} that can be settled in one step.`,
        "It keeps its formulas.",
      );
    await refuseUnfinished(read, bath);
    await editLog({ changes: [mark], settling: { become: "value", rows } });
    return `Bath ${bath} is settled: ${countOf(rows.length, "row")} in all. They no longer follow later changes.`;
  },
};

/** Gives the rows of a settled bath their formulas back, in one batch with the note. */
export const putFormulasBack: Action<Pick<Settle, "bath">, string> = {
  name: "Put the formulas back",
  icon: ArrowUndoRegular,
  needs: "bath",
  run: async ({ bath }) => {
    const read = await openLog();
    const mark = markChange(read, bath, { settledAt: undefined, settledBy: undefined });
    const rows = bathRows(read, bath).map(settledRow);
    await editLog({ changes: [mark], settling: { become: "formula", rows } });
    return `Bath ${bath} follows its formulas again.`;
  },
};
