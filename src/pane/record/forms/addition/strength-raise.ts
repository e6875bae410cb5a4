/** A bath that does not clean at the strength wanted is charged up to another: what that asks for, and how it is booked. */
import { bothReadings, inJugs } from "../../../../advice/amounts/charge-dose.ts";
import { insteadOfStronger, isAtLabelHighest, labelHighestWords } from "../../../../advice/amounts/label-limit.ts";
import { plannedAt, pourable } from "../../../../advice/amounts/planned-dose.ts";
import { findRow, type RowFacts } from "../../../../advice/bath-facts.ts";
import { bathFacts } from "../../../../advice/bath-values.ts";
import type { FieldProblem, FilledFields } from "../../../../advice/filled-fields.ts";
import type { Finding } from "../../../../advice/finding.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import { amount as amountFigure } from "../../../../advice/wording/figures.ts";
import type { RowChange } from "../../../../excel/record/cell-changes.ts";
import type { ColumnId } from "../../../../joblog/formula/log-names.ts";
import type { LogSnapshot } from "../../../../joblog/model/log-snapshot.ts";
import { volume as volumeUnit } from "../../../../joblog/model/units-of.ts";
import { bench } from "../../../../joblog/model/words.ts";

export const raiseKey = "strengthNow";

/** Keys of the form's fields. */
export type AdditionKey = ColumnId<"additions"> | typeof raiseKey;

/** The strength that the form is to book; undefined where it is blank or the one that stands. */
function raisedTo(filled: FilledFields<AdditionKey>, facts: RowFacts<"baths"> | undefined): string | undefined {
  const strength = filled.text(raiseKey);
  return strength === facts?.text("strength") ? undefined : strength;
}

export function raiseProblems(filled: FilledFields<AdditionKey>, context: LogContext): readonly FieldProblem[] {
  const facts = bathFacts(context.log, filled.text("bath"));
  const strength = raisedTo(filled, facts);
  if (facts === undefined || strength === undefined) return [];
  const planned = plannedAt(strength, context.log, facts.text("bath") ?? "");
  const poured = facts.number("openingDose") ?? 0;
  const label = "Strength now wanted";
  if (planned === undefined)
    return [
      { key: raiseKey, message: `${label}: the tank has no working volume in the log, so no dose follows from it.` },
    ];
  if (!planned.known) return [{ key: raiseKey, message: `${label}: "${strength}" gives no dose. ${planned.why}` }];
  if (planned.value >= poured - pourable) return [];
  const unit = volumeUnit[context.system];
  return [
    {
      key: raiseKey,
      message: `${label}: ${strength} asks for ${amountFigure(planned.value)} ${unit}, and ${amountFigure(poured)} ${unit} are in already.`,
    },
  ];
}

/** After a failed bench test: why no stronger bath is proposed, or that nobody knows how far the label lets it go. */
function refusedFindings(filled: FilledFields<AdditionKey>, facts: RowFacts<"baths">): readonly Finding[] {
  if (filled.text("purpose") !== "opening" || facts.text("benchState") !== bench.refused) return [];
  return isAtLabelHighest(facts)
    ? [
        {
          tone: "act",
          text: `The label's highest strength, ${labelHighestWords(facts)}, is wanted already. ${insteadOfStronger}`,
        },
      ]
    : [];
}

export function raiseFindings(filled: FilledFields<AdditionKey>, context: LogContext): readonly Finding[] {
  const { system } = context;
  const facts = bathFacts(context.log, filled.text("bath"));
  const strength = raisedTo(filled, facts);
  if (facts === undefined) return [];
  if (strength === undefined) return refusedFindings(filled, facts);
  const planned = plannedAt(strength, context.log, facts.text("bath") ?? "");
  if (planned?.known !== true) return [];
  const was = facts.text("strength");
  const left = planned.value - (facts.number("openingDose") ?? 0) - (filled.number("amount") ?? 0);
  const rest = left > pourable ? ` ${amountFigure(left)} ${volumeUnit[system]} of it are left after this.` : "";
  const unknown: readonly Finding[] =
    facts.number("labelHighest") === undefined
      ? [{ tone: "watch", text: "The label's highest strength is not in the log: look at the label first." }]
      : [];
  return [
    ...unknown,
    {
      tone: "watch",
      text: `Strength wanted${was === undefined ? "" : `: ${was}`} becomes ${strength}; planned dose ${inJugs(planned.value, system)}.${rest}`,
    },
    ...bothReadings(strength, facts.number("workingVolume") ?? 0, planned.value, system),
  ];
}

/** What the note keeps of the strength that stood before. */
export function raiseNote(filled: FilledFields<AdditionKey>, context: LogContext): string | undefined {
  const facts = bathFacts(context.log, filled.text("bath"));
  const strength = raisedTo(filled, facts);
  const was = facts?.text("strength");
  return strength === undefined ? undefined : `strength wanted ${strength}${was === undefined ? "" : `, was ${was}`}`;
}

/** The bath's own row: from it follow planned dose and bench test. Its name stands with it, so that a row which sorting moved is never taken for this one. */
export function raiseChanges(filled: FilledFields<AdditionKey>, context: LogContext): readonly RowChange[] {
  const bath = filled.text("bath");
  const row = bath === undefined ? undefined : findRow(context.log, "baths", "bath", bath);
  const strength = raisedTo(filled, bathFacts(context.log, bath));
  if (row === undefined || strength === undefined) return [];
  const { cells, position } = row;
  return [
    {
      table: "baths",
      position,
      cells: {
        bath: { before: cells.bath, after: cells.bath },
        strength: { before: cells.strength, after: strength },
      },
    },
  ];
}

/** The log as it will stand with the strength that the form is to book. */
export function raisedLog(filled: FilledFields<AdditionKey>, { log }: LogContext): LogSnapshot {
  const bath = filled.text("bath");
  const row = bath === undefined ? undefined : findRow(log, "baths", "bath", bath);
  const strength = raisedTo(filled, bathFacts(log, bath));
  if (row === undefined || strength === undefined) return log;
  const raised = { ...row, cells: { ...row.cells, strength } };
  return { ...log, rows: { ...log.rows, baths: log.rows.baths.map((one) => (one === row ? raised : one)) } };
}
