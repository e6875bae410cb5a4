import { chargeDose } from "../../../../advice/amounts/charge-dose.ts";
import { amountProblems } from "../../../../advice/amounts/tank-limits.ts";
import { findRow, rowFacts } from "../../../../advice/bath-facts.ts";
import { bathIds } from "../../../../advice/bath-values.ts";
import type { FieldProblem, FilledFields } from "../../../../advice/filled-fields.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import { shortMoment } from "../../../../advice/wording/moments.ts";
import type { ColumnId } from "../../../../joblog/formula/log-names.ts";
import { tankProblems } from "../change-out/tank-turns.ts";

/** Keys of the form's fields: a row of the Baths sheet and the two first additions. */
export type ChargeKey = ColumnId<"baths"> | "soil" | "initials" | "waterAmount" | "concentrateAmount" | "concentrateAt";

/** Water and concentrate together. */
function overfull(
  filled: FilledFields<ChargeKey>,
  tankHolds: number | undefined,
  context: LogContext,
): readonly FieldProblem[] {
  const [water, concentrate] = [filled.number("waterAmount"), filled.number("concentrateAmount")];
  if (water === undefined || concentrate === undefined) return [];
  const alone = amountProblems("waterAmount", "Water in", Math.max(water, concentrate), tankHolds, context);
  return alone.length > 0
    ? []
    : amountProblems("waterAmount", "Water and concentrate", water + concentrate, tankHolds, context);
}

/** Concentrate goes into water, so not before the fill began. */
function concentrateFirst(filled: FilledFields<ChargeKey>): readonly FieldProblem[] {
  const [opened, poured] = [filled.number("opened"), filled.number("concentrateAt")];
  if (opened === undefined || poured === undefined || poured >= opened) return [];
  return [
    {
      key: "concentrateAt",
      message: `Concentrate went in: ${shortMoment(poured)} is before the fill began, ${shortMoment(opened)}. Check the date.`,
    },
  ];
}

/** What cannot be so of a new bath beyond its single fields. */
export function chargeProblems(filled: FilledFields<ChargeKey>, context: LogContext): readonly FieldProblem[] {
  const bath = filled.text("bath");
  const taken = bathIds(context.log).find((id) => id.toLowerCase() === bath?.toLowerCase());
  const missing = (["tanks", "waters", "concentrates"] as const).filter(
    (table) => context.log.rows[table].length === 0,
  );
  const tank = filled.text("tank");
  const row = tank === undefined ? undefined : findRow(context.log, "tanks", "tank", tank);
  const { base } = chargeDose(filled, context);
  const tankHolds = row === undefined ? undefined : rowFacts(row).number("workingVolume");
  const noVolume = row !== undefined && tankHolds === undefined;
  return [
    ...(taken !== undefined
      ? [{ key: "bath", message: `Bath: "${taken}" is in the log already. Give every fill a name of its own.` }]
      : []),
    ...missing.map((table) => ({
      key: table.slice(0, -1),
      message: `The Job sheet has no ${table} yet: fill in that table first.`,
    })),
    ...(base?.known === false
      ? [{ key: "strength", message: `Strength wanted: "${filled.text("strength") ?? ""}" gives no dose. ${base.why}` }]
      : []),
    ...amountProblems("waterAmount", "Water in", filled.number("waterAmount"), tankHolds, context),
    ...amountProblems("concentrateAmount", "Concentrate in", filled.number("concentrateAmount"), tankHolds, context),
    ...overfull(filled, tankHolds, context),
    ...tankProblems(filled, context),
    ...concentrateFirst(filled),
    ...(noVolume
      ? [
          {
            key: "tank",
            message: `Tank: "${tank ?? ""}" has no working volume. Give its inside length, width and fill depth on the Job sheet.`,
          },
        ]
      : []),
  ];
}
