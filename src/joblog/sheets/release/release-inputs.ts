import { acidNames } from "../../../core/bath/model/acid.ts";
import { dateInput, keyInput, momentInput, numberInput, textInput, wordInput } from "../../model/columns.ts";
import type { InputColumn } from "../../model/definition.ts";
import {
  acidAmount,
  bathAlkalinityLimits,
  between,
  hardness,
  neutralizedPhLimits,
  phLimits,
  sewerLimits,
  temperature,
  temperatureLimits,
  volume,
  volumeLimits,
} from "../../model/units-of.ts";
import { analysesResults } from "../../model/words.ts";

const amountLimits = between(0, 10_000);

const stage = (number: number, help: string): readonly InputColumn[] => [
  numberInput({
    id: `stage${String(number)}`,
    label: `Acid ${String(number)}`,
    unit: acidAmount,
    limits: amountLimits,
    format: "0.000",
    width: 9,
    help,
  }),
  numberInput({
    id: `phAfter${String(number)}`,
    label: `pH after ${String(number)}`,
    limits: phLimits,
    format: "0.00",
    width: 8,
    help: "After mixing, cooled sample.",
  }),
];

/** What the bath is and what is to be done. */
export const releaseInputs: readonly InputColumn[] = [
  textInput({ id: "id", label: "Release", width: 8, required: true, help: "Running number." }),
  keyInput({
    id: "bath",
    label: "Bath",
    width: 13,
    required: true,
    from: ["baths", "bath"],
    help: "The bath that is done with.",
  }),
  momentInput({ id: "when", label: "When", width: 16, required: true, help: "When the neutralizing began." }),
  numberInput({
    id: "volume",
    label: "Volume",
    unit: volume,
    limits: volumeLimits,
    format: "0.0##",
    width: 9,
    required: true,
    help: "Of the bath as it stands, by its level.",
  }),
  numberInput({
    id: "ph",
    label: "pH",
    limits: phLimits,
    format: "0.00",
    width: 8,
    required: true,
    help: "Cooled sample, before any acid.",
  }),
  numberInput({
    id: "temperature",
    label: "Sample temp",
    unit: temperature,
    limits: temperatureLimits,
    format: "0.0",
    width: 9,
    help: "Temperature of the sample.",
  }),
  numberInput({
    id: "alkalinity",
    label: "Alkalinity",
    unit: hardness,
    limits: bathAlkalinityLimits,
    format: "0",
    width: 12,
    help: "Total alkalinity titrated to pH 4.5: 1 meq/L is 50 mg/L. Without it the acid is a minimum, often far too low.",
  }),
  wordInput({
    id: "acid",
    label: "Acid",
    words: acidNames,
    width: 12,
    help: "Dry acids are counted by weight, liquid ones by volume.",
  }),
  numberInput({
    id: "purity",
    label: "Purity, %",
    limits: between(1, 100),
    format: "0.0#",
    width: 8,
    help: "Acid in the product, % by weight; blank means the usual product. Acetic acid has none: write it.",
  }),
  numberInput({
    id: "target",
    label: "Target pH",
    limits: neutralizedPhLimits,
    format: "0.0#",
    width: 8,
    help: "Within your own permit's limits, with room to spare; at least 6, since the federal floor is 5.0.",
  }),
];

/** What was done and what came out of it. */
export const releaseDetails: readonly InputColumn[] = [
  ...stage(1, "First stage, about 60 %: slowly, into the cooled, mixing bath."),
  ...stage(2, "Second stage, less if the reading says that less is left."),
  ...stage(3, "The rest, in small portions."),
  numberInput({
    id: "limitLow",
    label: "pH at least",
    limits: sewerLimits,
    format: "0.0#",
    width: 8,
    help: "Of the permit for this release; blank means the shop's own.",
  }),
  numberInput({
    id: "limitHigh",
    label: "pH at most",
    limits: sewerLimits,
    format: "0.0#",
    width: 8,
    help: "Of the permit for this release; blank means the shop's own.",
  }),
  textInput({
    id: "permit",
    label: "Permit or code",
    width: 15,
    help: "Which permit or code the limits come from; blank means the shop's own.",
  }),
  textInput({
    id: "analyses",
    label: "Analyses",
    width: 18,
    help: "Which were made and what they gave, such as total lead in mg/L against the permit; sludge by TCLP is another matter.",
  }),
  wordInput({
    id: "analysesResult",
    label: "Result of analyses",
    words: analysesResults,
    width: 13,
    help: "Of the water, against the limits of the permit.",
  }),
  momentInput({ id: "releasedAt", label: "Released", width: 16, help: "When, signed for by a responsible person." }),
  numberInput({
    id: "releasedVolume",
    label: "Volume released",
    unit: volume,
    limits: volumeLimits,
    format: "0.0##",
    width: 10,
    help: "What really went out.",
  }),
  textInput({
    id: "point",
    label: "Discharge point",
    width: 14,
    help: "Where it went, such as the sanitary sewer; never a storm drain or a septic tank.",
  }),
  dateInput({
    id: "retainedUntil",
    label: "Keep record until",
    width: 11,
    help: "Three years is the federal least (40 CFR 403.12(o)); your permit may say more.",
  }),
  textInput({ id: "initials", label: "Initials", width: 8, help: "Who signs for it." }),
  textInput({ id: "note", label: "Note", width: 20, help: "Held, aerated, authority told." }),
];
