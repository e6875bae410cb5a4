import { cautionsOfSheet } from "../../../core/safety/caution-places.ts";
import { asText } from "../../formula/arithmetic.ts";
import type { FieldDefinition, SheetDefinition } from "../../model/definition.ts";
import { noteLines } from "./notes-lines.ts";
import { ownLimits } from "./notes-own-limits.ts";

const version: FieldDefinition = {
  id: "notesVersion",
  name: "Notes.Version",
  label: "Log version",
  type: "text",
  help: "Raised when a log is upgraded.",
  formula: ({ named }) => asText(named.logVersion),
};

export const notesSheet: SheetDefinition = {
  id: "notes",
  name: "Notes",
  title: "Notes for the file",
  purpose: "What the figures rest on, and which limits the shop set for itself.",
  caution: `Arithmetic aid: no figure here is a permission or a promise.\n${cautionsOfSheet("notes")}`,
  fields: [version, ...ownLimits],
  tables: [noteLines],
  arrangement: "stacked",
  tabColor: "#5C5C66",
  pagesWide: 1,
  orientation: "portrait",
};
