import { nameInput, textInput } from "../../model/columns.ts";
import type { TableDefinition } from "../../model/definition.ts";

export const peopleTable: TableDefinition = {
  id: "people",
  name: "People",
  caption: "People: whose initials are on the entries",
  emptyRows: 4,
  columns: [
    nameInput({ id: "initials", label: "Initials", width: 31, help: "As written on the entries." }),
    textInput({ id: "name", label: "Name", width: 26, help: "For the file." }),
    textInput({
      id: "note",
      label: "Note",
      width: 94,
      help: "Training, such as the date of the last safety briefing.",
    }),
  ],
};
