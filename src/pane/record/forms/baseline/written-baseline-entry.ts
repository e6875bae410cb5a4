import { NotepadEditRegular } from "@fluentui/react-icons/svg/notepad-edit";

import { findRow, type RowFacts, rowFacts, rowsOfBath } from "../../../../advice/bath-facts.ts";
import { completedRow } from "../../../../advice/drafted-row.ts";
import type { FieldProblem, FilledFields } from "../../../../advice/filled-fields.ts";
import type { Finding } from "../../../../advice/finding.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import { baselineFault, givenBaseline } from "../../../../advice/readings/baseline-written.ts";
import { degrees, figure, ph } from "../../../../advice/wording/figures.ts";
import type { ColumnId } from "../../../../joblog/formula/log-names.ts";
import type { LogSnapshot } from "../../../../joblog/model/log-snapshot.ts";
import { temperature as temperatureUnit } from "../../../../joblog/model/units-of.ts";
import { cellsOf } from "../../cells-of.ts";
import type { Draft, EntryForm, Meaning } from "../../entry-form.ts";
import { field, textsOf } from "../../fields-of.ts";
import { writtenBaseline } from "../../step-forms.ts";
import { baselineChange } from "./baseline-change.ts";

/** As many as are written down when nothing is changed. */
const digits = 6;

type BathColumn = ColumnId<"baths">;

const written = [
  "baseline",
  "baselineTemperature",
  "baselineSetAt",
  "baselineSetBy",
  "baselineFrom",
  "baselineAsRead",
] as const;

/** The ids of the readings that count, in the order of time. */
function countedIds(log: LogSnapshot, bath: string): readonly string[] {
  return rowsOfBath(log, "readings", bath)
    .filter(({ cells }) => cells.counted === 1)
    .map(({ cells }) => String(cells.id ?? ""))
    .filter((id) => id !== "");
}

function findings(
  bath: RowFacts<"baths">,
  filled: FilledFields<BathColumn>,
  trigger: number | undefined,
  { system }: LogContext,
): readonly Finding[] {
  const [given, typed] = [givenBaseline(bath), filled.number("baseline")];
  const fault = baselineFault(bath, system);
  return [
    ...(fault === undefined ? [] : [{ tone: "watch" as const, text: fault.text }]),
    ...(given === undefined
      ? [
          {
            tone: "watch" as const,
            text: "No readings in the log give a baseline: it stands on what is typed here alone.",
          },
        ]
      : [
          {
            tone: "plain" as const,
            text: `Readings give ${ph(given.baseline)} at ${degrees(given.temperature)} ${temperatureUnit[system]}: the median of ${String(bath.number("baselineReadings") ?? 0)}.`,
          },
        ]),
    ...(trigger === undefined || typed === undefined
      ? []
      : [
          {
            tone: "plain" as const,
            text: `Top-up due at ${ph(trigger)} or under (drop allowed ${figure(typed - trigger, 2, 2)}). Every reading of the bath is judged again.`,
          },
        ]),
  ];
}

/** Asked where it is not what the readings give, as whoever typed it may know why. */
function doubts(bath: RowFacts<"baths">, filled: FilledFields<BathColumn>, { system }: LogContext): readonly string[] {
  const given = givenBaseline(bath);
  const [typed, at] = [filled.number("baseline"), filled.number("baselineTemperature")];
  if (typed === undefined || at === undefined) return [];
  if (given === undefined)
    return [`No three readings of the log give a baseline. Write ${ph(typed)} down all the same?`];
  const unit = temperatureUnit[system];
  return [
    ...(ph(typed) === ph(given.baseline)
      ? []
      : [`The readings give ${ph(given.baseline)}, and ${ph(typed)} is typed. Write ${ph(typed)} down all the same?`]),
    ...(degrees(at) === degrees(given.temperature)
      ? []
      : [
          `The readings were at ${degrees(given.temperature)} ${unit}, and ${degrees(at)} ${unit} is typed. Write that down all the same?`,
        ]),
  ];
}

function problems(bath: RowFacts<"baths">, filled: FilledFields<BathColumn>): readonly FieldProblem[] {
  if (bath.number("openingDose") === undefined)
    return [{ key: "bath", message: "Bath: it has no concentrate in the log yet. Record the charge first." }];
  return filled.number("baseline") === 0
    ? [{ key: "baseline", message: "Baseline pH: 0 is no baseline of a bath." }]
    : [];
}

function meaning(filled: FilledFields<BathColumn>, context: LogContext): Meaning {
  const { log } = context;
  const name = filled.text("bath") ?? "";
  const row = findRow(log, "baths", "bath", name);
  const typed = filled.number("baseline");
  const recorded = `baseline${typed === undefined ? "" : ` ${ph(typed)}`} of bath ${name}`;
  if (row === undefined) return { findings: [], problems: [], rows: [], recorded };
  const cells = cellsOf(filled, written);
  const { baselineAsRead } = cells;
  // Left alone beside another pH, it would say that the meter had drifted.
  const asRead = baselineAsRead ?? typed;
  const facts = rowFacts(row);
  const trigger = completedRow(log, "baths", row, cells).number("trigger");
  return {
    findings: findings(facts, filled, trigger, context),
    problems: problems(facts, filled),
    doubts: doubts(facts, filled, context),
    rows: [],
    changes: [baselineChange(row, { ...cells, baselineAsRead: asRead })],
    recorded,
  };
}

function proposals(typed: Draft, context: LogContext): Draft {
  const { log } = context;
  const bath = typed["bath"] ?? context.bath ?? "";
  const row = findRow(log, "baths", "bath", bath);
  const given = row === undefined ? undefined : givenBaseline(rowFacts(row));
  return {
    bath,
    baselineSetAt: context.now,
    ...(given === undefined
      ? {}
      : {
          baseline: figure(given.baseline, digits),
          baselineTemperature: figure(given.temperature, digits),
          baselineAsRead: figure(given.asRead, digits),
          baselineFrom: countedIds(log, bath).join(", "),
        }),
  };
}

/** The decision that every verdict goes by, where the form that takes the three readings did not write it down. */
export const writtenBaselineEntry: EntryForm<"written baseline"> = {
  ...writtenBaseline,
  icon: NotepadEditRegular,
  needs: "bath",
  from: "now",
  purpose: "The pH that the bath comes back to, as its readings give it.",
  submit: "Write it down",
  groups: (_, { log }) => [
    {
      fields: [
        field(log, "baths", "bath", { choices: textsOf(log, "baths", "bath") }),
        field(log, "baths", "baseline", { required: true }),
        field(log, "baths", "baselineTemperature", { required: true }),
        field(log, "baths", "baselineSetAt", { required: true }),
        field(log, "baths", "baselineSetBy", { isWho: true, suggestions: textsOf(log, "people", "initials") }),
      ],
    },
    {
      legend: "More details",
      folded: true,
      fields: [field(log, "baths", "baselineFrom"), field(log, "baths", "baselineAsRead")],
    },
  ],
  proposals,
  meaning,
};
