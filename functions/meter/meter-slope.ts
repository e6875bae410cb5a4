import { electrodeSlope } from "../../src/core/meter/electrode-slope.ts";
import { system } from "../arguments/arguments.ts";
import { numberOrNone } from "../arguments/number-or-none.ts";
import { temperatureOf } from "../arguments/temperature-argument.ts";
import { defineFunction } from "../define-function.ts";
import { bufferValue } from "./buffer-value.ts";

export const meterSlope = defineFunction({
  id: "METERSLOPE",
  category: "pH and the meter",
  summary: "Slope of a pH electrode between two buffers, as % of the theoretical (Nernst) slope at their temperature.",
  arguments: [
    bufferValue(
      "buffer_1",
      'pH of the first buffer at its temperature, from the bottle, or a standard by name such as "phosphate" (BUFFERPH)',
    ),
    numberOrNone("mv_1", "what the electrode gave in it; may be 0", "mV"),
    bufferValue("buffer_2", 'pH of the second buffer, or a standard by name such as "carbonate"'),
    numberOrNone("mv_2", "what the electrode gave in it", "mV"),
    temperatureOf("both buffers"),
    system,
  ],
  result: { excelType: "number", dimensionality: "scalar", unit: "%", help: "100 is a perfect electrode" },
  examples: [
    {
      formula: "=BATH.METERSLOPE(7,-5,10,-165)",
      cells: [7, -5, 10, -165],
      result: 90.15,
      tolerance: 0.02,
      source:
        "Physics Forums, Calculate the pH Slope using 7.0 and 10.0 Buffers (2019): 160 mV over 3 pH against 59.16 mV at 25 °C",
    },
    {
      formula: "=BATH.METERSLOPE(7.01,-15,4.01,160)",
      cells: [7.01, -15, 4.01, 160],
      result: 98.6,
      tolerance: 0.05,
      source: "How to calculate offset and slope (studylib.net): 175 mV, an electrode that passes",
    },
  ],
  notes: [
    "The guide named with the example passes 85 to 105 % and a tighter practice 95 to 105 %; the meter's manual wins. Check the offset too: the mV in a pH 7 buffer should lie within 30 of 0 (the same guide).",
    "Takes either sign of the meter's mV; numbers that look like the buffers' pH are refused. One mV left blank counts as 0, which a good electrode shows at pH 7; refused where both are alike. Refuses (#N/A) a slope under 50 or over 115 % and an electrode more than 60 mV off at pH 7 (own choice): mV swapped, misread or of a dead electrode. Does not know old or polluted buffers: a pH 10 buffer falls as it takes up carbon dioxide from the air.",
    "For a bath at pH 11 take buffers of 7 and 10: a slope between 4 and 7 says little about it. An ordinary electrode reads low above pH 10 whatever its slope (EPA Method 9040).",
  ],
  source:
    "100 × |mV 1 − mV 2| / |pH 1 − pH 2| / (0.198421 mV/K × temperature); Nernst, R ln 10 / F by the constants of the 2019 SI.",
  compute: ([buffer1, mv1, buffer2, mv2, temperature]) =>
    100 *
    electrodeSlope(
      { ph: buffer1(temperature), millivolts: mv1 },
      { ph: buffer2(temperature), millivolts: mv2 },
      temperature,
    ),
});
