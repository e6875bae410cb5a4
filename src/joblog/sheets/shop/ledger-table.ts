import { textInput, wordInput } from "../../model/columns.ts";
import type { TableDefinition } from "../../model/definition.ts";
import { ledgerUses } from "../../model/words.ts";

export const ledgerTable: TableDefinition = {
  id: "ledger",
  name: "Ledger",
  caption: "Accounts of the shop's own books, for the journal",
  newPage: true,
  emptyRows: ledgerUses.length,
  start: () => ledgerUses.map((use) => ({ use })),
  columns: [
    wordInput({
      id: "use",
      label: "Used for",
      words: ledgerUses,
      width: 31,
      required: true,
      help: "Claims and shop are charged; the others are where the cost comes from.",
    }),
    textInput({ id: "code", label: "Account code", width: 26, help: "As in the shop's own books." }),
    textInput({ id: "name", label: "Account name", width: 94, help: "As in the shop's own books." }),
  ],
};
