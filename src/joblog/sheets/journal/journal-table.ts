import {
  dateInput,
  keyInput,
  momentInput,
  moneyInput,
  numberInput,
  textInput,
  wordInput,
} from "../../model/columns.ts";
import type { TableDefinition } from "../../model/definition.ts";
import { between } from "../../model/units-of.ts";
import { ledgerUses } from "../../model/words.ts";

const either = between(0, 100_000_000);

/** Values that were posted; nothing here is worked out, so that nothing here changes. */
export const journalTable: TableDefinition = {
  id: "journal",
  name: "Journal",
  caption: "Posted lines",
  emptyRows: 1,
  columns: [
    textInput({ id: "posting", label: "Posting", width: 10, required: true, help: "Lines of one posting balance." }),
    dateInput({ id: "date", label: "Date", width: 11, required: true, help: "In the books." }),
    textInput({ id: "month", label: "Month", width: 9, help: "Year and month of the date." }),
    textInput({
      id: "document",
      label: "Document",
      width: 14,
      help: "What it rests on: a bath, or the posting reversed.",
    }),
    textInput({ id: "code", label: "Account code", width: 10, help: "From Shop, as it was when posted." }),
    textInput({ id: "accountName", label: "Account name", width: 18, help: "From Shop, as it was when posted." }),
    wordInput({
      id: "use",
      label: "Used for",
      words: ledgerUses,
      width: 12,
      help: "Who pays, or where the cost came from.",
    }),
    keyInput({
      id: "claim",
      label: "Claim",
      width: 12,
      from: ["claims", "claim"],
      help: "Blank where it is no claim's.",
    }),
    keyInput({ id: "bath", label: "Bath", width: 13, from: ["baths", "bath"], help: "Blank where it is no bath's." }),
    textInput({ id: "text", label: "Text", width: 26, help: "In a few words." }),
    numberInput({
      id: "quantity",
      label: "Quantity",
      limits: between(-1_000_000, 1_000_000),
      format: "General",
      width: 9,
      help: "Units of the share, or concentrate that went in.",
    }),
    textInput({ id: "unit", label: "Unit", width: 10, help: "Of the quantity." }),
    moneyInput({ id: "debit", label: "Debit", width: 11, limits: either, help: "Charged." }),
    moneyInput({ id: "credit", label: "Credit", width: 11, limits: either, help: "Taken from." }),
    textInput({ id: "postedBy", label: "Posted by", width: 11, help: "Initials." }),
    momentInput({ id: "postedAt", label: "Posted at", width: 16, help: "Date and time." }),
    textInput({ id: "reverses", label: "Reverses", width: 10, help: "The posting that these lines take back." }),
    textInput({ id: "why", label: "Why", width: 20, help: "Why it was reversed." }),
  ],
};
