import { computed, keyInput, numberInput } from "./columns.ts";
import type { References, TableDefinition } from "./definition.ts";
import { blankIf, quoted, where } from "./formulas.ts";
import { between, days, volume, volumeLimits } from "./units-of.ts";

const amount = { type: "number", unit: volume, format: "0.000" } as const;

function moved(r: References, kind: string, day: string): string {
  return `SUMIFS(${r.all("stockMoves", "amount")},${where([
    [r.all("stockMoves", "concentrate"), r.here("concentrate")],
    [r.all("stockMoves", "kind"), quoted(kind)],
    [r.all("stockMoves", "day"), day],
  ])})`;
}

/** The k-th lowest day's issue is the highest of those that have fewer than k below them. */
function kthLowestIssue(r: References, k: string): string {
  return `MAXIFS(${r.all("additions", "dayIssue")},${where([
    [r.all("additions", "concentrate"), r.here("concentrate")],
    [r.all("additions", "daysBelow"), `"<"&${k}`],
  ])})`;
}

const afterCount = (r: References): string => `">"&${r.here("lastCount")}`;

export const stockBalance: TableDefinition = {
  id: "stockBalance",
  name: "StockBalance",
  caption: "Stock of each concentrate",
  emptyRows: 3,
  columns: [
    keyInput({ id: "concentrate", label: "Concentrate", width: 13, required: true, from: ["concentrates", "concentrate"], help: "Every concentrate in use, once." }),
    numberInput({ id: "leadDays", label: "Delivery takes", unit: days, limits: between(1, 365), format: "0", width: 12, help: "Working days from order to shelf." }),
    numberInput({ id: "safety", label: "Safety stock", unit: volume, limits: volumeLimits, format: "0.0##", width: 13, help: "What must never be gone." }),
    computed({ id: "lastCount", label: "Last count", type: "date", width: 10, help: "Day of the last count; blank if never counted." },
      (r) => {
        const last = `MAXIFS(${r.all("stockMoves", "day")},${where([[r.all("stockMoves", "concentrate"), r.here("concentrate")], [r.all("stockMoves", "kind"), quoted("count")]])})`;
        return blankIf([`${r.here("concentrate")}=""`], `IF(${last}=0,"",${last})`);
      }),
    computed({ id: "counted", label: "Counted", ...amount, width: 10, help: "What stood there then." },
      (r) => blankIf([`${r.here("lastCount")}=""`], moved(r, "count", r.here("lastCount")))),
    computed({ id: "received", label: "Received since", ...amount, width: 10, help: "Receipts of later days." },
      (r) => blankIf([`${r.here("lastCount")}=""`], moved(r, "receipt", afterCount(r)))),
    computed({ id: "used", label: "Used since", ...amount, width: 14, help: "Additions of later days and other issues." },
      (r) => blankIf([`${r.here("lastCount")}=""`],
        `${moved(r, "issue", afterCount(r))}+SUMIFS(${r.all("additions", "amount")},${where([[r.all("additions", "concentrate"), r.here("concentrate")], [r.all("additions", "day"), afterCount(r)]])})`)),
    computed({ id: "book", label: "By the book", ...amount, width: 11, help: "Counted, and received, less used." },
      (r) => blankIf([`${r.here("counted")}=""`], `${r.here("counted")}+${r.here("received")}-${r.here("used")}`)),
    computed({ id: "dailyUse", label: "Daily use", ...amount, width: 10, help: "Median of the days on which some went into a bath." },
      (r) => {
        const issueDays = `COUNTIFS(${where([[r.all("additions", "concentrate"), r.here("concentrate")], [r.all("additions", "dayIssue"), quoted(">0")]])})`;
        return blankIf([`${r.here("concentrate")}=""`],
          `IF(${issueDays}=0,"",(${kthLowestIssue(r, `INT((${issueDays}+1)/2)`)}+${kthLowestIssue(r, `(INT(${issueDays}/2)+1)`)})/2)`);
      }),
    computed({ id: "daysLeft", label: "Lasts", type: "number", unit: days, format: "0.0", width: 26, help: "Book by the daily use: days of use, not of the calendar." },
      (r) => blankIf([`${r.here("book")}=""`, `${r.here("dailyUse")}=""`], `BATH.STOCKDAYS(MAX(0,${r.here("book")}),${r.here("dailyUse")})`)),
    computed({ id: "reorderAt", label: "Reorder at", ...amount, width: 10, help: "Daily use for as many days as delivery takes, and the safety stock." },
      (r) => blankIf([`${r.here("dailyUse")}=""`, `NOT(ISNUMBER(${r.here("leadDays")}))`], `BATH.REORDERPOINT(${r.here("dailyUse")},${r.here("leadDays")},${r.here("safety")})`)),
    computed({ id: "reorder", label: "Reorder", type: "text", width: 10, help: "Whether the book has come down to it." },
      (r) => blankIf([`${r.here("book")}=""`, `${r.here("reorderAt")}=""`], `IF(${r.here("book")}<=${r.here("reorderAt")},"reorder","enough")`)),
  ],
  signals: [
    { column: "reorder", when: { is: "reorder" }, look: "act" },
    { column: "reorder", when: { is: "enough" }, look: "good" },
  ],
};
