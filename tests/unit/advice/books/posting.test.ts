import { beforeAll, describe, expect, it } from "vitest";

import { closedOn } from "../../../../src/advice/books/closed-months.ts";
import { journalCsv } from "../../../../src/advice/books/journal-csv.ts";
import { closingLine, closingOf } from "../../../../src/advice/books/month-closing.ts";
import {
  bathPosting,
  inCents,
  type JournalLine,
  otherPosting,
  type Posting,
  reversalOf,
  standingPostings,
} from "../../../../src/advice/books/posting.ts";
import type { LogContent, LogRow } from "../../../../src/joblog/model/definition.ts";
import type { LogSnapshot } from "../../../../src/joblog/model/log-snapshot.ts";
import { moment } from "../../../demo/demo-week-times.ts";
import { workedOut } from "../../joblog/evaluate/worked-out.ts";
import { weekBaths, weekCostLines } from "../../joblog/sheets/demo-week-facts.ts";
import { weekWith } from "../../joblog/sheets/week-of-sheets.ts";

const shared = "B-T1-0301";
const poster = { initials: "QH", now: "2027-03-09T16:00" };

const ledger: readonly LogRow<"ledger">[] = [
  { use: "claims", code: "1200", name: "Work in process" },
  { use: "shop", code: "6900", name: "Rework" },
  { use: "concentrate", code: "1310", name: "Concentrate" },
];

/** The week with its first bath changed out. */
const closedWeek = (rows: LogContent["rows"] = {}): Promise<LogSnapshot> =>
  workedOut(
    weekWith(
      {},
      { baths: weekBaths.map((bath) => ({ ...bath, closed: bath.closed ?? moment(5, "12:00") })), ledger, ...rows },
    ),
  );

function linesOf(posting: Posting): readonly JournalLine[] {
  if ("refused" in posting) throw new Error(posting.refused);
  return posting.lines;
}

const whyNot = (posting: Posting): string => ("refused" in posting ? posting.refused : "");

const side = (lines: readonly JournalLine[], of: "debit" | "credit"): number =>
  lines.reduce((sum, line) => sum + inCents(Number(line[of] ?? 0)), 0);

let log: LogSnapshot;
let posted: readonly JournalLine[];

beforeAll(async () => {
  log = await closedWeek();
  posted = linesOf(bathPosting(log, shared, poster));
});

describe("posting a bath", () => {
  it("charges each claim its share and the shop its own, and takes them from where they came", () => {
    const charged = posted.filter(({ use }) => use === "claims" || use === "shop");
    expect(charged.map(({ claim, debit }) => [claim, debit])).toEqual([
      ["D-0427", 210.54],
      ["D-0431", 193],
      ["D-0436", 175.45],
      [undefined, 107.21],
    ]);
    // Of the week's books: 116.15 + 88.40 + 26.41 of concentrate; the rest are its cost lines.
    expect(posted.find(({ use }) => use === "concentrate")).toMatchObject({ credit: 230.96, code: "1310" });
    expect([side(posted, "debit"), side(posted, "credit")]).toEqual([68620, 68620]);
    expect(new Set(posted.map(({ posting, month, postedBy }) => [posting, month, postedBy].join()))).toEqual(
      new Set(["P001,2027-03,QH"]),
    );
  });

  it("puts a credit on the other side, never below zero", async () => {
    const credit: LogRow<"costLines"> = {
      id: "C30",
      bath: shared,
      what: "Credit note",
      amount: -700,
      account: "claims",
      kind: "supplies",
    };
    const lines = linesOf(bathPosting(await closedWeek({ costLines: [...weekCostLines, credit] }), shared, poster));
    expect(lines.every(({ debit, credit: given }) => Number(debit ?? given) > 0)).toBe(true);
    expect(lines.filter(({ use }) => use === "claims").every(({ credit: given }) => given !== undefined)).toBe(true);
    expect(side(lines, "debit")).toBe(side(lines, "credit"));
  });

  it("waits until the bath is changed out and its cost is placed", async () => {
    const open = await workedOut(weekWith({}, { baths: weekBaths.map((bath) => ({ ...bath, closed: undefined })) }));
    expect(whyNot(bathPosting(open, shared, poster))).toMatch(/still open/);
    const gap = await closedWeek({
      costLines: [...weekCostLines, { id: "C31", bath: shared, what: "Labor", amount: 5 }],
    });
    expect(whyNot(bathPosting(gap, shared, poster))).toMatch(/provisional: cost line C31: account missing/);
  });

  it("is refused a second time until it was reversed, and what changed since is told", async () => {
    const journal = [...posted];
    const again = await closedWeek({ journal });
    expect(standingPostings(again, shared)).toEqual(["P001"]);
    expect(whyNot(bathPosting(again, shared, poster))).toMatch(/posted as P001. Reverse that posting/);
    const later = await closedWeek({
      journal,
      costLines: [...weekCostLines, { id: "C32", bath: shared, what: "Late invoice", amount: 33, account: "claims" }],
    });
    const [bath] = later.rows.baths;
    expect([bath?.cells.posted, bath?.cells.postedOff]).toEqual([686.2, 33]);
    // D-0436 has 10 of 33 baskets.
    expect([later.fields.statementPosted, later.fields.statementOff]).toEqual([175.45, 10]);
    const reversed = await closedWeek({
      journal: [...posted, ...linesOf(reversalOf(again, "P001", "late invoice", poster))],
    });
    expect(standingPostings(reversed, shared)).toEqual([]);
    expect(reversed.rows.baths[0]?.cells.posted).toBe(0);
    expect(linesOf(bathPosting(reversed, shared, poster))[0]?.posting).toBe("P003");
    expect(reversed.fields.journalDifference).toBe(0);
  });
});

