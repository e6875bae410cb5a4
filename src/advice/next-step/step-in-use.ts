/** What a bath with a baseline needs. */
import { temperature, volume } from "../../joblog/model/units-of.ts";
import { bench, readingVerdict, recovery } from "../../joblog/model/words.ts";
import { lastReadingOf, type RowFacts, rowFacts, rowsOfBath } from "../bath-facts.ts";
import { baselineFault } from "../readings/baseline-written.ts";
import { unreadAdditions } from "../readings/unread-additions.ts";
import { fixed } from "../wording/figure-words.ts";
import { meterStep } from "./overdue-meter.ts";
import { type Bath, type Step, volumeWords } from "./step.ts";
import { failedSurfaces } from "./step-before-use.ts";

/** What went in since the last reading, concentrate before water: "1.00 gal". */
function pouredSince({ log, id, system }: Bath): string | undefined {
  const since = unreadAdditions(log, id).map(rowFacts);
  const last = since.filter((row) => row.text("kind") === "concentrate").at(-1) ?? since.at(-1);
  const amount = last?.number("amount");
  if (amount === undefined) return undefined;
  return `${volumeWords(amount, system)}${last?.text("kind") === "water" ? " of water" : ""}`;
}

/** A reading that looks like a slip: no advice rests on it. */
function checkStep({ log, id, system }: Bath): Step {
  const row = lastReadingOf(log, id);
  const reading = row === undefined ? undefined : rowFacts(row);
  const [ph, read] = [reading?.number("ph"), reading?.number("temperature")];
  const figures = [
    ...(ph === undefined ? [] : [`pH ${fixed(ph, 2)}`]),
    ...(read === undefined ? [] : [`${fixed(read, 1)} ${temperature[system]}`]),
  ];
  return {
    kind: "reading",
    sentence: `Check the last reading, ${figures.join(" at ")}: ${reading?.text("check") ?? "it looks like a slip"}.`,
    reason: "Correct it, or write “yes” in its Confirmed cell if it was read so, or take another reading.",
    urgent: true,
  };
}

export function readAgainStep(bath: Bath): Step {
  const { facts, log, id, system } = bath;
  const poured = pouredSince(bath);
  const verdict = facts.text("lastVerdict") ?? "";
  if (poured === undefined && verdict === readingVerdict.check) return checkStep(bath);
  if (poured === undefined && verdict.startsWith(readingVerdict.reRead)) {
    const reading = lastReadingOf(log, id);
    const read = reading === undefined ? undefined : rowFacts(reading).number("temperature");
    const baseline = facts.number("baselineTemperature");
    return {
      kind: "reading",
      sentence: `Read again: cool the sample${baseline === undefined ? "" : ` to ${fixed(baseline, 0)} ${temperature[system]}`} first.`,
      reason: `The last one${read === undefined ? "" : `, at ${fixed(read, 1)} ${temperature[system]},`} cannot be judged against the baseline.`,
      urgent: true,
    };
  }
  return {
    kind: "reading",
    sentence: `Mix, then read${poured === undefined ? "" : `: ${poured} went in since the last reading`}.`,
    reason: "Cool the sample to the temperature of the baseline.",
    urgent: true,
  };
}

/** The last top-ups, newest first, for as long as each was read and fell short of the baseline. */
function shortTopUps({ log, id }: Bath): readonly RowFacts<"additions">[] {
  const topUps = rowsOfBath(log, "additions", id)
    .map(rowFacts)
    .filter(({ text }) => text("kind") === "concentrate" && text("purpose") !== "opening");
  const newestFirst = [...topUps].reverse();
  const end = newestFirst.findIndex((facts) => facts.text("recovery") !== recovery.short);
  return end < 0 ? newestFirst : newestFirst.slice(0, end);
}

/** After a top-up the bath is read until it is back near its baseline, though the trigger is far below. */
function shortStep(bath: Bath): Step | undefined {
  const { facts, log, id, system } = bath;
  const row = lastReadingOf(log, id);
  const reading = row === undefined ? undefined : rowFacts(row);
  const baseline = facts.number("baseline");
  const after = reading?.number("phAtBaseline") ?? facts.number("lastReading");
  if (baseline === undefined || after === undefined) return undefined;
  const short = shortTopUps(bath);
  const start = `Not back yet: ${fixed(baseline - after, 2)} pH under the baseline.`;
  const next = reading?.number("firstAddition");
  // Its words stand where the bath hardly answered.
  if (
    next === undefined &&
    short[0]?.text("nextAddition") !== undefined &&
    short[0].number("nextAddition") === undefined
  )
    return {
      kind: "reading",
      sentence: `${start} The last addition hardly moved it.`,
      reason: "Before adding more, check meter, temperature, mixing and water, and read again.",
      urgent: true,
    };
  return {
    kind: "top-up",
    sentence: `${start} Add ${next === undefined ? "again" : volumeWords(next, system)}, mix, read.`,
    ...(short.length > 1
      ? { reason: "Two additions in a row fell short: check meter, temperature, mixing and water before adding more." }
      : {}),
    urgent: true,
  };
}

