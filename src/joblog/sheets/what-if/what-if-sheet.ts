import type { SheetDefinition } from "../../model/definition.ts";
import { whatIfFields } from "./what-if-fields.ts";
import { whatIfTables } from "./what-if-tables.ts";

export const whatIfSheet: SheetDefinition = {
  id: "whatIf",
  name: "What-if",
  title: "What if",
  purpose: "Try other figures here; nothing on this sheet is recorded. Print the page for a card to tape to the tank.",
  caution:
    "Estimates for planning. A reading near the trigger is cooled and read again; a top-up goes in by the first addition, mixed and read. The label's highest strength wins.",
  fields: whatIfFields,
  tables: whatIfTables,
  arrangement: "stacked",
  tabColor: "#8C7A3D",
  pagesWide: 1,
  orientation: "portrait",
};
