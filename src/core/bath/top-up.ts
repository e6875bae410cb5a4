import { checkWithin } from "../limits/domain.ts";
import { DomainError } from "../limits/domain-error.ts";
import { aimedPh, liquidVolume, meterAccuracy, readablePh, shareOfWhole } from "../limits/domains.ts";
import type { CubicMeters, PH } from "../units/quantity.ts";
import { cubicMeters, ph } from "../units/quantity.ts";
import type { Bath } from "./bath.ts";
import { questionOf } from "./bath.ts";
import { isBeyond } from "./meter-noise.ts";
import type { BathQuestion } from "./model/bath-question.ts";
import type { Estimate } from "./model/estimate.ts";
import { answersIfAny } from "./model/estimate.ts";
import { estimateTopUp } from "./model/estimate-top-up.ts";

/** How a bath lost its pH, as far as a shop can say: alkali used up by acid soil, or bath replaced by water. */
export const losses = ["acid", "dilution"] as const;

export interface TopUp {
  readonly low: CubicMeters;
  readonly best: CubicMeters;
  /** No more than the opening dose. */
  readonly high: CubicMeters;
}

const wholeOpeningDose = 1;

/**
 * Refuses a top-up of more than the bath was opened with: such a bath is past topping up, or a reading is wrong.
 *
 * @throws DomainError "no-answer"
 */
export function checkOpeningDoses(share: number): void {
  if (share > wholeOpeningDose) refuseMore(share);
}

/** Beyond it a figure says no more than that something was mistyped. */
const mostTimes = 1000;

function refuseMore(share: number): never {
  const times = share > mostTimes ? `more than ${String(mostTimes)}` : share.toFixed(share < 10 ? 2 : 0);
  throw new DomainError(
    "no-answer",
    `The top-up comes to ${times} times the opening dose, more than the bath was opened with: check reading, meter, temperature and water; if they are right, change the bath.`,
  );
}

/** The readings that a meter may have meant, from the highest to the lowest. */
function readingsMeant(reading: PH, accuracy: number): readonly [highest: PH, lowest: PH] {
  checkWithin("meter accuracy", accuracy, meterAccuracy);
  return [ph(reading + accuracy), ph(Math.max(0, reading - accuracy))];
}

/** What a shop can say of a reading beside its pH. */
export interface AboutReading {
  readonly loss?: (typeof losses)[number] | undefined;
  /** How far the meter may be off, either way; left out: the reading is taken as it is. */
  readonly accuracy?: number;
}

function estimated(question: BathQuestion, reading: PH, { loss, accuracy }: AboutReading): Estimate {
  const meant = accuracy === undefined ? [] : readingsMeant(reading, accuracy);
  const { best, low, high } = estimateTopUp(question, reading, loss);
  if (reading >= question.baseline) return { best, low, high };
  const others = meant.flatMap((one) => answersIfAny(() => [estimateTopUp(question, one, loss)]));
  return {
    best,
    low: Math.min(low, ...others.map((other) => other.low)),
    high: Math.max(high, ...others.map((other) => other.high)),
  };
}

/**
 * Concentrate that brings a bath from a reading at the baseline's temperature back to its baseline, as a share of the
 * opening dose: without a known loss over all of them, and over the readings that the meter may have meant. The
 * baseline, a median of several readings, is taken as it is.
 *
 * @throws OutOfRange for a value outside its domain
 * @throws DomainError "no-answer" where no bath gives these readings or no amount leads back
 */
export function topUpShare(bath: Bath, reading: PH, about: AboutReading = {}): Estimate {
  checkWithin("baseline", bath.baseline, aimedPh);
  checkWithin("reading", reading, readablePh);
  return estimated(questionOf(bath), reading, about);
}

/**
 * Low, best and high of a top-up; undefined where it comes to more than the opening dose, so that a new bath is due.
 *
 * @throws as `topUpShare`
 */
export function topUpIfAny(
  openingDose: CubicMeters,
  bath: Bath,
  reading: PH,
  about: AboutReading = {},
): TopUp | undefined {
  checkWithin("opening dose", openingDose, liquidVolume);
  const { low, best, high } = topUpShare(bath, reading, about);
  if (best > wholeOpeningDose) return undefined;
  return {
    low: cubicMeters(low * openingDose),
    best: cubicMeters(best * openingDose),
    high: cubicMeters(Math.min(wholeOpeningDose, high) * openingDose),
  };
}

/**
 * The same where an answer is wanted.
 *
 * @throws as `topUpShare`, and DomainError "no-answer" where the top-up comes to more than the opening dose
 */
export function topUp(openingDose: CubicMeters, bath: Bath, reading: PH, about: AboutReading = {}): TopUp {
  const amounts = topUpIfAny(openingDose, bath, reading, about);
  return amounts ?? refuseMore(topUpShare(bath, reading, about).best);
}

/**
 * The best estimate alone; 0 where the meter cannot tell the reading from the baseline.
 *
 * @throws as `topUp`, and OutOfRange for an accuracy outside its domain
 */
export function bestTopUp(
  openingDose: CubicMeters,
  bath: Bath,
  reading: PH,
  { loss, accuracy }: Required<AboutReading>,
): CubicMeters {
  checkWithin("meter accuracy", accuracy, meterAccuracy);
  const { best } = topUp(openingDose, bath, reading, { loss });
  return isBeyond(accuracy, bath.baseline - reading) ? best : cubicMeters(0);
}

/**
 * What to add first: never more than the house's share of the opening dose, since reading again
 * after mixing tells more than any estimate.
 *
 * @throws OutOfRange for a share outside its domain
 */
export function firstAddition(openingDose: CubicMeters, best: CubicMeters, houseShare: number): CubicMeters {
  checkWithin("house share", houseShare, shareOfWhole);
  return cubicMeters(Math.min(best, houseShare * openingDose));
}
