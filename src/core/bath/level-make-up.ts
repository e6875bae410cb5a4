import { checkWithin } from "../limits/domain.ts";
import { DomainError } from "../limits/domain-error.ts";
import { amountOrNone, chargeStrength, loadCount, plainAmount } from "../limits/domains.ts";
import type { VolumeFraction } from "../units/quantity.ts";
import { mostCarriedOut } from "./common-practice.ts";

/** What became of a bath's level. All volumes in one unit. */
export interface LevelLoss {
  readonly levelLoss: number;
  readonly loads: number;
  readonly dragOutPerLoad: number;
  readonly drained: number;
}

export interface LevelMakeUp {
  /** Water only. */
  readonly evaporated: number;
  /** Solution that was dragged out and drained. */
  readonly carriedOut: number;
  /** Concentrate that went with it. */
  readonly concentrate: number;
}

const short = (value: number): string => String(Number(value.toPrecision(4)));

/**
 * Splits a fall of level: what was carried out is loads × drag-out + drained, the rest evaporated, none where a little
 * more was carried out than the level fell. The concentrate is carried out × strength.
 *
 * @param strength may be missing where nothing was carried out
 * @throws OutOfRange for a value outside its domain
 * @throws DomainError where much more was carried out than the level fell, or a value that the split needs is missing
 */
export function levelMakeUp(
  { levelLoss, loads, dragOutPerLoad, drained }: LevelLoss,
  strength: VolumeFraction | undefined,
): LevelMakeUp {
  checkWithin("level loss", levelLoss, plainAmount);
  checkWithin("loads", loads, loadCount);
  checkWithin("drag out per load", dragOutPerLoad, amountOrNone);
  checkWithin("drained", drained, amountOrNone);
  if (strength !== undefined) checkWithin("rate", strength, chargeStrength);
  if (loads > 0 && dragOutPerLoad === 0) {
    throw new DomainError(
      "invalid",
      "Drag out per load is blank or 0, but there were loads: every load carries some solution out",
    );
  }
  const carriedOut = loads * dragOutPerLoad + drained;
  if (carriedOut > mostCarriedOut * levelLoss) {
    throw new DomainError(
      "invalid",
      `Level loss is ${short(levelLoss)}, but ${short(carriedOut)} was dragged out and drained: check the units, the levels, and whether water went in meanwhile`,
    );
  }
  const evaporated = Math.max(0, levelLoss - carriedOut);
  if (carriedOut === 0) return { evaporated, carriedOut, concentrate: 0 };
  if (strength === undefined) {
    throw new DomainError(
      "invalid",
      `Rate is blank or 0, but ${short(carriedOut)} was dragged out and drained: the concentrate in it follows from the bath's strength, such as 1+40`,
    );
  }
  return { evaporated, carriedOut, concentrate: carriedOut * strength };
}
