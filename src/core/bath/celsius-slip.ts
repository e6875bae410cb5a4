import { DomainError } from "../limits/domain-error.ts";
import { celsiusZero } from "../units/exact-constants.ts";
import type { PH } from "../units/quantity.ts";
import { kelvin } from "../units/quantity.ts";
import type { TriggerQuestion } from "./trigger.ts";
import type { Verdict } from "./verdict.ts";
import { verdict } from "./verdict.ts";

/**
 * The verdict on a reading if the bare number that was taken as °F were °C; undefined where it can hardly be. The
 * reading itself tells: between 60 °F and 60 °C a bath moves by more than a whole pH, so that one which holds at 60 °F
 * would stand far above its own baseline at 60 °C. So an ordinary cool sample is not asked about.
 */
export function verdictIfCelsius(reading: PH, question: TriggerQuestion, number: number): Verdict | undefined {
  if (question.temperatures === undefined) return undefined;
  const temperatures = { ...question.temperatures, reading: kelvin(number + celsiusZero) };
  try {
    const judged = verdict(reading, { ...question, temperatures });
    return judged === "above baseline" ? undefined : judged;
  } catch (refusal) {
    if (refusal instanceof DomainError) return undefined;
    throw refusal;
  }
}
