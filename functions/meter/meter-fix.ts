import { twoPointCorrected } from "../../src/core/meter/two-point-correction.ts";
import { phReading } from "../arguments/arguments.ts";
import { defineFunction } from "../define-function.ts";

export const meterFix = defineFunction({
  id: "METERFIX",
  category: "pH and the meter",
  summary: "A reading corrected by what the meter read in two buffers.",
  arguments: [
    phReading("reading", "pH as the meter showed it"),
    phReading("buffer_1", "pH of the first buffer at its temperature, from the bottle or BUFFERPH"),
    phReading("read_1", "what the meter read in it"),
    phReading("buffer_2", "pH of the second buffer"),
    phReading("read_2", "what the meter read in it"),
  ],
  result: { excelType: "number", dimensionality: "scalar", unit: "pH", help: "corrected reading" },
  examples: [
    {
      formula: "=BATH.METERFIX(3.5,4.03364,4,6.93848,7)",
      cells: [3.5, 4.03364, 4, 6.93848, 7],
      result: 3.5495,
      tolerance: 0.0001,
      source: "0.96828 × 3.5 + 0.16052, the straight line through these two buffers",
    },
  ],
  notes: [
    "A correction is no adjustment: adjust the meter, and read again where the sample still stands.",
    "Between the buffers it holds best. Above the higher buffer it is a straight line drawn on, and an electrode's error above pH 10 is not straight.",
    "Does not know temperature: buffers and sample at about the same one. For a drift since the last check see DRIFTFIX.",
  ],
  source: "Buffer 1 + (reading − read 1) × (buffer 2 − buffer 1) / (read 2 − read 1).",
  compute: ([reading, buffer1, read1, buffer2, read2]) =>
    twoPointCorrected(reading, { buffer: buffer1, read: read1 }, { buffer: buffer2, read: read2 }),
});
