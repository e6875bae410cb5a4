import { celsiusZero } from "../../src/core/units/exact-constants.ts";
import type { Kelvin } from "../../src/core/units/quantity.ts";
import { kelvin } from "../../src/core/units/quantity.ts";
import type { Argument } from "../define-function.ts";
import { optionalQuantity } from "./quantity-argument.ts";

/** Meters are set and baselines read at room temperature where nothing else is said. */
const roomTemperature = kelvin(celsiusZero + 25);

/** An optional temperature that is room temperature where it is left out; `what` has it. `ofSample`: it comes from a wash bath. */
export function temperatureOf(what: string, ofSample = false): Argument<Kelvin, "temperature"> {
  const given = optionalQuantity("temperature", {
    kind: "temperature",
    help: `temperature of ${what}; 25 °C (77 °F) if left out`,
    ofSample,
  });
  return { ...given, read: (input, call) => given.read(input, call) ?? roomTemperature };
}
