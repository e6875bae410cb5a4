import { usualHouseShare, usualTolerance } from "../../../core/bath/common-practice.ts";
import { cautionsOfSheet } from "../../../core/safety/caution-places.ts";
import { unitSystems } from "../../../core/units/unit-system.ts";
import type { FieldDefinition, SheetDefinition } from "../../model/definition.ts";
import { everywhere } from "../../model/everywhere.ts";
import { between, temperature } from "../../model/units-of.ts";
import { claimsTable } from "./claims-table.ts";
import { concentratesTable } from "./concentrates-table.ts";
import { tanksTable } from "./tanks-table.ts";
import { watersTable } from "./waters-table.ts";

const fields: readonly FieldDefinition[] = [
  { id: "shop", name: "Shop.Name", label: "Shop", type: "text", help: "The name printed on the claim statement." },
  {
    id: "jobNumber",
    name: "Job.Number",
    label: "Job number",
    type: "text",
    help: "Your own number for this job week.",
  },
  { id: "started", name: "Job.Started", label: "Started", type: "date", help: "First day of the job week." },
  {
    id: "unitSystem",
    name: "Unit.System",
    label: "Units",
    type: "choice",
    choices: { kind: "fixed", choices: unitSystems },
    fixed: true,
    help: "Set when the log is built. Headers and numbers follow it, so do not change it here; build a new log instead.",
  },
  {
    id: "tolerance",
    name: "Recovery.Tolerance",
    label: "Recovered within, pH",
    type: "number",
    format: "0.00",
    limits: between(0.01, 1),
    initial: everywhere(usualTolerance),
    help: "A top-up counts as recovered this close to the baseline.",
  },
  {
    id: "temperatureGap",
    name: "Temperature.Gap",
    label: "Temperature gap allowed",
    type: "number",
    unit: temperature,
    format: "0.0",
    limits: between(0.1, 20),
    // 2 °C is 3.6 °F: a difference, so without the offset of the scale.
    initial: { US: 3.6, metric: 2, imperial: 2 },
    help: "Top-up amounts are worked out only for samples this close to the baseline's temperature.",
  },
  {
    id: "houseShare",
    name: "House.Share",
    label: "First addition at most",
    type: "share",
    format: "0.0%",
    limits: between(0.01, 1),
    initial: everywhere(usualHouseShare),
    help: "Share of the opening dose that goes in before the bath is mixed and read again.",
  },
  {
    id: "topUpGrowth",
    name: "TopUp.Growth",
    label: "Top-ups grow from",
    type: "number",
    format: '0.0" times"',
    limits: between(1, 5),
    initial: everywhere(1.2),
    help: "A later round of top-ups that took more than this many times the first is a change-out signal (common practice, no source).",
  },
  {
    id: "topUpLimit",
    name: "TopUp.Limit",
    label: "Top-ups in all at most",
    type: "share",
    format: "0%",
    limits: between(0.1, 5),
    initial: everywhere(1),
    help: "Share of the opening dose; from there on, consider a change-out (100 to 150 %, common practice, no source).",
  },
  {
    id: "logVersion",
    name: "Log.Version",
    label: "Log version",
    type: "whole number",
    format: "0",
    fixed: true,
    help: "Bathsheet reads it when it upgrades a log.",
  },
];

export const jobSheet: SheetDefinition = {
  id: "job",
  name: "Job",
  title: "Job chemistry log",
  purpose:
    "Type in the framed, tinted cells. Only the chemistry needs the Bathsheet add-in (#NAME? without it); costs, shares, stock and statement work in any spreadsheet.",
  caution: cautionsOfSheet("job"),
  fields,
  tables: [claimsTable, tanksTable, watersTable, concentratesTable],
  arrangement: "stacked",
  tabColor: "#1F4E57",
  pagesWide: 1,
  orientation: "landscape",
};
