/** What the readings and additions of one bath say about what comes, asked of the worksheet functions. */
import { timeLeft } from "../../../functions/threshold/time-left.ts";
import { topUpLearned } from "../../../functions/top-up/top-up-learned.ts";
import type { UnitSystem } from "../../core/units/unit-system.ts";
import type { ColumnId } from "../../joblog/formula/log-names.ts";
import type { LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import { volume as volumeUnit } from "../../joblog/model/units-of.ts";
import { bathState, bench } from "../../joblog/model/words.ts";
import { missingOpening } from "../amounts/planned-dose.ts";
import { askNumber } from "../ask.ts";
import { findRow, type RowFacts, rowFacts, rowsOfBath } from "../bath-facts.ts";
import { shopsMeterAccuracy } from "../shop-values.ts";
import { countOf } from "../wording/figure-words.ts";
import { amount, figure } from "../wording/figures.ts";
import { trendOf } from "./trend-points.ts";

const hoursADay = 24;

/** Anything poured in, and a meter that was adjusted, begins a new trend. */
function trendStart(log: LogSnapshot, bath: string): number {
  const poured = rowsOfBath(log, "additions", bath).map(({ cells }) => cells.when);
  const checked = log.rows.meterChecks.map(({ cells }) => cells.when);
  return [...poured, ...checked].reduce<number>(
    (latest, when) => (typeof when === "number" && when > latest ? when : latest),
    Number.NEGATIVE_INFINITY,
  );
}

/** Hours from the last reading to the trigger at the bath's pace since the last addition; undefined where that has no answer. */
export function hoursLeft(log: LogSnapshot, bath: string): number | undefined {
  const { points, trigger } = trendOf(log, bath);
  const since = trendStart(log, bath);
  const used = points.filter(({ when, comparable }) => comparable && when > since);
  if (trigger === undefined || used.length === 0) return undefined;
  const days = askNumber(timeLeft, {
    times: used.map(({ when }) => [when]),
    readings: used.map(({ ph }) => [ph]),
    trigger,
  });
  return days.known ? days.value * hoursADay : undefined;
}

/** A top-up from here by the response of this bath's own earlier additions; undefined before the first was read. */
export function learnedTopUp(log: LogSnapshot, bath: string, ph: number): number | undefined {
  const row = findRow(log, "baths", "bath", bath);
  const [baseline, openingDose] = (["baseline", "openingDose"] as const).map((id) =>
    row === undefined ? undefined : rowFacts(row).number(id),
  );
  const known = rowsOfBath(log, "additions", bath)
    .map(rowFacts)
    .filter(
      (facts) =>
        facts.text("kind") === "concentrate" &&
        facts.text("purpose") !== "opening" &&
        facts.number("phBefore") !== undefined &&
        facts.number("phAfter") !== undefined,
    );
  if (baseline === undefined || known.length === 0) return undefined;
  const column = (id: ColumnId<"additions">): number[][] => known.map((facts) => [facts.number(id) ?? 0]);
  const answer = askNumber(topUpLearned, {
    baseline,
    reading: ph,
    additions: column("amount"),
    befores: column("phBefore"),
    afters: column("phAfter"),
    opening_dose: openingDose,
    meter_accuracy: shopsMeterAccuracy(log),
  });
  return answer.known ? answer.value : undefined;
}

/** Hours as a person plans with them: no more exact than the trend is. */
function spokenHours(hours: number): string {
  if (hours >= 48) return countOf(figure(hours / hoursADay, 0), "day");
  return hours < 1 ? "less than an hour" : countOf(figure(hours, 0), "hour");
}

/** After a bench test that failed with the planned dose in: how much more the form will propose. */
function stepUp(facts: RowFacts<"baths">, log: LogSnapshot, bath: string, system: UnitSystem): readonly string[] {
  const planned = (facts.number("plannedDose") ?? 0) <= (facts.number("openingDose") ?? 0);
  const more = planned && facts.text("benchState") === bench.refused ? missingOpening(log, bath) : undefined;
  return more === undefined
    ? []
    : [`A step up is ${amount(more)} ${volumeUnit[system]} more: 20 % less water per part of concentrate.`];
}

/** Sentences under the next step: what a step up in strength takes, how long the bath lasts, or what its own additions say of a top-up that is due. */
export function forecast(log: LogSnapshot, bath: string, system: UnitSystem): readonly string[] {
  const row = findRow(log, "baths", "bath", bath);
  const facts = row === undefined ? undefined : rowFacts(row);
  const state = facts?.text("state");
  if (facts !== undefined && state === bathState.benchTest) return stepUp(facts, log, bath, system);
  if (state === bathState.inUse) {
    const hours = hoursLeft(log, bath);
    return hours === undefined || hours === 0
      ? []
      : [
          `At the pace since the last addition: ${spokenHours(hours)} from the last reading to the trigger. Soil does not come evenly, so read before you rely on it.`,
        ];
  }
  const last = trendOf(log, bath)
    .points.filter(({ comparable }) => comparable)
    .at(-1);
  if (state !== bathState.topUp || last === undefined) return [];
  const learned = learnedTopUp(log, bath, last.ph);
  return learned === undefined || learned === 0
    ? []
    : [
        `By what this bath's own additions did: ${amount(learned)} ${volumeUnit[system]} in all, in parts with a reading after each.`,
      ];
}
