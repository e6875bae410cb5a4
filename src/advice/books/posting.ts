import type { LogRow, RowValue } from "../../joblog/model/definition.ts";
import type { LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import { isSameText } from "../../joblog/model/same-text.ts";
import { costKinds, costStanding, type ledgerUses } from "../../joblog/model/words.ts";
import { findRow, rowFacts } from "../bath-facts.ts";
import { money } from "../wording/figures.ts";
import { serialOf } from "../wording/moments.ts";

export type JournalLine = LogRow<"journal">;

/** Lines that balance, or why there are none. */
export type Posting = { readonly lines: readonly JournalLine[] } | { readonly refused: string };

/** Who posts, and when by the clock of the pane. */
export interface Poster {
  readonly initials: string;
  readonly now: string;
}

type Use = (typeof ledgerUses)[number];

interface Amount {
  readonly use: Use;
  readonly cents: number;
  readonly text: string;
  readonly claim?: string;
  readonly quantity?: number | undefined;
  readonly unit?: string | undefined;
}

export const inCents = (amount: number): number => Math.round(Number((amount * 100).toPrecision(15)));

const numbered = /^P(\d{1,9})$/;

function nextPosting({ rows }: LogSnapshot): string {
  const highest = Math.max(
    0,
    ...rows.journal.map(({ cells }) => Number(numbered.exec(String(cells.posting ?? ""))?.[1] ?? 0)),
  );
  return `P${String(highest + 1).padStart(3, "0")}`;
}

/** A credit or a negative cost changes sides, so that no column holds anything below zero. */
function sides(cents: number, charged: boolean): Pick<JournalLine, "debit" | "credit"> {
  const side = cents >= 0 === charged ? "debit" : "credit";
  return { [side]: Math.abs(cents) / 100 };
}

const isCharged = (use: Use): boolean => use === "claims" || use === "shop";

function linesOf(
  log: LogSnapshot,
  amounts: readonly Amount[],
  { initials, now }: Poster,
  about: Pick<JournalLine, "bath" | "document">,
): readonly JournalLine[] {
  const date = Math.floor(serialOf(now) ?? 0);
  return amounts
    .filter(({ cents }) => cents !== 0)
    .map(({ use, cents, text, claim, quantity, unit }) => {
      const account = log.rows.ledger.find(({ cells }) => cells.use === use)?.cells;
      return {
        posting: nextPosting(log),
        date,
        month: now.slice(0, 7),
        ...about,
        code: account?.code,
        accountName: account?.name,
        use,
        claim,
        text,
        quantity,
        unit,
        ...sides(cents, isCharged(use)),
        postedBy: initials,
        postedAt: serialOf(now),
      };
    });
}

/** What of a posting still stands: its lines less those that reverse it. */
export function standingPostings(log: LogSnapshot, bath: string | undefined): readonly string[] {
  const lines = log.rows.journal.map(({ cells }) => cells);
  const reversed = new Set(lines.flatMap(({ reverses }) => (reverses === undefined ? [] : [String(reverses)])));
  const its = log.rows.journal
    .filter(isOf(bath))
    .map(({ cells }) => cells)
    .filter(({ reverses }) => reverses === undefined);
  return [...new Set(its.map(({ posting }) => String(posting ?? "")))].filter((posting) => !reversed.has(posting));
}

const isOf =
  (bath: string | undefined) =>
  ({ cells }: { readonly cells: { readonly bath?: RowValue | undefined } }): boolean =>
    bath === undefined ? cells.bath === undefined : isSameText(String(cells.bath ?? ""), bath);

const sumOf = (amounts: readonly Amount[]): number => amounts.reduce((sum, { cents }) => sum + cents, 0);

/** Where the cost of a bath comes from, or of what is on none. */
function sources(log: LogSnapshot, bath: string | undefined): readonly Amount[] {
  const additions = log.rows.additions.filter(isOf(bath)).map(rowFacts);
  const lines = log.rows.costLines.filter(isOf(bath)).map(rowFacts);
  const poured = (["concentrate", "water"] as const).map((use): Amount => {
    const its = additions.filter((row) => row.text("kind") === use && row.number("cost") !== undefined);
    return {
      use,
      cents: its.reduce((sum, row) => sum + inCents(row.number("cost") ?? 0), 0),
      text: `${use} added`,
      quantity: its.length === 0 ? undefined : its.reduce((sum, row) => sum + (row.number("amount") ?? 0), 0),
    };
  });
  const kinds = costKinds.map((kind): Amount => {
    const its = lines.filter((row) => (costKinds.find((one) => one === row.text("kind")) ?? "other") === kind);
    return {
      use: kind,
      cents: its.reduce((sum, row) => sum + inCents(row.number("amount") ?? 0), 0),
      text: its.map((row) => row.text("what") ?? "").join("; "),
    };
  });
  const [concentrate, water] = poured;
  const waterLines = kinds.filter(({ use }) => use === "water");
  const others = kinds.filter(({ use }) => use !== "water");
  return [
    ...(concentrate === undefined ? [] : [concentrate]),
    ...(water === undefined ? [] : [{ ...water, cents: water.cents + sumOf(waterLines) }]),
    ...others,
  ];
}

/** What claims pay alone, line by line. */
function paidAlone(log: LogSnapshot, bath: string | undefined): readonly Amount[] {
  return log.rows.costLines
    .filter(isOf(bath))
    .map(rowFacts)
    .filter((line) => line.number("alone") !== undefined)
    .map((line) => ({
      use: "claims",
      cents: inCents(line.number("alone") ?? 0),
      text: line.text("what") ?? "",
      claim: line.text("claim") ?? "",
    }));
}

function balanced(
  log: LogSnapshot,
  charged: readonly Amount[],
  poster: Poster,
  what: string,
  about: Pick<JournalLine, "bath" | "document">,
): Posting {
  const from = sources(log, about.bath === undefined ? undefined : String(about.bath));
  if (sumOf(charged) !== sumOf(from))
    return {
      refused: `What is charged for ${what}, ${money(sumOf(charged) / 100)}, is not what it cost, ${money(sumOf(from) / 100)}. Look at the sheets Costs and Additions.`,
    };
  const lines = linesOf(log, [...charged, ...from], poster, about);
  return lines.length === 0 ? { refused: `There is nothing to post: ${what} cost nothing.` } : { lines };
}

/** A bath that was changed out, its cost placed to the cent: what each claim and the shop pay, and where it comes from. */
export function bathPosting(log: LogSnapshot, bath: string, poster: Poster): Posting {
  const row = findRow(log, "baths", "bath", bath);
  if (row === undefined) return { refused: `Bath ${bath} is not in the log.` };
  const facts = rowFacts(row);
  const [stands] = standingPostings(log, bath);
  if (facts.number("closed") === undefined)
    return { refused: `Bath ${bath} is still open: its cost can grow. Record the change-out first.` };
  if (facts.text("costState") !== costStanding.placed)
    return {
      refused: `The cost of bath ${bath} is not placed to the cent: ${facts.text("costState") ?? "it has none"}.`,
    };
  if (stands !== undefined)
    return { refused: `Bath ${bath} was posted as ${stands}. Reverse that posting before posting again.` };
  const shares = log.rows.shares
    .filter(isOf(bath))
    .map(rowFacts)
    .map((share): Amount => ({
      use: "claims",
      cents: inCents(share.number("share") ?? 0),
      text: `share of bath ${bath}`,
      claim: share.text("claim") ?? "",
      quantity: share.number("unitsUsed"),
      unit: share.text("basis"),
    }));
  const shop: Amount = {
    use: "shop",
    cents: inCents(facts.number("costShop") ?? 0),
    text: `the shop's part of bath ${bath}`,
  };
  return balanced(log, [...shares, ...paidAlone(log, bath), shop], poster, `bath ${bath}`, { bath, document: bath });
}

/** Cost lines that belong to no bath: a claim's alone, and the shop's. */
export function otherPosting(log: LogSnapshot, poster: Poster): Posting {
  const [stands] = standingPostings(log, undefined);
  if (stands !== undefined)
    return { refused: `Costs of no bath were posted as ${stands}. Reverse that posting before posting them again.` };
  const lines = log.rows.costLines.filter(isOf(undefined)).map(rowFacts);
  const open = lines.find((line) => line.text("check") !== undefined);
  if (open !== undefined)
    return { refused: `Cost line ${open.text("id") ?? ""} is not charged to anyone: ${open.text("check") ?? ""}.` };
  const shop: Amount = {
    use: "shop",
    cents: lines
      .filter((line) => line.text("account") === "shop")
      .reduce((sum, line) => sum + inCents(line.number("amount") ?? 0), 0),
    text: "the shop's costs of no bath",
  };
  return balanced(log, [...paidAlone(log, undefined), shop], poster, "what is on no bath", { document: "no bath" });
}

/** Counter lines of a posting: what was debited is credited, with the reason. */
export function reversalOf(log: LogSnapshot, posting: string, why: string, { initials, now }: Poster): Posting {
  const lines = log.rows.journal.map(({ cells }) => cells).filter((line) => line.posting === posting);
  if (lines.length === 0) return { refused: `The journal has no posting ${posting}.` };
  if (log.rows.journal.some(({ cells }) => cells.reverses === posting))
    return { refused: `Posting ${posting} was reversed already.` };
  if (lines.some(({ reverses }) => reverses !== undefined))
    return { refused: `Posting ${posting} is itself a reversal.` };
  if (why.trim() === "") return { refused: "Say why it is reversed: the journal keeps the reason." };
  return {
    lines: lines.map(({ debit, credit, ...line }) => ({
      ...line,
      posting: nextPosting(log),
      date: Math.floor(serialOf(now) ?? 0),
      month: now.slice(0, 7),
      document: posting,
      debit: credit,
      credit: debit,
      postedBy: initials,
      postedAt: serialOf(now),
      reverses: posting,
      why: why.trim(),
    })),
  };
}
