import { computed, dateInput, helper, keyInput, moneyInput, numberInput, textInput, wordInput } from "./columns.ts";
import type { References, TableDefinition } from "./definition.ts";
import { blankIf, quoted, toTheCent, where } from "./formulas.ts";
import { moneyLimits, priceByVolume, volume, volumeLimits } from "./units-of.ts";
import { stockKinds } from "./words.ts";

const amount = { type: "number", unit: volume, format: "0.000", width: 10 } as const;

/** Lines of this concentrate and kind in the days after the last count, up to this line's day. */
function since(r: References, kind: string): string {
  return `SUMIFS(${r.all("stockMoves", "amount")},${where([
    [r.all("stockMoves", "concentrate"), r.here("concentrate")],
    [r.all("stockMoves", "kind"), quoted(kind)],
    [r.all("stockMoves", "day"), `">"&${r.here("countBefore")}`],
    [r.all("stockMoves", "day"), `"<="&${r.here("day")}`],
  ])})`;
}

export const stockMoves: TableDefinition = {
  id: "stockMoves",
  name: "StockMoves",
  caption: "Counts, receipts and other issues: what went into a bath comes from Additions by itself",
  emptyRows: 1,
  columns: [
    textInput({ id: "id", label: "Line", width: 13, required: true, help: "Running number." }),
    dateInput({ id: "when", label: "Day", width: 12, required: true, help: "A count stands for the end of its day, after what was issued and received on it." }),
    keyInput({ id: "concentrate", label: "Concentrate", width: 13, required: true, from: ["concentrates", "concentrate"], help: "From the Job sheet." }),
    wordInput({ id: "kind", label: "Kind", words: stockKinds, width: 10, required: true, help: "Count: what stands on the shelf. Receipt: what came. Issue: what left it other than into a bath, such as a spill." }),
    numberInput({ id: "amount", label: "Amount", unit: volume, limits: volumeLimits, format: "0.000", width: 10, required: true, help: "Measure opened pails: a pail is not full because it stands there." }),
    { ...moneyInput({ id: "price", label: "Price", width: 10, limits: moneyLimits, help: "Of a receipt." }), unit: priceByVolume },
    textInput({ id: "document", label: "Document", width: 14, help: "Order, delivery note or invoice." }),
    textInput({ id: "lot", label: "Lot", width: 11, help: "From the pack." }),
    textInput({ id: "initials", label: "Initials", width: 10, help: "Who counted or received." }),
    textInput({ id: "note", label: "Note", width: 26, help: "Anything odd." }),
    computed({ id: "book", label: "By the book", ...amount, help: "Last count before, with receipts, less issues and additions up to the end of this day. Blank on a first count: it is the opening stock." },
      (r) => blankIf([`${r.here("day")}=""`, `${r.here("concentrate")}=""`, `AND(${r.here("kind")}="count",${r.here("countBefore")}=0)`],
        `SUMIFS(${r.all("stockMoves", "amount")},${where([
          [r.all("stockMoves", "concentrate"), r.here("concentrate")],
          [r.all("stockMoves", "kind"), quoted("count")],
          [r.all("stockMoves", "day"), r.here("countBefore")],
        ])})+${since(r, "receipt")}-${since(r, "issue")}-SUMIFS(${r.all("additions", "amount")},${where([
          [r.all("additions", "concentrate"), r.here("concentrate")],
          [r.all("additions", "day"), `">"&${r.here("countBefore")}`],
          [r.all("additions", "day"), `"<="&${r.here("day")}`],
        ])})`)),
    computed({ id: "variance", label: "Variance", ...amount, help: "Count less book: negative where some is missing." },
      (r) => blankIf([`${r.here("kind")}<>"count"`, `${r.here("book")}=""`, `NOT(ISNUMBER(${r.here("amount")}))`], `ROUND(${r.here("amount")}-${r.here("book")},6)`)),
    computed({ id: "value", label: "Value", type: "money", format: "#,##0.00", width: 10, help: "Of a receipt: amount by price." },
      (r) => blankIf([`${r.here("kind")}<>"receipt"`, `NOT(ISNUMBER(${r.here("amount")}))`, `NOT(ISNUMBER(${r.here("price")}))`], toTheCent(`${r.here("amount")}*${r.here("price")}`))),
    helper({ id: "day", label: "Day number", type: "whole number", format: "0", width: 9, help: "The day without its time." },
      (r) => blankIf([`NOT(ISNUMBER(${r.here("when")}))`], `INT(${r.here("when")})`)),
    helper({ id: "countBefore", label: "Count before", type: "whole number", format: "0", width: 9, help: "Day of the concentrate's last count before this day; 0 if none." },
      (r) => blankIf([`${r.here("day")}=""`], `MAXIFS(${r.all("stockMoves", "day")},${where([
        [r.all("stockMoves", "concentrate"), r.here("concentrate")],
        [r.all("stockMoves", "kind"), quoted("count")],
        [r.all("stockMoves", "day"), `"<"&${r.here("day")}`],
      ])})`)),
  ],
  signals: [{ column: "variance", when: { isNot: 0 }, look: "watch" }],
};