export function topUpStep(bath: Bath): Step {
  const { log, id, system, facts } = bath;
  const meter = meterStep(bath);
  // A meter put right has its drift taken out; one that is out comes first.
  const out = meter?.kind === "meter check" ? meter : undefined;
  const instead = out ?? (facts.text("lastVerdict") === readingVerdict.notBack ? shortStep(bath) : undefined);
  if (instead !== undefined) return instead;
  const row = lastReadingOf(log, id);
  const reading = row === undefined ? undefined : rowFacts(row);
  const first = reading?.number("firstAddition");
  if (first === undefined) {
    const baseline = facts.number("baselineTemperature");
    return {
      kind: "reading",
      sentence: `A top-up is due. Cool a sample${baseline === undefined ? "" : ` to ${fixed(baseline, 0)} ${temperature[system]}`} and read again to size it.`,
      urgent: true,
    };
  }
  const low = reading?.number("topUpLow");
  const high = reading?.number("topUpHigh");
  const whole =
    low === undefined || high === undefined
      ? ""
      : `${first < low ? "First part of the" : "In all it may need"} ${fixed(low, 1)} to ${fixed(high, 1)} ${volume[system]}${first < low ? " it may need" : ""}. `;
  return {
    kind: "top-up",
    sentence: `Top up: add ${volumeWords(first, system)}, mix, read again.`,
    reason: `${whole}Last reading ${fixed(facts.number("lastReading") ?? 0, 2)}, trigger ${fixed(reading?.number("trigger") ?? facts.number("trigger") ?? 0, 2)}.`,
    urgent: true,
  };
}

/** The pH can be right and the bath fail: hard water, oil or soil that no reading shows. */
function failedStep(bath: Bath): Step | undefined {
  if (bath.facts.text("benchState") !== bench.refused) return undefined;
  return {
    kind: "bench test",
    sentence: `Stop loading: bench test not passed on ${failedSurfaces(bath).join(", ")}. Skim and filter, check the water, correct the bath, then test again.`,
    reason: "A pH above the trigger does not make up for it. If it fails at the baseline, change the bath out.",
    urgent: true,
  };
}

/** A sample that is no check has no verdict: one taken for the baseline may lie under the trigger all the same. */
function underStep(under: number, { facts, system }: Bath): Step {
  const baseline = facts.number("baselineTemperature");
  return {
    kind: "reading",
    sentence: `Read again: the last sample is ${fixed(under, 2)} pH under the trigger.`,
    reason: `It was not taken as a check, so it has no verdict. Cool the next one${baseline === undefined ? "" : ` to ${fixed(baseline, 0)} ${temperature[system]}`} and record it as a check.`,
    urgent: true,
  };
}

/** To hold by a baseline that its own readings contradict is no advice. */
function contradictedStep({ facts, system }: Bath): Step | undefined {
  const fault = baselineFault(facts, system);
  if (fault === undefined || fault.slight) return undefined;
  return {
    kind: fault.answer,
    sentence: fault.text,
    reason: "Until then every verdict goes by what is written down.",
    urgent: true,
  };
}

export function holdStep(bath: Bath): Step {
  const { facts, log, id } = bath;
  const failed = failedStep(bath) ?? contradictedStep(bath);
  if (failed !== undefined) return failed;
  const meter = meterStep(bath);
  if (meter !== undefined) return meter;
  const row = lastReadingOf(log, id);
  const reading = row === undefined ? undefined : rowFacts(row);
  // The verdict, too, goes by the pH with the meter's drift taken out.
  const ph = reading?.number("phCorrected") ?? reading?.number("ph");
  const trigger = reading?.number("trigger") ?? facts.number("trigger");
  if (ph !== undefined && trigger !== undefined && ph < trigger) return underStep(trigger - ph, bath);
  const room = ph !== undefined && trigger !== undefined ? `${fixed(ph - trigger, 2)} pH above the trigger` : undefined;
  if (facts.text("lastVerdict") === readingVerdict.near) {
    return {
      kind: "reading",
      sentence: `Near the trigger${room === undefined ? "" : `: ${room}`}. Read again after the next load.`,
      urgent: false,
    };
  }
  return {
    kind: "reading",
    sentence: room === undefined ? "Keep going. Take another reading soon." : `Keep going: ${room}.`,
    reason: "Next: a reading, with the sample cooled to the temperature of the baseline.",
    urgent: false,
  };
}
