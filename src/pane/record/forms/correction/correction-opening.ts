/** A bath that was opened at another time was filled then: its opening water and concentrate move along. */
import { rowFacts, rowsOfBath } from "../../../../advice/bath-facts.ts";
import type { Finding } from "../../../../advice/finding.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import { fieldTextOf, shortMoment } from "../../../../advice/wording/moments.ts";
import type { RowChange } from "../../../../excel/record/cell-changes.ts";
import type { Correction } from "./correction.ts";

interface Move {
  readonly id: string;
  readonly from: number;
  readonly to: number;
  readonly change: RowChange;
}

/** Times are kept to the minute. */
const toTheMinute = (serial: number): number => Math.round(serial * 1440) / 1440;

/** The first thing that happened in the bath besides its opening. */
export function firstAfterOpening({ row }: Correction, { log }: LogContext): number | undefined {
  const bath = String(row.cells.bath ?? "");
  const later = rowsOfBath(log, "additions", bath)
    .map(rowFacts)
    .filter((addition) => addition.text("purpose") !== "opening")
    .flatMap((addition) => addition.number("when") ?? []);
  const others = (["benchTests", "readings", "loads", "care"] as const).flatMap((table) =>
    rowsOfBath(log, table, bath).flatMap((one) => (typeof one.cells.when === "number" ? [one.cells.when] : [])),
  );
  return [...later, ...others].reduce<number | undefined>(
    (first, time) => (first === undefined || time < first ? time : first),
    undefined,
  );
}

const spoken = (serial: number): string => fieldTextOf(serial).replace("T", " ");

/** What went in as opening before anything else happened, shifted by as much as the opening is. */
export function openingMoves(correction: Correction, context: LogContext): readonly Move[] {
  const { table, row, filled, changed } = correction;
  const { log } = context;
  const [was, now] = [row.cells.opened, filled.number("opened")];
  if (table !== "baths" || !changed.includes("opened") || typeof was !== "number" || now === undefined) return [];
  const first = firstAfterOpening(correction, context) ?? Number.POSITIVE_INFINITY;
  return rowsOfBath(log, "additions", String(row.cells.bath ?? "")).flatMap((addition): Move[] => {
    const { id, when, purpose, note } = addition.cells;
    if (purpose !== "opening" || typeof when !== "number" || when > first) return [];
    const to = toTheMinute(when + now - was);
    return [
      {
        id: String(id ?? ""),
        from: when,
        to,
        change: {
          table: "additions",
          position: addition.position,
          cells: {
            id: { before: id, after: id },
            when: { before: when, after: to },
            note: {
              before: note,
              after: [note, `moved with the bath's opening, was ${spoken(when)}`]
                .flatMap((part) => part ?? [])
                .join("; "),
            },
          },
        },
      },
    ];
  });
}

export function movedFindings(correction: Correction, context: LogContext): readonly Finding[] {
  const moves = openingMoves(correction, context);
  if (moves.length === 0) return [];
  const said = moves.map(({ id, from, to }) => `${id}, ${shortMoment(from)} to ${shortMoment(to)}`).join("; ");
  return [{ tone: "watch", text: `The opening water and concentrate move along: ${said}.` }];
}
