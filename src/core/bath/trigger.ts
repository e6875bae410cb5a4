import { checkWithin } from "../limits/domain.ts";
import { bathTemperature, phDrop, readablePh, waterAlkalinity } from "../limits/domains.ts";
import type { Kelvin, PH } from "../units/quantity.ts";
import { ph } from "../units/quantity.ts";
import type { BathChemistry } from "./bath.ts";
import type { Estimate } from "./model/estimate.ts";
import { readingAt } from "./reading-at.ts";

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
 * @throws DomainError "no-answer" where no bath of this builder gives the baseline
 */
export function trigger({ baseline, drop, temperatures, builder, alkalinity }: TriggerQuestion): Estimate {
  checkWithin("baseline", baseline, readablePh);
  checkWithin("drop", drop, { ...phDrop, high: Math.min(phDrop.high, baseline) });
  if (alkalinity !== undefined) checkWithin("alkalinity", alkalinity, waterAlkalinity);
  const due = ph(baseline - drop);
  if (temperatures !== undefined) {
    checkWithin("baseline temperature", temperatures.baseline, bathTemperature);
    checkWithin("reading temperature", temperatures.reading, bathTemperature);
  }
  if (temperatures === undefined || temperatures.baseline === temperatures.reading)
    return { low: due, best: due, high: due };
  return readingAt({ baseline, temperature: temperatures.baseline, builder, alkalinity }, due, temperatures.reading);
}
