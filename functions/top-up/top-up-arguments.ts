import { ph } from "../../src/core/units/quantity.ts";
import { phReading } from "../arguments/arguments.ts";
import { linesOfTable, list, numberOf } from "../arguments/list-arguments.ts";
import { quantity } from "../arguments/quantity-argument.ts";
import { temperatureOf } from "../arguments/temperature-argument.ts";

export const openingDose = quantity("opening_dose", {
  kind: "volume",
  help: "concentrate that the bath was opened with",
});

export const topUpReading = phReading("reading", "the bath's pH now, at the baseline's temperature");

export const bathTemperature = temperatureOf("both readings", true);

export const topUpReadings = linesOfTable(
  list("readings", {
    help: "column or row of readings at the baseline's temperature; blanks and a header on top are skipped",
    unit: "pH",
    read: (cell) => ph(numberOf("readings")(cell)),
  }),
);

export const knownDose = quantity("known_dose", { kind: "volume", help: "concentrate in the bath" });

export const knownPh = phReading("known_ph", "pH that this dose gave, at the temperature");
