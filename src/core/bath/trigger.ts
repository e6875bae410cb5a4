import { checkWithin } from "../domain.ts";
import { currentModel } from "./current-model.ts";
import { liquidTemperature, phDrop, readablePh, waterAlkalinity } from "../domains.ts";
import { ph } from "../units/quantity.ts";
import type { BathChemistry, Estimate } from "./bath-model.ts";
import type { Kelvin, PH } from "../units/quantity.ts";

/** Half a point: common practice, no source. */
export const usualDrop = 0.5;

export interface TriggerQuestion extends BathChemistry {
  readonly baseline: PH;
  readonly drop: number;
  /** Absent: the reading is at the baseline's temperature. */
  readonly temperatures: { readonly baseline: Kelvin; readonly reading: Kelvin } | undefined;
}

/**
 * The pH at which a top-up is due, as read at the temperature of the reading: baseline − drop, moved
 * to that temperature.
 *
 * @throws OutOfRange for a value outside its domain
 */
export function trigger(question: TriggerQuestion): Estimate {
  checkWithin("baseline", question.baseline, readablePh);
  checkWithin("drop", question.drop, { ...phDrop, high: Math.min(phDrop.high, question.baseline) });
  const due = ph(question.baseline - question.drop);
  if (question.alkalinity !== undefined) checkWithin("alkalinity", question.alkalinity, waterAlkalinity);
  if (question.temperatures === undefined) return { low: due, best: due, high: due };
  checkWithin("baseline temperature", question.temperatures.baseline, liquidTemperature);
  checkWithin("reading temperature", question.temperatures.reading, liquidTemperature);
  return currentModel.phAt(question, due, question.temperatures.baseline, question.temperatures.reading);
}
