import { checkWithin } from "../limits/domain.ts";
import { DomainError } from "../limits/domain-error.ts";
import { plainAmount } from "../limits/domains.ts";

export interface Titres {
  /** Of the bath as opened, of the bath now, and of the water alone; all in one unit and of one sample size. */
  readonly fresh: number;
  readonly now: number;
  readonly blank: number;
}

/**
 * Top-up in the unit of the opening dose: the share of the titre that is gone; 0 where none is.
 *
 * @throws OutOfRange for a value outside its domain
 * @throws DomainError "invalid" where the blank is as large as another titre
 */
export function titratedTopUp(openingDose: number, { fresh, now, blank }: Titres): number {
  checkWithin("opening dose", openingDose, plainAmount);
  checkWithin("fresh titer", fresh, plainAmount);
  checkWithin("titer now", now, plainAmount);
  checkWithin("blank", blank, { ...plainAmount, openLow: false });
  if (blank >= fresh)
    throw new DomainError(
      "invalid",
      "The blank is as large as the titration of the fresh bath; titrate the water alone and the bath as opened",
    );
  if (blank > now) throw new DomainError("invalid", "The blank is larger than the titration now; titrate both again");
  return openingDose * Math.max(0, (fresh - now) / (fresh - blank));
}
