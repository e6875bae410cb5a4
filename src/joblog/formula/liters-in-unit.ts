import { unitConvert } from "../../../functions/units/unit-convert.ts";
import { joined } from "./arithmetic.ts";
import { call } from "./calls.ts";
import { when } from "./choices.ts";
import { is } from "./conditions.ts";
import type { Expression } from "./expression.ts";
import type { Log } from "./log-names.ts";

/** How many liters one unit of volume of the log is: the US and the imperial gallon need their country, the liter has none. */
export function litersInUnit({ named: { unitSystem } }: Log): Expression {
  return call(unitConvert, {
    value: 1,
    from: when(is(unitSystem, "metric"), "L").otherwise(joined(unitSystem, " gal")),
    to: "L",
  });
}
