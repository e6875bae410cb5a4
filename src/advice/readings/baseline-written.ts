/** A bath's baseline as it is written down, and where its readings contradict what stands there. */
import type { UnitSystem } from "../../core/units/unit-system.ts";
import type { LogRow } from "../../joblog/model/definition.ts";
import { temperature as temperatureUnit } from "../../joblog/model/units-of.ts";
import { baselineStanding } from "../../joblog/model/words.ts";
import type { RowFacts } from "../bath-facts.ts";
import { degrees, ph } from "../wording/figures.ts";

/** What the readings that count give, by the sheet's own columns. */
export interface GivenBaseline {
  readonly baseline: number;
  readonly temperature: number;
  readonly asRead: number;
}

type BathFacts = Pick<RowFacts<"baths">, "number" | "text">;

/** Without what binary fractions leave behind. */
const plain = (value: number): number => Number(value.toFixed(6));

/** Undefined as long as there are too few readings, or their temperatures differ too much. */
export function givenBaseline(bath: BathFacts): GivenBaseline | undefined {
  const [baseline, temperature, asRead] = (["baselineGiven", "temperatureGiven", "asReadGiven"] as const).map(
    bath.number,
  );
  if (baseline === undefined || temperature === undefined) return undefined;
  return {
    baseline: plain(baseline),
    temperature: plain(temperature),
    asRead: plain(asRead ?? baseline),
  };
}

interface Written {
  readonly at: number | undefined;
  readonly by: string | undefined;
  readonly from: readonly string[];
}

/** The cells of the bath's row that say so. */
export function baselineCells(
  { baseline, temperature, asRead }: GivenBaseline,
  { at, by, from }: Written,
): LogRow<"baths"> {
  return {
    baseline,
    baselineTemperature: temperature,
    baselineSetAt: at,
    baselineSetBy: by,
    baselineFrom: from.join(", "),
    baselineAsRead: asRead,
  };
}

/** How the readings contradict the baseline that is written down, and what a person would do about it. */
export interface BaselineFault {
  readonly text: string;
  /** Whether another figure is to be written down, or other readings are to be taken. */
  readonly answer: "written baseline" | "baseline";
  /** By so little that a meter in order would show it too. */
  readonly slight: boolean;
}

/** A pH meter in order repeats to about this (common practice, no source). */
const repeatable = 0.05;

/** Undefined where the readings give what is written down, and where nothing is. */
export function baselineFault(bath: BathFacts, system: UnitSystem): BaselineFault | undefined {
  const [state, written] = [bath.text("baselineState"), bath.number("baseline")];
  if (state === undefined || written === undefined || state === baselineStanding.set) return undefined;
  const [given, ofReadings] = [bath.number("baselineGiven"), bath.number("temperatureGiven")];
  const [stands, unit] = [`The baseline is written down as ${ph(written)}`, temperatureUnit[system]];
  const choice = "Write that down, or correct the reading that was noted wrong.";
  if (state === baselineStanding.noTemperature)
    return {
      text: `${stands} without a temperature, so nothing is judged by it.`,
      answer: "written baseline",
      slight: false,
    };
  if (state.startsWith(baselineStanding.otherPh) && given !== undefined)
    return {
      text: `${stands}; its readings give ${ph(given)}. ${choice}`,
      answer: "written baseline",
      slight: Math.abs(given - written) < repeatable,
    };
  if (state.startsWith(baselineStanding.otherTemperature) && ofReadings !== undefined)
    return {
      text: `${stands} at ${degrees(bath.number("baselineTemperature") ?? 0)} ${unit}; its readings were at ${degrees(ofReadings)} ${unit}. ${choice}`,
      answer: "written baseline",
      slight: true,
    };
  const because =
    state === baselineStanding.older
      ? "before the last opening dose. Take a new one."
      : state === baselineStanding.differ
        ? "and the temperatures of its readings differ too much. Correct the one that was noted wrong, or take it again."
        : `and of its readings ${String(bath.number("baselineReadings") ?? 0)} count. Take it again.`;
  return { text: `${stands}, ${because}`, answer: "baseline", slight: false };
}
