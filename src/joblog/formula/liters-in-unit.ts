import { fromSi, toSi } from "../../core/units/convert.ts";
import { unitBySymbol } from "../../core/units/find-unit.ts";
import { when } from "./choices.ts";
import { is } from "./conditions.ts";
import type { Expression } from "./expression.ts";
import type { Log } from "./log-names.ts";

function litersIn(symbol: string): number {
  return fromSi(toSi(1, unitBySymbol(symbol, "volume")), unitBySymbol("L", "volume"));
}

/** How many liters one unit of volume of the log is. As figures: a function would stand between others that wait for it. */
export function litersInUnit({ named: { unitSystem } }: Log): Expression {
  return when(is(unitSystem, "metric"), 1)
    .when(is(unitSystem, "imperial"), litersIn("imperial gal"))
    .otherwise(litersIn("US gal"));
}
