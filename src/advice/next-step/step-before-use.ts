/** What a bath needs until its baseline is set. */
import { baselineStanding, bench } from "../../joblog/model/words.ts";
import { fewestBaselineReadings } from "../../joblog/sheets/baths/bath-baseline.ts";
import { insteadOfStronger, isAtLabelHighest, labelHighestWords } from "../amounts/label-limit.ts";
import { rowsOfBath } from "../bath-facts.ts";
import { baselineFault, givenBaseline } from "../readings/baseline-written.ts";
import { fixed } from "../wording/figure-words.ts";
import { type Bath, type Step, volumeWords } from "./step.ts";

export function chargeStep({ facts, system }: Bath): Step {
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

export function failedSurfaces({ log, id, facts }: Bath): readonly string[] {
  const since = facts.number("lastConcentrate") ?? 0;
  const latest = new Map<string, string>();
  for (const row of rowsOfBath(log, "benchTests", id)) {
    const { when, surface, result } = row.cells;
    if (typeof when === "number" && when > since && typeof surface === "string")
      latest.set(surface, String(result ?? "no result"));
  }
  return [...latest].filter(([, result]) => result !== "pass").map(([surface, result]) => `${surface} (${result})`);
}

/** Amounts are told to the hundredth of a unit. */
const pourable = 0.005;

export function benchStep(bath: Bath): Step {
  const { facts, system } = bath;
  const planned = facts.number("plannedDose");
  const opening = facts.number("openingDose");
  const missing = planned !== undefined && opening !== undefined ? planned - opening : 0;
  const reached = facts.text("strengthReached");
  if (facts.text("benchState") === bench.refused && missing <= pourable && isAtLabelHighest(facts)) {
    return {
      kind: "bench test",
      sentence: `Bench test not passed on ${failedSurfaces(bath).join(", ")} at the label's highest strength, ${labelHighestWords(facts)}.`,
      reason: insteadOfStronger,
      urgent: true,
    };
  }
  if (facts.text("benchState") === bench.refused) {
    const more =
      missing > pourable
        ? `${volumeWords(missing, system)} more reaches ${facts.text("strength") ?? "the strength wanted"}`
        : "raise the strength a step";
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

/** Somebody writes a baseline down: the log only says what its readings give. */
function writeDownStep({ facts, system }: Bath): Step | undefined {
  const fault = baselineFault(facts, system);
  if (fault?.answer === "written baseline") return { kind: "written baseline", sentence: fault.text, urgent: true };
  const given = facts.text("baselineState") === baselineStanding.unwritten ? givenBaseline(facts) : undefined;
  return given === undefined
    ? undefined
    : {
        kind: "written baseline",
        sentence: `Write down the baseline ${fixed(given.baseline, 2)}.`,
        reason: `The median of the ${String(facts.number("baselineReadings") ?? fewestBaselineReadings)} readings that count; nothing is judged before it is written down.`,
        urgent: true,
      };
}

export function baselineStep(bath: Bath): Step {
  const { facts } = bath;
  const writeDown = writeDownStep(bath);
  if (writeDown !== undefined) return writeDown;
  const taken = facts.number("baselineReadings") ?? 0;
  if (facts.text("baselineState") === baselineStanding.differ) {
    return {
      kind: "baseline",
      sentence:
        "Baseline: the samples differ too much in temperature. Cool them to the same temperature and take the three readings again.",
      urgent: true,
    };
  }
  const left = fewestBaselineReadings - taken;
  return {
    kind: "baseline",
    sentence:
      taken === 0
        ? "Baseline: mix, cool a sample, and take three readings."
        : `Baseline: ${String(left)} more ${left === 1 ? "reading" : "readings"}, then it is set.`,
    reason: "The bath comes back to the median of the three.",
    urgent: false,
  };
}
