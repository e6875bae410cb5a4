import { missingShares } from "../../advice/share-rows.ts";
import type { UnitSystem } from "../../core/units/unit-system.ts";
import type { NewRow } from "../../joblog/model/definition.ts";
import type { Cells } from "../../joblog/model/definition.ts";
import type { AnyRow, LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import { nextIds } from "../record/next-id.ts";
import type { AdoptAnswers } from "./adopt-answers.ts";
import { rowReader } from "./adopt-row.ts";
import type { SheetTable } from "./sheet-table.ts";

/** A row of the sheet that cannot be taken, and every reason. */
interface ListedRow {
  readonly number: number;
  readonly why: readonly string[];
}

interface TakenRow {
  readonly number: number;
  readonly cells: Cells;
}

type NewName = Extract<NewRow, { readonly table: "claims" | "baths" }>;

/** What adopting would do: every row of the sheet is either taken or listed. */
export interface Adoption {
  readonly taken: readonly TakenRow[];
  readonly listed: readonly ListedRow[];
  /** Claims and baths that the log gets first. */
  readonly before: readonly NewName[];
  /** Rows in Shares of claims that come into a bath by the taken loads. */
  readonly shares: ReturnType<typeof missingShares>;
}

const minute = 1 / 1440;

/** The same event is in the log already where bath or claim, moment and everything else taken agree. */
function isInLog(cells: Cells, table: AdoptAnswers["table"], log: LogSnapshot): boolean {
  const keys = Object.keys(cells).filter((key) => cells[key] !== undefined && key !== "id" && key !== "note");
  const rows: readonly AnyRow[] = log.rows[table];
  return rows.some((row) =>
    keys.every((key) => {
      const [there, here] = [row.cells[key], cells[key]];
      return typeof there === "number" && typeof here === "number"
        ? Math.abs(there - here) < minute / 2
        : there === here;
    }),
  );
}

/** Claims and baths that taken rows name and the log does not hold; a bath opens with its first row. */
function newNames(taken: readonly TakenRow[], { newBath }: AdoptAnswers, log: LogSnapshot): readonly NewName[] {
  const named = (column: "claim" | "bath"): readonly string[] => [
    ...new Set(taken.flatMap(({ cells }) => (cells[column] === undefined ? [] : [String(cells[column])]))),
  ];
  const claims = new Set(log.rows.claims.map(({ cells }) => String(cells.claim)));
  const baths = new Set(log.rows.baths.map(({ cells }) => String(cells.bath)));
  const firstOf = (bath: string): number =>
    Math.min(...taken.filter(({ cells }) => cells.bath === bath).map(({ cells }) => Number(cells.when)));
  return [
    ...named("claim")
      .filter((claim) => !claims.has(claim))
      .map((claim): NewName => ({ table: "claims", row: { claim } })),
    ...named("bath")
      .filter((bath) => !baths.has(bath))
      .map((bath): NewName => ({ table: "baths", row: { bath, ...newBath, opened: firstOf(bath) } })),
  ];
}

/**
 * Reads every row of the sheet by the person's answers. `now` is an Excel serial number: what is still to
 * come is listed. Nothing is guessed and nothing put right: a row with a cell that cannot be read is listed with all that is wrong.
 */
export function adoptRows(
  sheet: SheetTable,
  answers: AdoptAnswers,
  log: LogSnapshot,
  system: UnitSystem,
  now: number,
): Adoption {
  const read = rowReader(sheet, answers, log, system, now);
  const taken: TakenRow[] = [];
  const listed: ListedRow[] = [];
  const tags = new Set(log.rows[answers.table].map(({ cells }) => String(cells.id)));
  for (const row of sheet.rows) {
    const { cells, why } = read(row);
    const tag = cells.id;
    if (why.length > 0) listed.push({ number: row.number, why });
    else if (isInLog(cells, answers.table, log)) listed.push({ number: row.number, why: ["is in the log already"] });
    else if (tag !== undefined && tags.has(String(tag)))
      listed.push({ number: row.number, why: [`the tag ${String(tag)} is in use already`] });
    else {
      if (tag !== undefined) tags.add(String(tag));
      taken.push({ number: row.number, cells });
    }
  }
  const unnumbered = taken.filter(({ cells }) => cells.id === undefined);
  // Tags of the sheet are numbers that are taken, too.
  const tagged = taken.filter(({ cells }) => cells.id !== undefined).map(({ cells }) => ({ position: 0, cells }));
  const rows = { ...log.rows, [answers.table]: [...log.rows[answers.table], ...tagged] };
  const ids = nextIds({ ...log, rows }, answers.table, unnumbered.length);
  const idOf = new Map(unnumbered.map(({ number }, index) => [number, ids[index]]));
  return {
    taken: taken.map(({ number, cells }) => ({ number, cells: { ...cells, id: cells.id ?? idOf.get(number) } })),
    listed,
    before: newNames(taken, answers, log),
    shares: answers.table === "loads" ? missingShares(log, taken) : [],
  };
}
