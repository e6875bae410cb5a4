import { missingShares } from "../../advice/share-rows.ts";
import { fieldTextOf } from "../../advice/wording/moments.ts";
import { unclearNumber } from "../../core/units/unclear-number.ts";
import type { UnitSystem } from "../../core/units/unit-system.ts";
import type { NewRow } from "../../joblog/model/definition.ts";
import type { Cells } from "../../joblog/model/definition.ts";
import type { AnyRow, LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import { folded } from "../../joblog/model/same-text.ts";
import { nextIds } from "../record/next-id.ts";
import type { AdoptAnswers } from "./adopt-answers.ts";
import { ownKeys } from "./adopt-kinds.ts";
import { rowReader } from "./adopt-row.ts";
import { type Doubt, type DoubtAnswers, type DoubtKind, doubtKinds } from "./doubt-kinds.ts";
import { filledDown } from "./fill-down.ts";
import { neighborsOf } from "./neighbors.ts";
import { judgeRow, withRows } from "./row-doubts.ts";
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

type NewName = Extract<NewRow, { readonly table: "claims" | "baths" | "stockBalance" }>;

/** One kind of doubt, with all the rows that it is about. */
export interface AskedDoubt {
  readonly kind: DoubtKind;
  readonly rows: readonly { readonly number: number; readonly text: string }[];
}

/** What adopting would do: every row of the sheet is either taken or listed. */
export interface Adoption {
  readonly taken: readonly TakenRow[];
  readonly listed: readonly ListedRow[];
  /** What the person is asked, once for each kind, answered or not. */
  readonly asked: readonly AskedDoubt[];
  /** Claims, baths and lines of the stock balance that the log gets first. */
  readonly before: readonly NewName[];
  /** Rows in Shares of claims that come into a bath by the taken loads. */
  readonly shares: ReturnType<typeof missingShares>;
}

/** A row of the sheet as it was read and judged, before anybody was asked. */
export interface JudgedRow extends TakenRow {
  readonly why: readonly string[];
  readonly doubts: readonly Doubt[];
}

const minute = 1 / 1440;

function alike(here: Cells, there: Cells): boolean {
  const keys = Object.keys(here).filter((key) => here[key] !== undefined && key !== "id" && key !== "note");
  return keys.every((key) => {
    const [a, b] = [here[key], there[key]];
    return typeof a === "number" && typeof b === "number" ? Math.abs(a - b) < minute / 2 : a === b;
  });
}

/** The same event is in the log already where bath or claim, moment and everything else taken agree. */
function isInLog(cells: Cells, table: AdoptAnswers["table"], log: LogSnapshot): boolean {
  const rows: readonly AnyRow[] = log.rows[table];
  return rows.some((row) => alike(cells, row.cells));
}

/** Claims and baths that taken rows name and the log does not hold; a bath opens with its first row. */
function newNames(taken: readonly TakenRow[], { newBath, table }: AdoptAnswers, log: LogSnapshot): readonly NewName[] {
  const named = (column: "claim" | "bath" | "concentrate"): readonly string[] => [
    ...new Set(taken.flatMap(({ cells }) => (cells[column] === undefined ? [] : [String(cells[column])]))),
  ];
  const claims = new Set(log.rows.claims.map(({ cells }) => String(cells.claim)));
  const baths = new Set(log.rows.baths.map(({ cells }) => String(cells.bath)));
  const firstOf = (bath: string): number =>
    Math.min(...taken.filter(({ cells }) => cells.bath === bath).map(({ cells }) => Number(cells.when)));
  const balanced = new Set(log.rows.stockBalance.map(({ cells }) => folded(String(cells.concentrate))));
  if (table === "claims" || table === "baths") return [];
  if (table === "stockMoves")
    return named("concentrate")
      .filter((concentrate) => !balanced.has(folded(concentrate)))
      .map((concentrate): NewName => ({ table: "stockBalance", row: { concentrate } }));
  return [
    ...named("claim")
      .filter((claim) => !claims.has(claim))
      .map((claim): NewName => ({ table: "claims", row: { claim } })),
    ...named("bath")
      .filter((bath) => !baths.has(bath))
      .map((bath): NewName => ({ table: "baths", row: { bath, ...newBath, opened: firstOf(bath) } })),
  ];
}

/** Rows alike are one event written down twice, or two: the later ones are asked about. */
function twiceIn(rows: readonly JudgedRow[]): readonly JudgedRow[] {
  const first = new Map<string, number>();
  return rows.map((row) => {
    if (row.why.length > 0 || row.cells["id"] !== undefined) return row;
    const key = JSON.stringify(Object.entries(row.cells).sort(([a], [b]) => (a < b ? -1 : 1)));
    const earlier = first.get(key);
    if (earlier === undefined) {
      first.set(key, row.number);
      return row;
    }
    const doubt: Doubt = { kind: "twice", text: `the same as row ${String(earlier)}` };
    return { ...row, doubts: [...row.doubts, doubt] };
  });
}

/** A reading that is taken although it was asked about, or with its unit, needs no question on the sheet either. */
function readSoIfAsked(cells: Cells, doubts: readonly Doubt[], system: UnitSystem): Cells {
  const { temperature } = cells;
  const isCold = typeof temperature === "number" && unclearNumber("temperature", temperature, system) !== undefined;
  const isAsked = doubts.some(({ kind }) => kind === "jump" || kind === "temperature");
  return isCold || isAsked ? { ...cells, confirmed: "yes" } : cells;
}

/**
 * Reads every row of the sheet by the person's answers and judges it as its form would. `now` is an Excel serial number: what is
 * still to come is refused. Nothing is guessed and nothing put right: a row with a cell that cannot be read has all that is wrong.
 */
export function judgeSheet(
  sheet: SheetTable,
  answers: AdoptAnswers,
  log: LogSnapshot,
  system: UnitSystem,
  now: number,
): readonly JudgedRow[] {
  const { table } = answers;
  const read = rowReader(sheet, answers, log, system, now);
  const rows = filledDown(sheet, answers).rows.flatMap((row) =>
    read(row).map((one) => ({ ...one, number: row.number })),
  );
  const readable = rows.filter(({ why }) => why.length === 0);
  const context = { log, system, bath: undefined, now: fieldTextOf(now) };
  const opened = newNames(readable, answers, log).flatMap((one): readonly Cells[] =>
    one.table === "baths" ? [one.row] : [],
  );
  const withNewBaths = { ...context, log: withRows(log, "baths", opened) };
  const neighbors = neighborsOf(table, readable, context);
  const own = ownKeys[table];
  const logged: readonly AnyRow[] = log.rows[table];
  const keys = new Set(own === undefined ? [] : logged.map(({ cells }) => folded(String(cells[own.id] ?? ""))));
  return twiceIn(
    rows.map((row): JudgedRow => {
      const { number, cells, why, doubts } = row;
      if (why.length > 0) return { number, cells, why, doubts: [] };
      if (isInLog(cells, table, log)) return { number, cells, why: ["is in the log already"], doubts: [] };
      const key = own === undefined ? undefined : cells[own.id];
      if (key !== undefined && keys.has(folded(String(key))))
        return { number, cells, why: [`the ${own?.word ?? ""} ${String(key)} is in use already`], doubts: [] };
      const judged = judgeRow(table, row, { context, withNewBaths, withNeighbors: neighbors(cells) });
      const problems = judged.problems.map(({ message }) => message);
      if (key !== undefined && problems.length === 0) keys.add(folded(String(key)));
      return {
        number,
        cells: table === "readings" ? readSoIfAsked(cells, judged.doubts, system) : cells,
        why: problems,
        doubts: problems.length > 0 ? [] : [...doubts, ...judged.doubts],
      };
    }),
  );
}

/** Rows under the log's next running numbers, where its table has them. */
function numbered(taken: readonly TakenRow[], table: AdoptAnswers["table"], log: LogSnapshot): readonly TakenRow[] {
  if (table === "claims" || table === "baths") return taken;
  const unnumbered = taken.filter(({ cells }) => cells.id === undefined);
  // Tags of the sheet are numbers that are taken, too.
  const tagged = taken.filter(({ cells }) => cells.id !== undefined).map(({ cells }) => ({ position: 0, cells }));
  const rows = { ...log.rows, [table]: [...log.rows[table], ...tagged] };
  const ids = nextIds({ ...log, rows }, table, unnumbered.length);
  const idOf = new Map(unnumbered.map((row, index) => [row, ids[index]]));
  return taken.map((row) => ({ ...row, cells: { ...row.cells, id: row.cells.id ?? idOf.get(row) } }));
}

/** Settles what was asked: a row with a doubt that nobody has answered stays out. */
export function settleRows(
  rows: readonly JudgedRow[],
  answers: AdoptAnswers,
  answered: DoubtAnswers,
  log: LogSnapshot,
): Adoption {
  const taken: TakenRow[] = [];
  const listed: ListedRow[] = [];
  for (const { number, cells, why, doubts } of rows) {
    const open = doubts.filter(({ kind }) => answered[kind] !== "take");
    const reasons = [
      ...why,
      ...open.map(({ kind, text }) => (answered[kind] === "leave out" ? `left out: ${text}` : `asked: ${text}`)),
    ];
    if (reasons.length > 0) listed.push({ number, why: reasons });
    else taken.push({ number, cells });
  }
  const asked = Object.keys(doubtKinds).flatMap((key): readonly AskedDoubt[] => {
    const about = rows.flatMap(({ number, why, doubts }) =>
      why.length > 0 ? [] : doubts.filter(({ kind }) => kind === key).map(({ kind, text }) => ({ kind, number, text })),
    );
    const [first] = about;
    return first === undefined ? [] : [{ kind: first.kind, rows: about.map(({ number, text }) => ({ number, text })) }];
  });
  return {
    taken: numbered(taken, answers.table, log),
    listed,
    asked,
    before: newNames(taken, answers, log),
    shares: answers.table === "loads" ? missingShares(log, taken) : [],
  };
}

/** Every row of the sheet, taken or listed. */
export function adoptRows(
  sheet: SheetTable,
  answers: AdoptAnswers,
  log: LogSnapshot,
  system: UnitSystem,
  now: number,
  answered: DoubtAnswers = {},
): Adoption {
  return settleRows(judgeSheet(sheet, answers, log, system, now), answers, answered, log);
}
