import { fromSi } from "../../src/core/units/convert.ts";
import { defaultUnit } from "../../src/core/units/default-unit.ts";
import { unitBySymbol } from "../../src/core/units/find-unit.ts";
import type { Quantity, QuantityKind } from "../../src/core/units/quantity.ts";
import type { CallContext } from "../define-function.ts";

/** A core result as the number that stands in the cell, in the unit of the call's system. */
export function inSystem<Kind extends QuantityKind>(kind: Kind, value: Quantity<Kind>, call: CallContext): number {
  return fromSi(value, defaultUnit(kind, call.system));
}

/** A core result in one named unit, whatever the system. */
export function inUnit<Kind extends QuantityKind>(kind: Kind, value: Quantity<Kind>, symbol: string): number {
  return fromSi(value, unitBySymbol(symbol, kind));
}
