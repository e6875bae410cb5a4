import { EyedropperRegular } from "@fluentui/react-icons/svg/eyedropper";

import { levelDoubts, levelProblems } from "../../../../advice/amounts/tank-limits.ts";
import { lastReadingOf, type RowFacts } from "../../../../advice/bath-facts.ts";
import { bathFacts } from "../../../../advice/bath-values.ts";
import { completedRow, type DraftedRow, draftedRow } from "../../../../advice/drafted-row.ts";
import type { FilledFields } from "../../../../advice/filled-fields.ts";
import type { Finding } from "../../../../advice/finding.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import { phForRecovery } from "../../../../advice/readings/at-baseline.ts";
import { baselineFault } from "../../../../advice/readings/baseline-written.ts";
import { judgeReading } from "../../../../advice/readings/judge-reading.ts";
import { judgeRecovery } from "../../../../advice/readings/judge-recovery.ts";
import { unreadTopUp } from "../../../../advice/readings/unread-additions.ts";
import { degrees, ph } from "../../../../advice/wording/figures.ts";
import type { ColumnId } from "../../../../joblog/formula/log-names.ts";
import type { SnapshotRow } from "../../../../joblog/model/log-snapshot.ts";
import { temperature as temperatureUnit } from "../../../../joblog/model/units-of.ts";
import { readingPurposes } from "../../../../joblog/model/words.ts";
import type { Draft, EntryForm, Meaning } from "../../entry-form.ts";
import { field, type FieldChange } from "../../fields-of.ts";
import { newRow } from "../../new-rows.ts";
import { reading } from "../../step-forms.ts";
import { meterDoubts } from "../meter-check/meter-doubts.ts";
import { readingDetails } from "./reading-details.ts";
import { sampleDoubts, slipDoubts } from "./reading-doubts.ts";

/** Baselines have a form of their own that takes three at once. */
const purposes = readingPurposes.filter((purpose) => purpose !== "baseline");

const asRead = ["ph", "temperature", "purpose", "when", "bath"] as const;

/** What the form asks for otherwise than the log does. */
function changeOf(id: ColumnId<"readings">, values: Draft): FieldChange {
  if (id === "ph") return { required: true };
  if (id === "temperature") return { required: values["purpose"] !== "rinse" };
  return id === "purpose" ? { choices: purposes } : {};
}

/** The addition that the reading answers as it will stand; where none waits for one, a top-up of which only that reading is known. */
function answered(
  topUp: SnapshotRow<"additions"> | undefined,
  bath: string | undefined,
  phAfter: number,
  { log }: LogContext,
): DraftedRow<"additions"> {
  return topUp === undefined
    ? draftedRow(log, "additions", { bath, kind: "concentrate", purpose: "top-up", phAfter })
    : completedRow(log, "additions", topUp, { phAfter });
}

function recoveryFindings(
  facts: RowFacts<"baths">,
  reading: DraftedRow<"readings">,
  topUp: SnapshotRow<"additions"> | undefined,
  context: LogContext,
): readonly Finding[] {
  const after = phForRecovery(reading);
  if (after !== undefined) return judgeRecovery(facts, answered(topUp, reading.text("bath"), after, context), context);
  const to = facts.number("baselineTemperature");
  if (to === undefined) return [];
  return [
    {
      tone: "watch",
      text: `Only a sample cooled to ${degrees(to)} ${temperatureUnit[context.system]} shows whether the top-up was enough.`,
    },
  ];
}

