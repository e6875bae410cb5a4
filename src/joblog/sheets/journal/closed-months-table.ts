import { dateInput, momentInput, textInput } from "../../model/columns.ts";
import type { TableDefinition } from "../../model/definition.ts";

/** The last line of a month says how it stands. */
export const closedMonthsTable: TableDefinition = {
  id: "closedMonths",
  name: "ClosedMonths",
  caption: "Months closed and reopened",
  emptyRows: 6,
  columns: [
    dateInput({ id: "month", label: "Month", width: 10, required: true, help: "First day of the month." }),
    momentInput({
      id: "closedAt",
      label: "Closed",
      width: 11,
      help: "Date and time; no entry is dated in it any more.",
    }),
    textInput({ id: "closedBy", label: "By", width: 9, help: "Initials." }),
    momentInput({ id: "reopenedAt", label: "Reopened", width: 14, help: "Date and time; blank while it is closed." }),
    textInput({ id: "reopenedBy", label: "By whom", width: 10, help: "Initials." }),
    textInput({ id: "why", label: "Why", width: 18, help: "Why it was reopened." }),
  ],
};
