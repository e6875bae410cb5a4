import { dateInput, nameInput, textInput } from "../../model/columns.ts";
import type { TableDefinition } from "../../model/definition.ts";

export const claimsTable: TableDefinition = {
  id: "claims",
  name: "Claims",
  caption: "Claims",
  emptyRows: 6,
  columns: [
    nameInput({ id: "claim", label: "Claim", width: 13, help: "The insurer's reference, once for each claim." }),
    textInput({ id: "loss", label: "Loss", width: 14, help: "What happened, in a few words." }),
    textInput({ id: "insurer", label: "Insurer", width: 26, help: "Who pays." }),
    textInput({ id: "adjuster", label: "Adjuster", width: 11, help: "Who the statement goes to." }),
    dateInput({ id: "arrived", label: "Arrived", width: 11, help: "Day the contents came in." }),
    textInput({
      id: "note",
      label: "Note",
      width: 11,
      help: "Anything the file should say, such as old paint or lead suspected.",
    }),
  ],
};
