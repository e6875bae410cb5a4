import { DomainError } from "../limits/domain-error.ts";
import { chargeStrength } from "../limits/domains.ts";

/** A figure of a concentrate that an extra dose rests on, as a person reads it, and what it may have been meant to be. */
interface ConcentrateFigure {
  readonly figure: string;
  readonly otherwise: string;
}

/** Three figures, without an exponent where one can be avoided. */
export const short = (value: number): string => String(Number(value.toPrecision(3)));

/** Beyond this nobody needs the figure. */
const countable = 1000;

/**
 * Refuses an extra dose that would leave the bath more concentrate than water: the figure of the concentrate is off.
 *
 * @param share extra concentrate per volume of bath
 * @throws DomainError "invalid"
 */
export function checkFits(share: number, { figure, otherwise }: ConcentrateFigure): void {
  if (share <= chargeStrength.high) return;
  const times = share > countable ? `more than ${countable}` : short(share);
  throw new DomainError(
    "invalid",
    `${figure}, so the extra concentrate comes to ${times} times the volume, and a bath is never more concentrate than water. ${otherwise}.`,
  );
}
