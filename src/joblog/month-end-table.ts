import { computed, dateInput, helper, keyInput } from "./columns.ts";
import type { ComputedColumn, References, TableDefinition } from "./definition.ts";
import { atOrBlank, blankIf, positionOf, quoted, toTheCent, where } from "./formulas.ts";
import { accounts, monthEndWords } from "./words.ts";
import { priceByVolume, volume } from "./units-of.ts";

const amount = { type: "number", unit: volume, format: "0.000", width: 11 } as const;
const money = { type: "money", format: "#,##0.00", width: 11 } as const;

type Span = readonly (readonly [range: string, criterion: string])[];

const first = (r: References): string => `">="&${r.here("from")}`;
const beforeNext = (r: References): string => `"<"&${r.here("until")}`;

/** Days of this month in a column of day numbers. */
function inMonth(r: References, days: string): Span {
  return [[days, first(r)], [days, beforeNext(r)]];
}

function moved(r: References, kind: string, span: Span, sum = "amount"): string {
  return `SUMIFS(${r.all("stockMoves", sum)},${where([
    [r.all("stockMoves", "concentrate"), r.here("concentrate")],
    [r.all("stockMoves", "kind"), quoted(kind)],
    ...span,
  ])})`;
}

function poured(r: References, more: Span, sum = "amount"): string {
  return `SUMIFS(${r.all("additions", sum)},${where([[r.all("additions", "concentrate"), r.here("concentrate")], ...more])})`;
}

/** The last count before a day, with what came and went since: a count stands for the end of its day. */
function bookAt(r: References, count: string, until: string): string {
  const [moves, pours] = [r.all("stockMoves", "day"), r.all("additions", "day")];
  const since = (days: string): Span => [[days, `">"&${r.here(count)}`], [days, `"<"&${r.here(until)}`]];
  return `IF(${r.here(count)}=0,${quoted(monthEndWords.notCounted)},` +
    `${moved(r, "count", [[moves, r.here(count)]])}+${moved(r, "receipt", since(moves))}-${moved(r, "issue", since(moves))}-${poured(r, since(pours))})`;
}

function lastCountBefore(r: References, day: string): string {
  return `MAXIFS(${r.all("stockMoves", "day")},${where([
    [r.all("stockMoves", "concentrate"), r.here("concentrate")],
    [r.all("stockMoves", "kind"), quoted("count")],
    [r.all("stockMoves", "day"), `"<"&${r.here(day)}`],
  ])})`;
}

const incomplete = (r: References): readonly string[] => [`${r.here("from")}=""`, `${r.here("concentrate")}=""`];

function line(column: Parameters<typeof computed>[0], formula: (r: References) => string): ComputedColumn {
  return computed(column, (r) => blankIf(incomplete(r), formula(r)));
}

const [toClaims, toShop] = accounts;
const account = (r: References, name: string): Span => [[r.all("additions", "account"), quoted(name)], ...inMonth(r, r.all("additions", "day"))];

/** What the books need of a month: where the stock went, on whose account, and what the count says against it. */
export const monthEndTable: TableDefinition = {
  id: "monthEnd",
  name: "MonthEnd",
  caption: "Month ends",
  emptyRows: 1,
  columns: [
    keyInput({ id: "concentrate", label: "Concentrate", width: 13, required: true, from: ["concentrates", "concentrate"], help: "One line for each concentrate and month." }),
    dateInput({ id: "month", label: "Month", width: 12, required: true, help: "Any day of the month." }),
    line({ id: "opening", label: "Opening", ...amount, help: "By the book as the month begins, from the last count before it." }, (r) => bookAt(r, "openingCount", "from")),
    line({ id: "received", label: "Received", ...amount, help: "Receipts of the month." }, (r) => moved(r, "receipt", inMonth(r, r.all("stockMoves", "day")))),
    line({ id: "usedForClaims", label: "Used for claims", ...amount, help: "Into baths, on the claims' account." }, (r) => poured(r, account(r, toClaims))),
    line({ id: "usedByShop", label: "Used by the shop", ...amount, help: "Into baths, on the shop's account." }, (r) => poured(r, account(r, toShop))),
    line({ id: "usedForNobody", label: "Used, no account", ...amount, help: "Into baths, with no account given: say under Additions who pays." },
      (r) => `ROUND(${poured(r, inMonth(r, r.all("additions", "day")))}-${r.here("usedForClaims")}-${r.here("usedByShop")},6)`),
    line({ id: "issued", label: "Other issues", ...amount, help: "Left the shelf other than into a bath." }, (r) => moved(r, "issue", inMonth(r, r.all("stockMoves", "day")))),
    line({ id: "difference", label: "Count difference", ...amount, help: "What the month's counts found more, or less where it is negative, than the book." },
      (r) => `IF(OR(NOT(ISNUMBER(${r.here("opening")})),NOT(ISNUMBER(${r.here("closing")}))),"",ROUND(${r.here("closing")}-${r.here("opening")}-${r.here("received")}+${r.here("usedForClaims")}+${r.here("usedByShop")}+${r.here("usedForNobody")}+${r.here("issued")},6))`),
    line({ id: "closing", label: "Closing", ...amount, help: "By the book as the month ends, from its last count." }, (r) => bookAt(r, "closingCount", "until")),
    line({ id: "costForClaims", label: "Cost to claims", ...money, width: 12, help: "What Additions priced on the claims' account." }, (r) => poured(r, account(r, toClaims), "cost")),
    line({ id: "costToShop", label: "Cost to the shop", ...money, help: "What Additions priced on the shop's account." }, (r) => poured(r, account(r, toShop), "cost")),
    line({ id: "closingValue", label: "Closing value", ...money, help: "Closing at the price on the Job sheet, the one that Additions are priced by." },
      (r) => `IF(OR(NOT(ISNUMBER(${r.here("closing")})),${r.here("price")}=""),"",${toTheCent(`${r.here("closing")}*${r.here("price")}`)})`),
    helper({ id: "from", label: "From", type: "whole number", format: "0", width: 9, help: "Number of the month's first day." },
      (r) => blankIf([`NOT(ISNUMBER(${r.here("month")}))`], `DATE(YEAR(${r.here("month")}),MONTH(${r.here("month")}),1)`)),
    helper({ id: "until", label: "Until", type: "whole number", format: "0", width: 9, help: "Number of the next month's first day." },
      (r) => blankIf([`${r.here("from")}=""`], `DATE(YEAR(${r.here("month")}),MONTH(${r.here("month")})+1,1)`)),
    helper({ id: "openingCount", label: "Count before", type: "whole number", format: "0", width: 9, help: "Day of the last count before the month; 0 if none." },
      (r) => blankIf(incomplete(r), lastCountBefore(r, "from"))),
    helper({ id: "closingCount", label: "Last count", type: "whole number", format: "0", width: 9, help: "Day of the last count to the month's end; 0 if none." },
      (r) => blankIf(incomplete(r), lastCountBefore(r, "until"))),
    helper({ id: "price", label: "Price used", type: "number", unit: priceByVolume, format: "0.00##", width: 9, help: "Of the concentrate, by unit of volume." },
      (r) => blankIf(incomplete(r), atOrBlank(r, "concentrates", "unitPrice", positionOf(r, r.here("concentrate"), "concentrates", "concentrate")))),
  ],
  signals: [
    { column: "difference", when: { isNot: 0 }, look: "watch" },
    { column: "usedForNobody", when: { isNot: 0 }, look: "watch" },
    { column: "opening", when: { is: monthEndWords.notCounted }, look: "watch" },
    { column: "closing", when: { is: monthEndWords.notCounted }, look: "watch" },
  ],
};
