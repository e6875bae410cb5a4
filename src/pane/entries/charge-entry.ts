import { findRow, rowFacts } from "../../joblog/bath-facts.ts";
import type { NewRow } from "../../excel/append-ground.ts";
import { figure } from "../fields/figures.ts";
import { bathIds } from "./bath-values.ts";
import { chargeCaution } from "./cautions.ts";
import { chargeDose, doseFindings } from "./charge-dose.ts";
import type { Draft, EntryContext, EntryForm, FilledFields, Meaning } from "./entry-form.ts";
import { entryNames } from "./entry-names.ts";
import { field, initialsField } from "./fields-of.ts";
import { labelStrength, labelStrengths } from "./label-strength.ts";
import { nextIds, proposedBathId } from "./next-id.ts";
import { amountProblems } from "./tank-limits.ts";

function onlyKey(context: EntryContext, table: "tanks" | "waters" | "concentrates", column: string): string {
  const keys = context.log.rows[table].map((row) => row.cells[column]);
  return keys.length === 1 && keys[0] !== undefined ? String(keys[0]) : "";
}

function basics(typed: Draft, context: EntryContext): Draft {
  const tank = typed["tank"] ?? onlyKey(context, "tanks", "tank");
  const opened = typed["opened"] ?? context.now;
  const concentrate = typed["concentrate"] ?? onlyKey(context, "concentrates", "concentrate");
  const { usualDrop } = context.log.fields;
  return {
    tank,
    opened,
    water: typed["water"] ?? onlyKey(context, "waters", "water"),
    concentrate,
    strength: labelStrength(typed["soil"], concentrate, context),
    dropAllowed: typeof usualDrop === "number" ? figure(usualDrop, 2, 2) : "",
    bath: tank === "" ? "" : proposedBathId(context.log, tank, opened),
    concentrateAt: opened,
  };
}

/** The proposals are the plan's own amounts: water to the line less the dose, then the whole dose. */
function amounts(typed: Draft, context: EntryContext, start: Draft): Draft {
  const values = { ...start, ...typed };
  const chosen = (key: string): string | undefined => (values[key]?.trim() === "" ? undefined : values[key]?.trim());
  const dose = chargeDose({ number: () => undefined, text: chosen }, context);
  if (dose.volume === undefined || dose.planned === undefined) return {};
  return { waterAmount: figure(dose.volume - dose.planned, 2), concentrateAmount: figure(dose.planned, 3) };
}

function rowsOf(filled: FilledFields, context: EntryContext): readonly NewRow[] {
  const bath = filled.text("bath");
  const water = filled.number("waterAmount");
  const concentrate = filled.number("concentrateAmount");
  const poured = [
    ...(water === undefined ? [] : [{ kind: "water", amount: water, water: filled.text("water"), when: filled.number("opened") }]),
    ...(concentrate === undefined ? [] : [{ kind: "concentrate", amount: concentrate, when: filled.number("concentrateAt") ?? filled.number("opened") }]),
  ];
  const ids = nextIds(context.log, "additions", poured.length);
  return [
    {
      table: "baths",
      row: {
        bath,
        tank: filled.text("tank"),
        water: filled.text("water"),
        concentrate: filled.text("concentrate"),
        opened: filled.number("opened"),
        strength: filled.text("strength"),
        builder: filled.text("builder"),
        dropAllowed: filled.number("dropAllowed"),
        note: filled.text("note"),
      },
    },
    ...poured.map((one, index): NewRow => ({
      table: "additions",
      row: { id: ids[index], bath, purpose: "opening", account: "claims", initials: filled.text("initials"), ...one },
    })),
  ];
}

/** A tank holds one bath: the one before is changed out first. */
function stillOpen(tank: string | undefined, { log }: EntryContext): readonly string[] {
  const open = log.rows.baths.filter((row) => row.cells["tank"] === tank && row.cells["closed"] === undefined).map((row) => String(row.cells["bath"] ?? ""));
  return open.length === 0 ? [] : [`Tank ${tank ?? ""} still holds bath ${open.join(", ")} in the log, which has no change-out. Charge it all the same?`];
}

function meaning(filled: FilledFields, context: EntryContext): Meaning {
  const bath = filled.text("bath");
  const taken = bathIds(context.log).find((id) => id.toLowerCase() === bath?.toLowerCase());
  const missing = (["tanks", "waters", "concentrates"] as const).filter((table) => context.log.rows[table].length === 0);
  const tank = filled.text("tank");
  const row = tank === undefined ? undefined : findRow(context.log, "tanks", "tank", tank);
  const { base } = chargeDose(filled, context);
  const tankHolds = row === undefined ? undefined : rowFacts(row).number("workingVolume");
  const noVolume = row !== undefined && tankHolds === undefined;
  return {
    findings: doseFindings(filled, context),
    problems: [
      ...(taken !== undefined ? [{ key: "bath", message: `Bath: "${taken}" is in the log already. Give every fill a name of its own.` }] : []),
      ...missing.map((table) => ({ key: table.slice(0, -1), message: `The Job sheet has no ${table} yet: fill in that table first.` })),
      ...(base?.known === false ? [{ key: "strength", message: `Strength wanted: "${filled.text("strength") ?? ""}" gives no dose. ${base.why}` }] : []),
      ...amountProblems("waterAmount", "Water in", filled.number("waterAmount"), tankHolds, context),
      ...amountProblems("concentrateAmount", "Concentrate in", filled.number("concentrateAmount"), tankHolds, context),
      ...(noVolume ? [{ key: "tank", message: `Tank: "${tank ?? ""}" has no working volume. Give its inside length, width and fill depth on the Job sheet.` }] : []),
    ],
    doubts: stillOpen(tank, context),
    rows: rowsOf(filled, context),
    recorded: `charge of bath ${bath ?? ""}`,
  };
}

/** A new bath with its first water and concentrate. */
export const chargeEntry: EntryForm = {
  id: "charge",
  title: entryNames.charge,
  purpose: "A fresh fill: its dose, and what went in first.",
  submit: "Record charge",
  caution: chargeCaution,
  groups: (_values, { log }) => [
    {
      fields: [
        field(log, "baths", "tank"),
        field(log, "baths", "water"),
        field(log, "baths", "concentrate"),
        field(log, "loads", "soil", { label: "Soil, for the label's strength", required: false }),
        field(log, "baths", "strength", { suggestions: labelStrengths(log) }),
        field(log, "baths", "opened"),
        field(log, "baths", "bath"),
      ],
    },
    {
      legend: "What goes in now",
      fields: [
        field(log, "additions", "amount", { key: "waterAmount", label: "Water in", required: false }),
        field(log, "additions", "amount", { key: "concentrateAmount", label: "Concentrate in", required: false }),
        field(log, "additions", "when", { key: "concentrateAt", label: "Concentrate went in", required: false }),
      ],
    },
    {
      legend: "More",
      folded: true,
      fields: [
        field(log, "baths", "dropAllowed"),
        field(log, "baths", "builder"),
        initialsField(log, "additions"),
        field(log, "baths", "note"),
      ],
    },
  ],
  proposals: (typed, context) => {
    const start = basics(typed, context);
    return { ...start, ...amounts(typed, context, start) };
  },
  meaning,
};
