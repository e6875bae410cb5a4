import { EditRegular } from "@fluentui/react-icons/svg/edit";

import type { FieldProblem, FilledFields } from "../../../../advice/filled-fields.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import { missingShares } from "../../../../advice/share-rows.ts";
import { fieldTextOf, serialOf } from "../../../../advice/wording/moments.ts";
import type { CellChange, RowChange } from "../../../../excel/record/cell-changes.ts";
import type { RowValue } from "../../../../joblog/model/definition.ts";
import type { Draft, EntryField, EntryForm, FieldGroup, Meaning } from "../../entry-form.ts";
import { describedColumn, field, fieldOf, inputColumns } from "../../fields-of.ts";
import {
  asHeld,
  changedIds,
  correctedIds,
  type Correction,
  correctionKey,
  correctionLabel,
  correctionOf,
  heldText,
  notedText,
  spokenText,
} from "./correction.ts";
import { movedFindings, openingMoves } from "./correction-opening.ts";
import { correctionProblems } from "./correction-problems.ts";
import { type ChosenRow, chosenRow, correctedKinds, keyOfRow, rowKey, rowNames, tableKey } from "./correction-rows.ts";

const whyKey = "why";

const hasNote = (chosen: ChosenRow): boolean => correctedIds(chosen.table).includes("note");

/** A field of the form itself, which no column of its own stands behind. */
function ownField(
  key: string,
  label: string,
  help: string,
  context: LogContext,
  choices?: readonly string[],
): EntryField {
  const plain = field(context.log, "readings", "note", {
    key,
    label,
    required: true,
    ...(choices === undefined ? {} : { choices }),
  });
  return { ...plain, column: { ...plain.column, help } };
}

/** What stood there, so that nothing is lost by a correction. */
function trace({ table, row, changed }: Correction, why: string, now: string): string {
  const was = changed
    .filter((id) => id !== "note")
    .map((id) => `${correctionLabel(table, id)} was ${notedText(table, id, row.cells[id]) || "blank"}`);
  return `corrected ${fieldTextOf(serialOf(now) ?? 0).replace("T", " ")}: ${was.join(", ")} (${why})`;
}

function valueOf({ filled }: Correction, id: string): RowValue | undefined {
  return filled.number(id) ?? filled.text(id);
}

/** Left beside another baseline, what the meter had shown would say that it had drifted. */
function asReadWith({ table, row, changed }: Correction): readonly (readonly [string, CellChange])[] {
  const held = row.cells["baselineAsRead"];
  return table !== "baths" || held === undefined || !changed.includes("baseline") || changed.includes("baselineAsRead")
    ? []
    : [["baselineAsRead", { before: held, after: undefined }]];
}

/** The changed cells; the key stands among them so that a row which sorting moved is never taken for this one. */
function cellsOf(
  correction: Correction,
  why: string | undefined,
  context: LogContext,
): Readonly<Record<string, CellChange>> {
  const { table, row, changed } = correction;
  const key = inputColumns(table)[0]?.id ?? "";
  const note = valueOf(correction, "note");
  const noted =
    why === undefined || changed.every((id) => id === "note")
      ? note
      : [note, trace(correction, why, context.now)].filter((part) => part !== undefined).join("; ");
  const cells = changed.map((id): readonly [string, CellChange] => [
    id,
    { before: row.cells[id], after: valueOf(correction, id) },
  ]);
  return Object.fromEntries([
    [key, { before: row.cells[key], after: row.cells[key] }],
    ...cells,
    ...asReadWith(correction),
    ...(noted === row.cells.note ? [] : [["note", { before: row.cells.note, after: noted }] as const]),
  ]);
}

function problemsOf(chosen: ChosenRow, correction: Correction, context: LogContext): readonly FieldProblem[] {
  const { changed } = correction;
  const [first = ""] = correctedIds(chosen.table);
  if (changed.length === 0)
    return [{ key: correctionKey(chosen, first), message: "Nothing differs from the log yet." }];
  return [
    ...correctionProblems(correction, context).map(({ key, message }) => ({
      key: correctionKey(chosen, key),
      message,
    })),
  ];
}

