import { fromSi, toSi } from "../../core/units/convert.ts";
import { unitBySymbol } from "../../core/units/find-unit.ts";

/** As calcium carbonate. */
export const milligramsPerEquivalent = fromSi(
  toSi(1000, unitBySymbol("meq/L", "alkalinity")),
  unitBySymbol("mg/L CaCO3", "alkalinity"),
);
