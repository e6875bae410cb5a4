import { cautionsOfSheet } from "../../../core/safety/caution-places.ts";
import type { ColumnId } from "../../formula/log-names.ts";
import { printedFirst } from "../../layout/printed-first.ts";
import { momentInput, nameInput, numberInput, textInput } from "../../model/columns.ts";
import type { InputColumn, SheetDefinition } from "../../model/definition.ts";
import { between, millivolts, phLimits, temperature, temperatureLimits } from "../../model/units-of.ts";
import { meterVerdict } from "../../model/words.ts";
import { meterHelpers, meterResults } from "./meter-results.ts";

/** From acid to strong alkali a glass electrode stays within about 430 mV of its zero. */
const voltageLimits = between(-1000, 1000);

const inputs: readonly InputColumn[] = [
  textInput({ id: "id", label: "Check", width: 8, required: true, help: "Running number." }),
  momentInput({ id: "when", label: "When", width: 16, required: true, help: "Date and time of the check." }),
  nameInput({ id: "meter", label: "Meter", width: 8, help: "Which meter, as the readings name it." }),
  numberInput({
    id: "buffer1",
    label: "Buffer 1",
    limits: phLimits,
    format: "0.00",
    width: 8,
    required: true,
    help: "Its pH at its temperature, from the bottle.",
  }),
  numberInput({
    id: "asFound1",
    label: "As found 1",
    limits: phLimits,
    format: "0.00",
    width: 8,
    help: "What the meter showed in buffer 1, before anything was adjusted.",
  }),
  numberInput({
    id: "mv1",
    label: "Voltage 1",
    unit: millivolts,
    limits: voltageLimits,
    format: "0.0",
    width: 8,
    help: "Voltage in buffer 1, if the meter shows it.",
  }),
  numberInput({
    id: "buffer2",
    label: "Buffer 2",
    limits: phLimits,
    format: "0.00",
    width: 8,
    required: true,
    help: "Bracket with 7 and 10: a pH 4 buffer says little about an alkaline bath.",
  }),
  numberInput({
    id: "asFound2",
    label: "As found 2",
    limits: phLimits,
    format: "0.00",
    width: 8,
    help: "What the meter showed in buffer 2, before anything was adjusted.",
  }),
  numberInput({
    id: "mv2",
    label: "Voltage 2",
    unit: millivolts,
    limits: voltageLimits,
    format: "0.0",
    width: 8,
    help: "Voltage in buffer 2, if the meter shows it.",
  }),
  numberInput({
    id: "temperature",
    label: "Buffer temp",
    unit: temperature,
    limits: temperatureLimits,
    format: "0.0",
    width: 9,
    help: "Temperature of the buffers; blank counts as 25 °C.",
  }),
  numberInput({
    id: "asLeft1",
    label: "As left 1",
    limits: phLimits,
    format: "0.00",
    width: 8,
    help: "What it showed in buffer 1 afterward; blank where nothing was adjusted.",
  }),
  numberInput({
    id: "asLeft2",
    label: "As left 2",
    limits: phLimits,
    format: "0.00",
    width: 8,
    help: "What it showed in buffer 2 afterward; blank where nothing was adjusted.",
  }),
  textInput({
    id: "bufferLot",
    label: "Buffer lots",
    width: 12,
    help: "Lot and expiry: an old pH 10 buffer falls as it takes up carbon dioxide.",
  }),
  textInput({ id: "initials", label: "Initials", width: 8, help: "Who checked." }),
  textInput({ id: "note", label: "Note", width: 24, help: "Bulb cleaned, electrode replaced, check only." }),
];

const printed: readonly ColumnId<"meterChecks">[] = [
  "id",
  "when",
  "meter",
  "buffer1",
  "asFound1",
  "mv1",
  "buffer2",
  "asFound2",
  "mv2",
  "temperature",
  "asLeft1",
  "asLeft2",
  "slope",
  "verdict",
  "since",
  "initials",
];

export const meterSheet: SheetDefinition = {
  id: "meter",
  name: "Meter",
  title: "Meter checks",
  purpose:
    "As found in two buffers before anything is adjusted, then as left. A check reaches back to the readings since the one before.",
  caution: `Write down the as-found values before you adjust. Above pH 10 an ordinary electrode reads low where sodium is high.\n${cautionsOfSheet("meter")}`,
  fields: [],
  tables: [
    {
      id: "meterChecks",
      name: "MeterChecks",
      entry: { word: "Meter check", letter: "M", about: ["meter"] },
      caption: "Meter checks",
      emptyRows: 1,
      columns: printedFirst([...inputs, ...meterResults, ...meterHelpers], printed),
      signals: [
        { column: "verdict", when: { is: meterVerdict.within }, look: "good" },
        { column: "verdict", when: { is: meterVerdict.asFound }, look: "act" },
        { column: "verdict", when: { is: meterVerdict.slope }, look: "act" },
        { column: "verdict", when: { is: meterVerdict.incomplete }, look: "watch" },
        { column: "verdictsFlipped", when: { isNot: 0 }, look: "act" },
      ],
    },
  ],
  arrangement: "side by side",
  tabColor: "#4A6A8A",
  pagesWide: 1,
  orientation: "landscape",
};
