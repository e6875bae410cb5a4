import { checkWithin } from "../limits/domain.ts";
import { waterHardness } from "../limits/domains.ts";
import { roundingError } from "../numeric/rounding-error.ts";
import { fromSi } from "../units/convert.ts";
import { unitBySymbol } from "../units/find-unit.ts";
import type { Hardness } from "../units/quantity.ts";

export const hardnessSchemes = ["USGS", "WQA"] as const;

export type HardnessScheme = (typeof hardnessSchemes)[number];

interface Scheme {
  /** Unit in which the limits are published. */
  readonly unit: string;
  readonly classes: readonly { readonly name: string; readonly upTo: number; readonly limitBelongsAbove?: boolean }[];
}

/**
 * USGS: 0 to 60, 61 to 120, 121 to 180, more than 180 mg/L as calcium carbonate; a value between two
 * printed limits belongs to the harder class. Water Quality Association: below 1, 1 to 3.5, 3.5 to 7,
 * 7 to 10.5, above 10.5 grains per US gallon.
 */
const schemes: Readonly<Record<HardnessScheme, Scheme>> = {
  USGS: {
    unit: "mg/L CaCO3",
    classes: [
      { name: "soft", upTo: 60 },
      { name: "moderately hard", upTo: 120 },
      { name: "hard", upTo: 180 },
      { name: "very hard", upTo: Infinity },
    ],
  },
  WQA: {
    unit: "gpg",
    classes: [
      { name: "soft", upTo: 1, limitBelongsAbove: true },
      { name: "slightly hard", upTo: 3.5 },
      { name: "moderately hard", upTo: 7 },
      { name: "hard", upTo: 10.5 },
      { name: "very hard", upTo: Infinity },
    ],
  },
};

/**
 * The class of a water in words.
 *
 * @throws OutOfRange for a hardness outside its domain
 */
export function hardnessClass(hardness: Hardness, scheme: HardnessScheme): string {
  checkWithin("hardness", hardness, waterHardness);
  const { unit, classes } = schemes[scheme];
  const value = fromSi(hardness, unitBySymbol(unit, "hardness"));
  const found = classes.find(({ upTo, limitBelongsAbove }) =>
    limitBelongsAbove === true ? value < upTo - roundingError : value <= upTo + roundingError,
  );
  return found?.name ?? "very hard";
}
