import type { TriggerQuestion } from "../../src/core/bath/trigger.ts";
import { DomainError } from "../../src/core/limits/domain-error.ts";
import type { Kelvin } from "../../src/core/units/quantity.ts";

/** Both temperatures, or none: one alone leaves open what it is to be compared with. */
export function temperaturePair(
  baseline: Kelvin | undefined,
  reading: Kelvin | undefined,
): TriggerQuestion["temperatures"] {
  if (baseline !== undefined && reading !== undefined) return { baseline, reading };
  if (baseline === undefined && reading === undefined) return undefined;
  const missing = baseline === undefined ? "Baseline temperature" : "Reading temperature";
  throw new DomainError("invalid", `${missing} is blank or 0; give both temperatures or neither.`);
}
