import { keyInput, momentInput, nameInput, numberInput, textInput, wordInput } from "../../model/columns.ts";
import type { InputColumn } from "../../model/definition.ts";
import { between, phLimits, temperature, temperatureLimits } from "../../model/units-of.ts";
import { builders, closeReasons, shareBases } from "../../model/words.ts";

export const bathName: InputColumn = nameInput({
  id: "bath",
  label: "Bath",
  width: 14,
  help: "A name of its own for every fill, such as tank and date.",
});

export const bathInputs: readonly InputColumn[] = [
  keyInput({
    id: "tank",
    label: "Tank",
    width: 8,
    required: true,
    from: ["tanks", "tank"],
    help: "From the Job sheet.",
  }),
  keyInput({
    id: "water",
    label: "Water",
    width: 8,
    required: true,
    from: ["waters", "water"],
    help: "Water of the fill.",
  }),
  keyInput({
    id: "concentrate",
    label: "Concentrate",
    width: 12,
    required: true,
    from: ["concentrates", "concentrate"],
    help: "From the Job sheet.",
  }),
  momentInput({ id: "opened", label: "Opened", width: 16, required: true, help: "When the fill began." }),
  textInput({
    id: "strength",
    label: "Strength wanted",
    width: 10,
    required: true,
    help: "Written 1+40 (one part and 40 parts of water), 1 in 40, 2.5% or 3 fl oz/gal.",
  }),
  wordInput({
    id: "builder",
    label: "Builder",
    words: builders,
    width: 11,
    help: "What makes the concentrate alkaline; only if it differs from the Job sheet's.",
  }),
  numberInput({
    id: "dropAllowed",
    label: "Drop allowed, pH",
    limits: between(0.05, 3),
    format: "0.00",
    width: 9,
    help: "Blank means the shop's usual drop, from the sheet Shop.",
  }),
  momentInput({ id: "closed", label: "Closed", width: 16, help: "When the bath was changed out." }),
  wordInput({
    id: "closeReason",
    label: "Reason closed",
    words: closeReasons,
    width: 16,
    help: "Why it was changed out.",
  }),
  wordInput({
    id: "shareBasis",
    label: "Share its cost by",
    words: shareBases,
    width: 19,
    help: "One basis for all claims of the bath. Blank means the shop's usual basis, from the sheet Shop.",
  }),
  textInput({ id: "note", label: "Note", width: 20, help: "Anything the file should say." }),
];

/**
 * A baseline is a decision that somebody wrote down. Readings are judged by these cells, so that one more reading
 * leaves every other row alone.
 */
export const bathBaselineInputs: readonly InputColumn[] = [
  numberInput({
    id: "baseline",
    label: "Baseline pH",
    limits: phLimits,
    format: "0.00",
    width: 9,
    help: "The number to come back to, as written down from the median of at least three readings that count, the meter's drift taken out.",
  }),
  numberInput({
    id: "baselineTemperature",
    label: "Baseline temperature",
    unit: temperature,
    limits: temperatureLimits,
    format: "0.0",
    width: 12,
    help: "Mean of its samples; without it nothing is judged by the baseline.",
  }),
  momentInput({ id: "baselineSetAt", label: "Baseline set", width: 16, help: "When it was written down." }),
  textInput({ id: "baselineSetBy", label: "Baseline set by", width: 10, help: "Who wrote it down." }),
  textInput({ id: "baselineFrom", label: "Baseline from", width: 16, help: "The readings that it came from." }),
  numberInput({
    id: "baselineAsRead",
    label: "Baseline as read",
    limits: phLimits,
    format: "0.00",
    width: 9,
    help: "The median of the same readings with the meter's drift left in; blank: the same as the baseline.",
  }),
];

/** Says of the bath's rows that values stand where their formulas called functions of ours; written with those values alone. */
export const bathSettledInputs: readonly InputColumn[] = [
  {
    ...momentInput({
      id: "settledAt",
      label: "Settled",
      width: 16,
      help: "When values took the place of formulas in the bath's rows; they follow no later change. Bathsheet's pane writes it.",
    }),
    ofCells: true,
  },
  { ...textInput({ id: "settledBy", label: "Settled by", width: 10, help: "Who settled it." }), ofCells: true },
];