function findingsOf(
  facts: RowFacts<"baths">,
  reading: DraftedRow<"readings">,
  topUp: SnapshotRow<"additions"> | undefined,
  context: LogContext,
): readonly Finding[] {
  const purpose = reading.text("purpose");
  if (purpose === "rinse") return [{ tone: "plain", text: "A rinse is not judged against the baseline." }];
  if (reading.number("ph") === undefined) return [];
  if (reading.number("temperature") === undefined)
    return [
      {
        tone: "watch",
        text: "Without the sample's temperature the reading cannot be judged: the same bath reads lower when hot.",
      },
    ];
  const afterTopUp = purpose === "after top-up";
  const recovery = afterTopUp ? recoveryFindings(facts, reading, topUp, context) : [];
  const fault = baselineFault(facts, context.system);
  const contradicted: readonly Finding[] = fault === undefined ? [] : [{ tone: "watch", text: fault.text }];
  return [...contradicted, ...recovery, ...judgeReading(facts, reading, afterTopUp, context)];
}

/** The reading itself, so that the confirmation shows what stands in the sheet. */
function recordedWords({ number, text }: FilledFields<ColumnId<"readings">>, { system }: LogContext): string {
  const [value, sample] = [number("ph"), number("temperature")];
  const read = value === undefined ? "reading" : `pH ${ph(value)}`;
  const at = sample === undefined ? "" : ` at ${degrees(sample)} ${temperatureUnit[system]}`;
  return `${read}${at}, ${text("purpose") ?? ""} of bath ${text("bath") ?? ""}`;
}

function meaning(filled: FilledFields<ColumnId<"readings">>, context: LogContext, typed: Draft): Meaning {
  const { log } = context;
  const bath = filled.text("bath");
  const facts = bathFacts(log, bath);
  const purpose = filled.text("purpose");
  const asTyped = newRow("readings", filled, context);
  // What is asked about here, or was typed with its unit, the sheet need not ask about again.
  const isSlip = draftedRow(log, "readings", asTyped.row).text("check") !== undefined;
  const added = isSlip ? newRow("readings", filled, context, { confirmed: "yes" }) : asTyped;
  const reading = draftedRow(log, "readings", added.row);
  const topUp = bath === undefined || purpose !== "after top-up" ? undefined : unreadTopUp(log, bath);
  const phAfter = facts === undefined ? undefined : phForRecovery(reading);
  const completes = topUp !== undefined && topUp.cells.phAfter === undefined && phAfter !== undefined;
  const key = topUp?.cells.id;
  // No verdict and no amount to pour before it is settled what was read.
  const slips: readonly Finding[] =
    purpose === "rinse" ? [] : slipDoubts(facts, filled, typed, context).map((text) => ({ tone: "watch", text }));
  return {
    findings: facts === undefined ? [] : slips.length > 0 ? slips : findingsOf(facts, reading, topUp, context),
    problems: levelProblems("level", "Level", filled.number("level"), bath, context),
    doubts: [
      ...(purpose === "rinse"
        ? []
        : [...sampleDoubts(facts, filled, typed, context), ...meterDoubts(filled, false, context)]),
      ...levelDoubts(filled.number("level"), bath, context),
    ],
    rows: [added],
    ...(completes && key !== undefined
      ? { fills: [{ table: "additions", key: String(key), cells: { phAfter } }] }
      : {}),
    recorded: recordedWords(filled, context),
  };
}

/** One reading, judged while it is typed. */
export const readingEntry: EntryForm<"reading"> = {
  ...reading,
  icon: EyedropperRegular,
  purpose: "pH as the meter shows it, with the temperature of the sample.",
  submit: "Record reading",
  groups: (values, { log }) => [
    { fields: asRead.map((id) => field(log, "readings", id, changeOf(id, values))) },
    {
      legend: "More details",
      folded: true,
      fields: readingDetails(log),
    },
  ],
  proposals: (typed, context) => {
    const bath = typed["bath"] ?? context.bath ?? "";
    const last = bath === "" ? undefined : lastReadingOf(context.log, bath);
    const afterTopUp = bath !== "" && unreadTopUp(context.log, bath) !== undefined;
    return {
      bath,
      when: context.now,
      purpose: afterTopUp ? "after top-up" : "check",
      meter: String(last?.cells.meter ?? ""),
    };
  },
  meaning,
};
