import type { Composition } from "../../chemistry/composition.ts";
import { componentNames } from "../../chemistry/composition.ts";
import type { Solids } from "../../chemistry/equilibrium/sweep.ts";
import { checkComposition, checkPH, checkTemperature } from "../../chemistry/limits.ts";
import { memoize } from "../../numeric/bounded-cache.ts";
import type { Kelvin, PH } from "../../units/quantity.ts";
import type { Builder } from "./builder.ts";
import type { CalibratedBath } from "./calibrated-bath.ts";
import { calibrateBath } from "./calibrated-bath.ts";
import { answersOf } from "./estimate.ts";
import type { Water } from "./water.ts";

/** What a shop knows of a bath: a dose of some concentrate in its water gave this pH at this temperature. */
export interface BathQuestion {
  readonly baseline: PH;
  readonly temperature: Kelvin;
  readonly builder: Builder;
  readonly water: Water;
  /** Whether calcite and brucite may form; they do not when left out. */
  readonly solids?: Solids;
  /** Volume of concentrate per volume of opened bath, where it is known. */
  readonly openingShare?: number;
}

/** Shops run at one part in a hundred to one in forty, seldom above one in twenty-five; common practice, no source. */
const typicalOpeningShare = 0.015;
export const smallestOpeningShare = 0;
export const largestOpeningShare = 0.04;

/** A log holds the baths of some months. */
const questionsKept = 64;

function keyOfComposition(composition: Composition | undefined): string {
  return composition === undefined ? "-" : componentNames.map((name) => composition[name]).join();
}

/** One text for all questions that have the same answers. */
export function keyOfQuestion({ baseline, temperature, builder, water, solids, openingShare }: BathQuestion): string {
  return `${baseline} ${temperature} ${builder.id} ${solids ?? "-"} ${openingShare ?? "-"} ${keyOfComposition(water.likely)} ${keyOfComposition(water.otherwise)}`;
}

function anchorCandidates(question: BathQuestion): readonly CalibratedBath[] {
  checkPH(question.baseline, "Baseline pH");
  checkTemperature(question.temperature);
  const { baseline, temperature } = question;
  const water = question.water.likely;
  checkComposition(water);
  const solids = question.solids ?? "none";
  const openingShare = question.openingShare ?? typicalOpeningShare;
  return answersOf(question.builder.candidates, (builder) =>
    calibrateBath({ baseline, temperature, builder, water, solids, openingShare }),
  );
}

/**
 * The bath calibrated on its baseline, once for every candidate of the builder that can reach it. Throws
 * `invalid` for arguments out of range and `no-answer` where no candidate gives the baseline.
 */
export const anchoredBaths: (question: BathQuestion) => readonly CalibratedBath[] = memoize(
  questionsKept,
  keyOfQuestion,
  anchorCandidates,
);
