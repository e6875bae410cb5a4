import { checkWithin } from "../limits/domain.ts";
import { bathTemperature, readablePh } from "../limits/domains.ts";
import { memoize } from "../numeric/bounded-cache.ts";
import type { Kelvin, PH } from "../units/quantity.ts";
import type { Bath, BathChemistry } from "./bath.ts";
import { questionOf, softenedQuestionOf } from "./bath.ts";
import type { Estimate } from "./model/estimate.ts";
import { answersIfAny } from "./model/estimate.ts";
import { estimateReadingAt } from "./model/estimate-reading.ts";

interface ReadingQuestion {
  readonly bath: Bath;
  readonly reading: PH;
  readonly temperature: Kelvin;
}

/** A log asks for the trigger and the verdict of every row, at temperatures to a tenth of a degree. */
const questionsKept = 1024;

function keyOf({ bath, reading, temperature }: ReadingQuestion): string {
  return `${bath.builder.id} ${bath.alkalinity ?? "?"} ${bath.baseline} ${bath.temperature} ${reading} ${temperature}`;
}

function inSoftenedWater({ bath, reading, temperature }: ReadingQuestion): readonly Estimate[] {
  const softened = softenedQuestionOf(bath);
  return softened === undefined ? [] : answersIfAny(() => [estimateReadingAt(softened, reading, temperature)]);
}

const remembered = memoize(questionsKept, keyOf, (question: ReadingQuestion): Estimate => {
  const { bath, reading, temperature } = question;
  const likely = estimateReadingAt(questionOf(bath), reading, temperature);
  const all = [likely, ...inSoftenedWater(question)];
  return {
    low: Math.min(...all.map(({ low }) => low)),
    best: likely.best,
    high: Math.max(...all.map(({ high }) => high)),
  };
});

/**
 * What a bath reads at another temperature, with a perfect meter, once it would read `reading` at the
 * baseline's temperature. Where its water was not tested the best figure is for pure water, and the range
 * reaches to a softened one.
 *
 * @throws OutOfRange for a value outside its domain
 * @throws DomainError "no-answer" where no bath gives these readings
 */
export function readingAt(bath: Bath, reading: PH, temperature: Kelvin): Estimate {
  checkWithin("reading", reading, readablePh);
  checkWithin("reading temperature", temperature, bathTemperature);
  return remembered({ bath, reading, temperature });
}

/**
 * What an unspent bath of some pH reads at another temperature, with a perfect meter.
 *
 * @throws as `readingAt`
 */
export function unspentAt(chemistry: BathChemistry, reading: PH, from: Kelvin, to: Kelvin): Estimate {
  checkWithin("ph", reading, readablePh);
  checkWithin("from temperature", from, bathTemperature);
  checkWithin("to temperature", to, bathTemperature);
  return readingAt({ ...chemistry, baseline: reading, temperature: from }, reading, to);
}
