/**
 * The next thing to do with a bath, in one sentence with figures. Reads only what the log's own
 * formulas have worked out, so pane and sheet cannot differ.
 */
import type { UnitSystem } from "../core/units/unit-system.ts";
import { findRow, isCellError, lastReadingOf, rowFacts, rowsOfBath, type RowFacts } from "./bath-facts.ts";
import type { LogSnapshot } from "./log-snapshot.ts";
import { days, temperature, volume } from "./units-of.ts";
import { bench } from "./words.ts";

/** What a person would do: the pane offers the form that belongs to it. */
export type StepKind = "opening dose" | "bench test" | "baseline" | "reading" | "top-up" | "closed" | "wait";

export interface NextStep {
  readonly kind: StepKind;
  readonly sentence: string;
  /** A second, quieter sentence: why, or how. */
  readonly reason?: string;
  readonly urgent: boolean;
  /** Things that are late or want a look, each a sentence. */
  readonly overdue: readonly string[];
}

interface Bath {
  readonly id: string;
  readonly facts: RowFacts;
  readonly log: LogSnapshot;
  readonly system: UnitSystem;
}

type Step = Omit<NextStep, "overdue">;

const round = (value: number, digits: number): string => value.toFixed(digits);

/** Volumes as a measuring jug shows them. */
const volumeWords = (value: number, system: UnitSystem): string => `${round(value, 2)} ${volume[system]}`;

/** Trade rule: a baseline is the median of at least three readings. */
const fewestBaselineReadings = 3;

/** Days after which a bath in daily use is old (a technical note on alkaline wash tanks says rarely over a week). */
const longLife = 7;

/** Hours without a reading that make one overdue: one working shift (common practice, no source). */
const shift = 8;

/** Share of the opening dose topped up at which a change-out is worth a thought (common practice, no source). */
const manyTopUps = 1;

function chargeStep({ facts, system }: Bath): Step {
  const dose = facts.number("plannedDose");
  const concentrate = facts.text("concentrate") ?? "concentrate";
  if (dose === undefined) {
    return {
      kind: "opening dose",
      sentence: "Charge the bath: the planned dose is not worked out yet.",
      reason: "The log needs the tank's inside size, and a strength such as 1+28.",
      urgent: false,
    };
  }
  return {
    kind: "opening dose",
    sentence: `Charge: cold water first, then ${volumeWords(dose, system)} of ${concentrate}, mix, then heat.`,
    reason: `For ${facts.text("strength") ?? "the strength wanted"} in ${volumeWords(facts.number("workingVolume") ?? 0, system)}.`,
    urgent: false,
  };
}

function failedSurfaces({ log, id, facts }: Bath): readonly string[] {
  const since = facts.number("lastConcentrate") ?? 0;
  const latest = new Map<string, string>();
  for (const row of rowsOfBath(log, "benchTests", id)) {
    const { when, surface, result } = row.cells;
    if (typeof when === "number" && when > since && typeof surface === "string") latest.set(surface, String(result));
  }
  return [...latest].filter(([, result]) => result !== "pass").map(([surface, result]) => `${surface} (${result})`);
}

function benchStep(bath: Bath): Step {
  const { facts, system } = bath;
  const planned = facts.number("plannedDose");
  const opening = facts.number("openingDose");
  const missing = planned !== undefined && opening !== undefined ? planned - opening : 0;
  const reached = facts.text("strengthReached");
  if (facts.text("benchState") === bench.refused) {
    const more = missing > 0.005 ? `${volumeWords(missing, system)} more reaches ${facts.text("strength") ?? "the strength wanted"}` : "raise the strength a step";
    return {
      kind: "opening dose",
      sentence: `Bench test not passed on ${failedSurfaces(bath).join(", ")}: ${more}, mix, then test again.`,
      ...(reached === undefined ? {} : { reason: `Strength now: ${reached}.` }),
      urgent: true,
    };
  }
  return {
    kind: "bench test",
    sentence: `Bench test: try the bath${reached === undefined ? "" : ` at ${reached}`} on every kind of surface in the load.`,
    reason: "No baseline before every surface passes with the concentrate that is in the tank now.",
    urgent: false,
  };
}

function baselineStep({ facts }: Bath): Step {
  const taken = facts.number("baselineReadings") ?? 0;
  if (facts.text("baselineState") === "temperatures differ") {
    return {
      kind: "baseline",
      sentence: "Baseline: the samples differ too much in temperature. Cool them alike and take the three readings again.",
      urgent: true,
    };
  }
  const left = fewestBaselineReadings - taken;
  return {
    kind: "baseline",
    sentence: taken === 0 ? "Baseline: mix, cool a sample, and take three readings." : `Baseline: ${String(left)} more ${left === 1 ? "reading" : "readings"}, then it is set.`,
    reason: "The bath comes back to the median of the three.",
    urgent: false,
  };
}

function readAgainStep({ facts, log, id, system }: Bath): Step {
  const lastAddition = rowsOfBath(log, "additions", id).filter((row) => row.cells["kind"] === "concentrate").at(-1);
  const added = lastAddition === undefined ? undefined : rowFacts(lastAddition).number("amount");
  const verdict = facts.text("lastVerdict") ?? "";
  if (verdict.startsWith("re-read")) {
    const reading = lastReadingOf(log, id);
    const read = reading === undefined ? undefined : rowFacts(reading).number("temperature");
    const baseline = facts.number("baselineTemperature");
    return {
      kind: "reading",
      sentence: `Read again: cool the sample${baseline === undefined ? "" : ` to ${round(baseline, 0)} ${temperature[system]}`} first.`,
      reason: `The last one${read === undefined ? "" : `, at ${round(read, 1)} ${temperature[system]},`} cannot be judged against the baseline.`,
      urgent: true,
    };
  }
  return {
    kind: "reading",
    sentence: `Mix, then read${added === undefined ? "" : `: ${volumeWords(added, system)} went in since the last reading`}.`,
    reason: "Cool the sample to the temperature of the baseline.",
    urgent: true,
  };
}

