import type { Kelvin, PH } from "../units/quantity.ts";
import type { Composition, MutableComposition } from "./composition.ts";
import { combineInto, nothingDissolved } from "./composition.ts";
import { seekAmount } from "./equilibrium/seek-amount.ts";
import { setTotalsAlong, startCold } from "./equilibrium/start.ts";
import type { Solids } from "./equilibrium/sweep.ts";
import { beginSweep, sweepAcid } from "./equilibrium/sweep.ts";
import { rootOfRising } from "./root-of-rising.ts";

/** How much of one composition, added to another, gives a pH. */
export interface AmountQuestion {
  readonly base: Composition;
  /** What one unit of the amount adds; components that it takes away are negative. */
  readonly direction: Composition;
  /** Whether the amount raises pH or lowers it. */
  readonly effect: "raises" | "lowers";
  readonly temperature: Kelvin;
  readonly target: PH;
  readonly solids: Solids;
  /** Where to start, positive, and where to stop looking. */
  readonly guess: number;
  readonly most: number;
}

/** In case the quick search finds nothing: the acid that the target calls for, followed along the line. */
function alongChords(question: AmountQuestion): number | undefined {
  const { base, direction, target, most } = question;
  const sign = question.effect === "raises" ? 1 : -1;
  const mixture: MutableComposition = { ...nothingDissolved };
  combineInto(mixture, 1, base, question.guess, direction);
  const sweep = beginSweep(mixture, question.temperature, question.solids);
  const rising = (amount: number): number => {
    combineInto(mixture, 1, base, amount, direction);
    return sign * sweepAcid(sweep, mixture, target);
  };
  const atZero = rising(0);
  return atZero >= 0 ? 0 : rootOfRising(rising, atZero, question.guess / 2, most);
}

/**
 * The amount that gives the target pH; 0 where the base is at or beyond it, undefined where even the most
 * falls short. Totals along the line must not turn negative.
 */
export function amountAtPH(question: AmountQuestion): number | undefined {
  if (question.solids !== "none") return alongChords(question);
  const { base, direction, target, guess, most } = question;
  const mixture: MutableComposition = { ...nothingDissolved };
  combineInto(mixture, 1, base, guess, direction);
  const { system } = beginSweep(mixture, question.temperature, "none");
  setTotalsAlong(system, base, direction, guess);
  startCold(system, target);
  return seekAmount(system, base, direction, guess, most) ?? alongChords(question);
}
