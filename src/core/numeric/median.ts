import { DomainError } from "../limits/domain-error.ts";

/**
 * The middle of some values, of an even count the mean of the two in the middle; never −0.
 *
 * @throws DomainError "no-answer" for no values
 */
export function median(values: ArrayLike<number>): number {
  const sorted = Float64Array.from(values).sort();
  const upper = sorted[Math.floor(sorted.length / 2)];
  const lower = sorted[Math.floor((sorted.length - 1) / 2)];
  if (upper === undefined || lower === undefined)
    throw new DomainError("no-answer", "A middle value takes one value at least");
  // Adding 0 turns the −0 of a level run of values into 0.
  return (lower + upper) / 2 + 0;
}