function meaning(filled: FilledFields<string>, context: LogContext, values: Draft): Meaning {
  const chosen = chosenRow(context.log, values);
  if (chosen === undefined) return { findings: [], problems: [], rows: [], recorded: "correction" };
  const correction = correctionOf(chosen, filled, values);
  const { table, row, changed } = correction;
  const why = filled.text(whyKey);
  const said = (id: string): string => values[correctionKey(chosen, id)]?.trim() ?? "";
  return {
    findings: [
      ...changed.map((id) => ({
        tone: "plain" as const,
        text: `${correctionLabel(table, id)}: ${spokenText(table, id, heldText(table, id, row.cells[id])) || "blank"} becomes ${spokenText(table, id, said(id)) || "blank"}.`,
      })),
      ...movedFindings(correction, context),
      ...asReadWith(correction).map(() => ({
        tone: "plain" as const,
        text: "Baseline as read: becomes blank, the same as the baseline.",
      })),
      ...(changed.length === 0
        ? []
        : [{ tone: "watch" as const, text: "Everything in the log that depends on it is recalculated." }]),
    ],
    problems: problemsOf(chosen, correction, context),
    // A load that goes to another bath or claim brings its row in Shares along.
    rows:
      table === "loads"
        ? missingShares(context.log, [
            { cells: { bath: valueOf(correction, "bath"), claim: valueOf(correction, "claim") } },
          ])
        : [],
    // The columns were taken from this table's description.
    changes: [
      { table, position: row.position, cells: cellsOf(correction, why, context) } as RowChange,
      ...openingMoves(correction, context).map(({ change }) => change),
    ],
    recorded: `correction of ${keyOfRow(chosen)}`,
  };
}

/** A note that grows needs no reason. */
const asksWhy = (chosen: ChosenRow, values: Draft): boolean => changedIds(chosen, values).some((id) => id !== "note");

function groups(values: Draft, context: LogContext): readonly FieldGroup[] {
  const { log } = context;
  const chosen = chosenRow(log, values);
  const which: readonly EntryField[] = [
    ownField(tableKey, "Kind of entry", "Choose one.", context, correctedKinds(log)),
    ...((values[tableKey] ?? "") === ""
      ? []
      : [ownField(rowKey, "Which one", "Choose one; the last is first.", context, rowNames(log, values))]),
  ];
  if (chosen === undefined) return [{ fields: which }];
  const { table, row } = chosen;
  const fields = correctedIds(table).map((id) =>
    asHeld(fieldOf(log, describedColumn(table, id), { key: correctionKey(chosen, id) }), row.cells[id]),
  );
  const why = hasNote(chosen)
    ? [
        {
          ...ownField(whyKey, "Why", "It goes into the note, with what was there before.", context),
          required: asksWhy(chosen, values),
        },
      ]
    : [];
  return [{ fields: which }, { legend: keyOfRow(chosen), fields: [...fields, ...why] }];
}

/** Any earlier row: a slip is put right, an outcome changes later. What stood there goes into the note. */
export const correctionEntry: EntryForm<"correction"> = {
  id: "correction",
  title: "Correct an entry",
  icon: EditRegular,
  needs: "log",
  purpose: "A slip in an earlier entry, or an outcome that changed; the note keeps what was there.",
  submit: "Record correction",
  caution:
    "Only what was written down wrong or changed since. A pH as read stays as it was written: take another reading, and say in the note what was wrong. A meter’s drift is taken out by the meter check.",
  groups,
  proposals: (typed, { log }) => {
    const chosen = chosenRow(log, typed);
    return chosen === undefined
      ? {}
      : Object.fromEntries(
          correctedIds(chosen.table).map((id) => [
            correctionKey(chosen, id),
            heldText(chosen.table, id, chosen.row.cells[id]),
          ]),
        );
  },
  meaning,
};
