/** Computed cells that somebody typed over: the log goes on reckoning with what they show. */
import type { RowValue } from "../joblog/model/definition.ts";
import type { LogSnapshot, SnapshotRow } from "../joblog/model/log-snapshot.ts";
import { isCellError } from "../joblog/model/log-snapshot.ts";
import { readingVerdict } from "../joblog/model/words.ts";
import { findRow, lastReadingOf, rowFacts, rowsOfBath } from "./bath-facts.ts";
import { draftedLog } from "./drafted-row.ts";

interface Overwritten {
  readonly row: string;
  readonly sheet: string;
  readonly shown: string;
  readonly due: string;
}

const shownText = (value: RowValue | undefined): string =>
  value === undefined || value === "" ? "nothing" : `“${String(value)}”`;

/** A verdict is what the row's own helper says, or that a top-up fell short. The helper is seldom typed over as well. */
function verdictAgainstHelper(row: SnapshotRow<"readings">): Overwritten | undefined {
  const { id, verdict, judged } = row.cells;
  if (judged === undefined || isCellError(judged) || (verdict !== undefined && isCellError(verdict))) return undefined;
  if (verdict === judged || verdict === readingVerdict.notBack) return undefined;
  return { row: String(id ?? ""), sheet: "Readings", shown: shownText(verdict), due: shownText(judged) };
}

/** The last reading decides what is done next, so that it is worked out anew, with the bath's own row. */
function workedAnew(log: LogSnapshot, bath: SnapshotRow<"baths">): readonly Overwritten[] {
  const id = String(bath.cells.bath ?? "");
  const reading = lastReadingOf(log, id);
  const ours = [bath.cells, reading?.cells];
  const anew = draftedLog(log, [], (_, cells) => ours.includes(cells));
  const words = (["state", "benchState", "lastVerdict"] as const).flatMap((column): Overwritten[] => {
    const [shown, due] = [bath.cells[column], anew.standing("baths", bath).text(column)];
    return shown === due || (shown !== undefined && isCellError(shown))
      ? []
      : [{ row: id, sheet: "Baths", shown: shownText(shown), due: shownText(due) }];
  });
  if (reading === undefined) return words;
  const { verdict } = reading.cells;
  const due = anew.standing("readings", reading).text("verdict");
  return verdict === due || due === undefined || (verdict !== undefined && isCellError(verdict))
    ? words
    : [
        { row: rowFacts(reading).text("id") ?? "", sheet: "Readings", shown: shownText(verdict), due: shownText(due) },
        ...words,
      ];
}

/** One sentence for the first computed cell found that shows something else than its formula gives. */
export function overwrittenSentence(log: LogSnapshot, bathId: string): readonly string[] {
  const bath = findRow(log, "baths", "bath", bathId);
  if (bath === undefined) return [];
  const [first] = [
    ...rowsOfBath(log, "readings", bathId).flatMap((row) => verdictAgainstHelper(row) ?? []),
    ...workedAnew(log, bath),
  ];
  return first === undefined
    ? []
    : [
        `${first.row} on the sheet ${first.sheet} shows ${first.shown}, and its formula gives ${first.due}: the cell was typed over. Shop, Formulas puts it right.`,
      ];
}
