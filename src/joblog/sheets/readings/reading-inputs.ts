import { keyInput, momentInput, numberInput, textInput, wordInput } from "../../model/columns.ts";
import type { InputColumn } from "../../model/definition.ts";
import {
  between,
  conductivity,
  depth,
  depthLimits,
  phLimits,
  temperature,
  temperatureLimits,
  titrant,
} from "../../model/units-of.ts";
import { readingPurposes, readSo } from "../../model/words.ts";

/** What a person reads first, so that the verdict can stand beside it. */
export const readingInputs: readonly InputColumn[] = [
  textInput({ id: "id", label: "Reading", width: 8, required: true, help: "Running number." }),
  keyInput({
    id: "bath",
    label: "Bath",
    width: 12,
    required: true,
    from: ["baths", "bath"],
    help: "The bath the sample came from.",
  }),
  momentInput({ id: "when", label: "When", width: 16, required: true, help: "Date and time of the reading." }),
  wordInput({
    id: "purpose",
    label: "Purpose",
    words: readingPurposes,
    width: 12,
    required: true,
    help: "Three baseline readings after the bench tests, then checks.",
  }),
  numberInput({
    id: "ph",
    label: "pH as read",
    limits: phLimits,
    format: "0.00",
    width: 8,
    help: "As the meter shows it, uncorrected.",
  }),
  numberInput({
    id: "temperature",
    label: "Sample temp",
    unit: temperature,
    limits: temperatureLimits,
    format: "0.0",
    width: 9,
    help: "Temperature of the sample in the cup, not of the tank.",
  }),
];

export const readingDetails: readonly InputColumn[] = [
  textInput({
    id: "meter",
    label: "Meter",
    width: 7,
    help: "Which meter: a reading that names none is never corrected for drift.",
  }),
  numberInput({
    id: "level",
    label: "Level",
    unit: depth,
    limits: depthLimits,
    format: "0.0",
    width: 8,
    help: "Liquid depth in the tank.",
  }),
  numberInput({
    id: "conductivity",
    label: "Conductivity",
    unit: conductivity,
    limits: between(0, 500),
    format: "0.00",
    width: 14,
    help: "Rises as soil is neutralized: no gauge of strength in a used bath.",
  }),
  numberInput({
    id: "pTitre",
    label: "P titration",
    unit: titrant,
    limits: between(0, 500),
    format: "0.00",
    width: 9,
    help: "Titrant to pH 8.3, if the shop titrates: P, the free alkalinity.",
  }),
  numberInput({
    id: "tTitre",
    label: "T titration",
    unit: titrant,
    limits: between(0, 500),
    format: "0.00",
    width: 9,
    help: "Titrant to pH 4.5, if the shop titrates: T, the total alkalinity.",
  }),
  wordInput({
    id: "confirmed",
    label: "Confirmed",
    words: readSo,
    width: 8,
    help: "Write “yes” where the verdict says to check the reading, somebody did, and it was read so.",
  }),
  textInput({ id: "initials", label: "Initials", width: 8, help: "Who read." }),
  textInput({ id: "note", label: "Note", width: 18, help: "Anything odd: cloudy, level low, not cooled." }),
];