describe("a reversal", () => {
  it("changes sides and keeps the reason; without one, twice, or of a reversal it is refused", async () => {
    const again = await closedWeek({ journal: [...posted] });
    expect(whyNot(reversalOf(again, "P001", " ", poster))).toMatch(/Say why/);
    expect(whyNot(reversalOf(again, "P009", "slip", poster))).toMatch(/no posting P009/);
    const lines = linesOf(reversalOf(again, "P001", "slip", poster));
    expect(lines.map(({ debit, credit }) => [debit, credit])).toEqual(
      posted.map(({ debit, credit }) => [credit, debit]),
    );
    expect(lines[0]).toMatchObject({ posting: "P002", reverses: "P001", why: "slip" });
    const twice = await closedWeek({ journal: [...posted, ...lines] });
    expect(whyNot(reversalOf(twice, "P001", "again", poster))).toMatch(/reversed already/);
    expect(whyNot(reversalOf(twice, "P002", "again", poster))).toMatch(/itself a reversal/);
  });
});

describe("costs of no bath", () => {
  it("are posted to the claim that pays alone and to the shop", async () => {
    const none = await closedWeek({
      costLines: [
        { id: "C1", what: "Pick-up", amount: 60, account: "claims", claim: "D-0431", kind: "labor" },
        { id: "C2", what: "Broken lid", amount: 25, account: "shop" },
      ],
    });
    const lines = linesOf(otherPosting(none, poster));
    expect(lines.map(({ use, claim, debit, credit }) => [use, claim, debit, credit])).toEqual([
      ["claims", "D-0431", 60, undefined],
      ["shop", undefined, 25, undefined],
      ["labor", undefined, undefined, 60],
      ["other", undefined, undefined, 25],
    ]);
  });
});

describe("the journal as a file", () => {
  it("has a header that stays, dates and money that a machine reads, and quotes where RFC 4180 wants them", async () => {
    const journal = [
      { ...posted[0], text: 'labor, "curd"' },
      { ...posted[3], text: "=HYPERLINK(1)" },
    ];
    const [header, first, second, end] = journalCsv(await closedWeek({ journal })).split("\r\n");
    expect(header).toBe(
      "posting,date,month,document,code,accountName,use,claim,bath,text,quantity,unit,debit,credit,postedBy,postedAt,reverses,why",
    );
    expect(first).toBe(
      'P001,2027-03-09,2027-03,B-T1-0301,1200,Work in process,claims,D-0427,B-T1-0301,"labor, ""curd""",12,baskets,210.54,,QH,2027-03-09T16:00,,',
    );
    expect(second).toContain(",'=HYPERLINK(1),");
    expect(end).toBe("");
  });
});

describe("a closed month", () => {
  it("takes no entry until it is reopened", async () => {
    const closing = closingOf(log, "2027-03", poster);
    if ("refused" in closing) throw new Error(closing.refused);
    const closed = await closedWeek({ closedMonths: [closing.row] });
    expect(closedOn(closed, moment(4, "10:00"))).toMatch(/^2027-03 is closed for the books/);
    expect(closedOn(closed, moment(-1, "10:00"))).toBeUndefined();
    expect(closingOf(closed, "2027-03", poster)).toEqual({ refused: "2027-03 is closed already." });
    expect(closingLine(closed, "2027-03")?.position).toBe(0);
    const reopened = await closedWeek({
      closedMonths: [{ ...closing.row, reopenedAt: moment(8, "09:00"), why: "late invoice" }],
    });
    expect(closedOn(reopened, moment(4, "10:00"))).toBeUndefined();
  });

  it.each([
    ["2027-13", "is no month"],
    ["March", "is no month"],
    ["2027-04", "is still to come"],
  ])("is not %s: it %s", (month, why) => {
    expect(closingOf(log, month, poster)).toMatchObject({ refused: expect.stringContaining(why) as string });
  });
});