function topUpStep({ log, id, system, facts }: Bath): Step {
  const row = lastReadingOf(log, id);
  const reading = row === undefined ? undefined : rowFacts(row);
  const first = reading?.number("firstAddition");
  if (first === undefined) {
    const baseline = facts.number("baselineTemperature");
    return {
      kind: "reading",
      sentence: `A top-up is due. Cool a sample${baseline === undefined ? "" : ` to ${round(baseline, 0)} ${temperature[system]}`} and read again to size it.`,
      urgent: true,
    };
  }
  const low = reading?.number("topUpLow");
  const high = reading?.number("topUpHigh");
  const range = low === undefined || high === undefined ? "" : ` Range ${round(low, 1)} to ${round(high, 1)} ${volume[system]}.`;
  return {
    kind: "top-up",
    sentence: `Top up: add ${volumeWords(first, system)}, mix, read again.${range}`,
    reason: `Last reading ${round(facts.number("lastReading") ?? 0, 2)}, trigger ${round(reading?.number("trigger") ?? facts.number("trigger") ?? 0, 2)}.`,
    urgent: true,
  };
}

function holdStep({ facts, log, id }: Bath): Step {
  const row = lastReadingOf(log, id);
  const reading = row === undefined ? undefined : rowFacts(row);
  const ph = reading?.number("ph");
  const trigger = reading?.number("trigger") ?? facts.number("trigger");
  const room = ph !== undefined && trigger !== undefined ? `${round(ph - trigger, 2)} pH above the trigger` : undefined;
  if (facts.text("lastVerdict") === "near") {
    return { kind: "reading", sentence: `Near the trigger${room === undefined ? "" : `: ${room}`}. Read again after the next load.`, urgent: false };
  }
  return {
    kind: "reading",
    sentence: room === undefined ? "Carry on, and read again before long." : `Carry on: ${room}.`,
    reason: "Next: a reading, with the sample cooled to the temperature of the baseline.",
    urgent: false,
  };
}

function stepFor(bath: Bath): Step {
  switch (bath.facts.text("state")) {
    case "charge":
      return chargeStep(bath);
    case "bench test":
      return benchStep(bath);
    case "baseline":
      return baselineStep(bath);
    case "top up":
      return topUpStep(bath);
    case "re-read":
      return readAgainStep(bath);
    case "in use":
      return holdStep(bath);
    case "closed":
      return { kind: "closed", sentence: `This bath is closed${bath.facts.text("closeReason") === undefined ? "" : `: ${bath.facts.text("closeReason") ?? ""}`}.`, urgent: false };
    default:
      return { kind: "wait", sentence: "The log has not worked out where this bath stands.", reason: "Look at its row on the Baths sheet.", urgent: false };
  }
}

function overdueOf({ facts, log, system }: Bath, now: number): readonly string[] {
  if (facts.text("state") === "closed") return [];
  const late: string[] = [];
  const readAt = facts.number("lastReadingAt");
  if (facts.number("baseline") !== undefined && readAt !== undefined && (now - readAt) * 24 > shift) {
    const hours = (now - readAt) * 24;
    late.push(hours < 48 ? `No reading for ${round(hours, 0)} hours.` : `No reading for ${round(hours / 24, 0)} days.`);
  }
  const open = facts.number("daysOpen");
  if (open !== undefined && open > longLife) late.push(`Open for ${round(open, 0)} ${days[system]}: think of a change-out.`);
  const share = facts.number("topUpShare");
  if (share !== undefined && share >= manyTopUps) late.push(`Top-ups have reached ${round(share * 100, 0)}% of the opening dose: think of a change-out.`);
  const concentrate = findRow(log, "concentrates", "concentrate", facts.text("concentrate") ?? "");
  if (concentrate?.cells["sdsOnFile"] === "no") late.push("No safety data sheet on file for the concentrate.");
  return late;
}

/**
 * The next step of a bath. `now` is an Excel serial number. Throws a RangeError where the log has no
 * bath of that id.
 */
export function nextStep(log: LogSnapshot, bathId: string, system: UnitSystem, now: number): NextStep {
  const row = findRow(log, "baths", "bath", bathId);
  if (row === undefined) throw new RangeError(`The log has no bath "${bathId}".`);
  const unfinished = Object.values(row.cells).find((value) => value === "#BUSY!" || value === "#NAME?" || value === "#GETTING_DATA");
  const bath: Bath = { id: bathId, facts: rowFacts(row), log, system };
  if (unfinished !== undefined) {
    const sentence = unfinished === "#NAME?" ? "Excel does not know the BATH functions yet." : "Excel is still working out the figures.";
    const reason = unfinished === "#NAME?" ? "Keep this pane open for a moment; if it stays so, close and open the workbook." : "This takes a moment.";
    return { kind: "wait", sentence, reason, urgent: false, overdue: [] };
  }
  const faulty = Object.entries(row.cells).find(([, value]) => isCellError(value));
  const overdue = overdueOf(bath, now);
  return { ...stepFor(bath), overdue: faulty === undefined ? overdue : [...overdue, `The Baths sheet shows ${String(faulty[1])} in this bath's row: point at the cell to see why.`] };
}
