import { checkWithin } from "../limits/domain.ts";
import { readablePh } from "../limits/domains.ts";
import { roundingError } from "../numeric/rounding-error.ts";
import type { PH } from "../units/quantity.ts";
import { meterAccuracy } from "./common-practice.ts";
import { unspentAt } from "./reading-at.ts";
import type { TriggerQuestion } from "./trigger.ts";
import { trigger } from "./trigger.ts";

/** Common practice, no source. */
const nearness = 0.1;

export type Verdict = "hold" | "near" | "top up" | "re-read" | "above baseline";

/** The most that the unspent bath can read where the reading was taken. */
function highestBaseline({ baseline, temperatures, ...chemistry }: TriggerQuestion): number {
  return temperatures === undefined || temperatures.baseline === temperatures.reading
    ? baseline
    : unspentAt(chemistry, baseline, temperatures.baseline, temperatures.reading).high;
}

/**
 * Judges a reading. "top up" and "hold" are given only where every builder, loss and water that is
 * open would give them; a reading between has to be taken again at the baseline's temperature. One that is above the
 * baseline by more than a meter errs asks for no top-up, but no bath gains pH by itself.
 *
 * @throws OutOfRange for a value outside its domain
 */
export function verdict(reading: PH, question: TriggerQuestion): Verdict {
  checkWithin("reading", reading, readablePh);
  const due = trigger(question);
  if (reading <= due.low + roundingError) return "top up";
  if (reading <= due.high + roundingError) return "re-read";
  if (reading <= due.high + nearness + roundingError) return "near";
  return reading > highestBaseline(question) + meterAccuracy + roundingError ? "above baseline" : "hold";
}
