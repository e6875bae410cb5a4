import { WaterRegular } from "@fluentui/react-icons/svg/water";

import { chargeDose, doseFindings } from "../../../../advice/amounts/charge-dose.ts";
import { labelDoubts } from "../../../../advice/amounts/label-limit.ts";
import { labelStrength, labelStrengths, soilFindings } from "../../../../advice/amounts/label-strength.ts";
import { withUnitCosts } from "../../../../advice/books/unit-costs.ts";
import { draftedLog } from "../../../../advice/drafted-row.ts";
import type { FilledFields } from "../../../../advice/filled-fields.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import { shopsDrop } from "../../../../advice/shop-values.ts";
import { figure } from "../../../../advice/wording/figures.ts";
import type { ColumnId } from "../../../../joblog/formula/log-names.ts";
import type { TableId } from "../../../../joblog/formula/log-types.ts";
import type { NewRow } from "../../../../joblog/model/definition.ts";
import { typedCells } from "../../cells-of.ts";
import type { Draft, EntryForm, Meaning } from "../../entry-form.ts";
import { field, initialsField } from "../../fields-of.ts";
import { nextIds, proposedBathId } from "../../next-id.ts";
import { changeOut, charge } from "../../step-forms.ts";
import { bathInTank, tankDoubts } from "../change-out/tank-turns.ts";
import { type ChargeKey, chargeProblems } from "./charge-problems.ts";

function onlyKey<Table extends TableId>(context: LogContext, table: Table, column: ColumnId<Table>): string {
  const keys = context.log.rows[table].map(({ cells }) => cells[column]);
  return keys.length === 1 && keys[0] !== undefined ? String(keys[0]) : "";
}

function basics(typed: Draft, context: LogContext): Draft {
  const tank = typed["tank"] ?? onlyKey(context, "tanks", "tank");
  const opened = typed["opened"] ?? context.now;
  const concentrate = typed["concentrate"] ?? onlyKey(context, "concentrates", "concentrate");
  return {
    tank,
    opened,
    water: typed["water"] ?? onlyKey(context, "waters", "water"),
    concentrate,
    strength: labelStrength(typed["soil"], concentrate, context),
    dropAllowed: figure(shopsDrop(context.log), 2, 2),
    bath: tank === "" ? "" : proposedBathId(context.log, tank, opened),
    concentrateAt: opened,
  };
}

/** The proposals are the plan's own amounts: water to the line less the dose, then the whole dose. */
function amounts(typed: Draft, context: LogContext, start: Draft): Draft {
  const values = { ...start, ...typed };
  const chosen = (key: string): string | undefined => (values[key]?.trim() === "" ? undefined : values[key]?.trim());
  const dose = chargeDose({ number: () => undefined, text: chosen }, context);
  if (dose.volume === undefined || dose.planned === undefined) return {};
  return { waterAmount: figure(dose.volume - dose.planned, 2), concentrateAmount: figure(dose.planned, 3) };
}

function rowsOf(filled: FilledFields<ChargeKey>, context: LogContext): readonly NewRow[] {
  const bath = filled.text("bath");
  const water = filled.number("waterAmount");
  const concentrate = filled.number("concentrateAmount");
  const poured = [
    ...(water === undefined
      ? []
      : [{ kind: "water", amount: water, water: filled.text("water"), when: filled.number("opened") }]),
    ...(concentrate === undefined
      ? []
      : [
          { kind: "concentrate", amount: concentrate, when: filled.number("concentrateAt") ?? filled.number("opened") },
        ]),
  ];
  const ids = nextIds(context.log, "additions", poured.length);
  return [
    { table: "baths", row: typedCells("baths", filled) },
    ...poured.map((one, index): NewRow => ({
      table: "additions",
      row: { id: ids[index], bath, purpose: "opening", account: "claims", initials: filled.text("initials"), ...one },
    })),
  ];
}

function meaning(filled: FilledFields<ChargeKey>, context: LogContext): Meaning {
  const [bath, tank, holds] = [filled.text("bath"), filled.text("tank"), bathInTank(filled, context)];
  const rows = withUnitCosts(rowsOf(filled, context), context.log);
  const added = draftedLog(context.log, rows).added("baths");
  return {
    findings: [
      ...doseFindings(filled, added.text("strengthReached"), context),
      ...soilFindings(filled.text("soil"), filled.text("concentrate"), filled.text("strength"), context),
    ],
    problems: chargeProblems(filled, context),
    doubts: [...tankDoubts(filled, context), ...labelDoubts(added)],
    rows,
    recorded: `charge of bath ${bath ?? ""}`,
    ...(holds === undefined
      ? {}
      : {
          blocked: {
            why: `Tank ${tank ?? ""} still holds bath ${holds} in the log. Close that one first: a tank holds one bath.`,
            first: changeOut,
          },
        }),
  };
}

/** A new bath with its first water and concentrate. */
export const chargeEntry: EntryForm<"charge"> = {
  ...charge,
  icon: WaterRegular,
  needs: "log",
  purpose: "A fresh fill, with its opening dose of concentrate: what it takes, and what went in.",
  submit: "Record charge",
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
      legend: "More details",
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
