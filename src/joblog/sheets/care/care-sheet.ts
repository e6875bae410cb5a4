import { cautionsOfSheet } from "../../../core/safety/caution-places.ts";
import { keyInput, momentInput, numberInput, textInput, wordInput } from "../../model/columns.ts";
import type { InputColumn, SheetDefinition } from "../../model/definition.ts";
import { between, conductivity, minutes, phLimits, volume, volumeLimits } from "../../model/units-of.ts";
import { careKinds } from "../../model/words.ts";
import { careResults } from "./care-results.ts";

const inputs: readonly InputColumn[] = [
  textInput({ id: "id", label: "Entry", width: 8, required: true, help: "Running number." }),
  keyInput({
    id: "bath",
    label: "Bath",
    width: 13,
    required: true,
    from: ["baths", "bath"],
    help: "The bath that was cared for, or whose pieces were rinsed.",
  }),
  momentInput({ id: "when", label: "When", width: 16, required: true, help: "Date and time." }),
  wordInput({
    id: "kind",
    label: "Kind",
    words: careKinds,
    width: 12,
    required: true,
    help: "Skim, filter, drain, rinse check, degas or foil test.",
  }),
  numberInput({
    id: "amount",
    label: "Taken out",
    unit: volume,
    limits: volumeLimits,
    format: "0.00#",
    width: 9,
    help: "Solution that left the tank: it took its concentrate along, so it counts as loss.",
  }),
  textInput({ id: "destination", label: "Went to", width: 13, help: "Drum number, or where else it went." }),
  numberInput({
    id: "minutes",
    label: "Duration",
    unit: minutes,
    limits: between(0, 600),
    format: "0",
    width: 8,
    help: "How long it lasted, such as the degassing.",
  }),
  numberInput({
    id: "rinsePh",
    label: "Rinse pH",
    limits: phLimits,
    format: "0.00",
    width: 8,
    help: "Of the rinse, for a rinse check.",
  }),
  numberInput({
    id: "rinseConductivity",
    label: "Rinse conductivity",
    unit: conductivity,
    limits: between(0, 500),
    format: "0.00",
    width: 13,
    help: "Of the rinse, for a rinse check.",
  }),
  textInput({
    id: "result",
    label: "Result",
    width: 17,
    help: "What was seen or done: foil pattern even, rinse dumped, bag changed.",
  }),
  textInput({ id: "initials", label: "Initials", width: 8, help: "Who did it." }),
  textInput({
    id: "note",
    label: "Note",
    width: 18,
    help: "Anything the file should say, such as the number of the foil's picture.",
  }),
];

export const careSheet: SheetDefinition = {
  id: "care",
  name: "Care",
  title: "Bath care",
  purpose:
    "Skimming, filtering, drains, rinse checks, degassing and foil tests. What is drained counts as loss of concentrate.",
  caution: cautionsOfSheet("care"),
  fields: [],
  tables: [
    {
      id: "care",
      name: "Care",
      entry: { word: "Care", letter: "K", about: ["bath", "kind"] },
      caption: "Bath care",
      emptyRows: 1,
      columns: [...inputs, ...careResults],
    },
  ],
  arrangement: "side by side",
  tabColor: "#5E7F4E",
  pagesWide: 1,
  orientation: "landscape",
};
