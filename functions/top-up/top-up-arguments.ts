import { celsiusZero } from "../../src/core/units/exact-constants.ts";
import { kelvin, ph } from "../../src/core/units/quantity.ts";
import { list, numberOf } from "../list-arguments.ts";
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

export const topUpReadings = list("readings", {
  help: "column or row of readings at the baseline's temperature; blanks and headers are skipped",
  unit: "pH",
  read: (cell) => ph(numberOf("readings")(cell)),
});

export const knownDose = quantity("known_dose", { kind: "volume", help: "concentrate in the bath" });

export const knownPh = phReading("known_ph", "pH that this dose gave, at the temperature");
