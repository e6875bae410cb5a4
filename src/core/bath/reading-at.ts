import type { BathQuestion } from "../bath-chemistry/bath-question.ts";
import { answersIfAny } from "../bath-chemistry/estimate.ts";
import type { Estimate } from "../bath-chemistry/estimate.ts";
import { estimateReadingAt } from "../bath-chemistry/estimate-reading.ts";
import { checkWithin } from "../domain.ts";
import { bathTemperature, readablePh } from "../domains.ts";
import type { Kelvin, PH } from "../units/quantity.ts";
import { questionOf } from "./bath.ts";
import type { Bath } from "./bath.ts";

function inOtherWater(question: BathQuestion, reading: PH, temperature: Kelvin): readonly Estimate[] {
  const likely = question.water.otherwise;
  if (likely === undefined) return [];
  return answersIfAny(() => [estimateReadingAt({ ...question, water: { likely } }, reading, temperature)]);
}

/**
 * What a bath reads at another temperature, with a perfect meter, once it would read `reading` at the
 * baseline's temperature; the best figure is for the likely water, the range also for untested water.
 *
 * @throws OutOfRange for a value outside its domain
 * @throws DomainError "no-answer" where no bath gives these readings
 */
export function readingAt(bath: Bath, reading: PH, temperature: Kelvin): Estimate {
  checkWithin("reading", reading, readablePh);
  checkWithin("reading temperature", temperature, bathTemperature);
  const question = questionOf(bath);
  const likely = estimateReadingAt(question, reading, temperature);
  const all = bath.alkalinity === undefined ? [likely, ...inOtherWater(question, reading, temperature)] : [likely];
  return {
    low: Math.min(...all.map(({ low }) => low)),
    best: likely.best,
    high: Math.max(...all.map(({ high }) => high)),
  };
}
