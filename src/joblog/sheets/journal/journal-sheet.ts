import { minus, rounded, sum } from "../../formula/arithmetic.ts";
import type { SheetDefinition } from "../../model/definition.ts";
import { closedMonthsTable } from "./closed-months-table.ts";
import { journalTable } from "./journal-table.ts";

export const journalSheet: SheetDefinition = {
  id: "journal",
  name: "Journal",
  title: "Journal",
  purpose: "What was handed to the books: values that no later entry changes. The pane posts, reverses and exports it.",
  caution:
    "Do not type over a posted line: reverse the posting in the pane, say why, and post again. The shop's own books and its accountant decide what is booked how.",
  fields: [
    {
      id: "journalDebit",
      name: "Journal.Debit",
      label: "Debit in all",
      type: "money",
      help: "Sum of the debits.",
      formula: ({ journal }) => rounded(sum(journal.debit), 2),
    },
    {
      id: "journalCredit",
      name: "Journal.Credit",
      label: "Credit in all",
      type: "money",
      help: "Sum of the credits.",
      formula: ({ journal }) => rounded(sum(journal.credit), 2),
    },
    {
      id: "journalDifference",
      name: "Journal.Difference",
      label: "Difference, must be 0.00",
      type: "money",
      help: "Anything else means that a posted line was changed or deleted.",
      formula: ({ named }) => rounded(minus(named.journalDebit, named.journalCredit), 2),
      signals: [{ when: { isNot: 0 }, look: "act" }],
    },
  ],
  tables: [closedMonthsTable, journalTable],
  arrangement: "stacked",
  tabColor: "#6B6B6B",
  pagesWide: 2,
  orientation: "landscape",
};
