import { celsiusZero } from "../../src/core/units/exact-constants.ts";
import { kelvin } from "../../src/core/units/quantity.ts";
import { optionalQuantity, quantity } from "../quantity-argument.ts";
import { phReading } from "../arguments.ts";

/** Meters are set and baselines read at room temperature where nothing else is said. */
export const roomTemperature = kelvin(celsiusZero + 25);

export const openingDose = quantity("opening_dose", { kind: "volume", help: "concentrate that the bath was opened with" });

export const topUpReading = phReading("reading", "the bath's pH now, at the baseline's temperature");

export const bathTemperature = optionalQuantity("temperature", {
  kind: "temperature",
  help: "temperature of both readings; 25 °C (77 °F) if left out",
});
