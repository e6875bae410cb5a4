import { doseSketch } from "./dose-sketch.ts";
import { neutralizingSketch } from "./neutralizing-sketch.ts";
import type { Sketch } from "./sketch.ts";
import { temperatureSketch } from "./temperature-sketch.ts";
import { topUpSketch } from "./top-up-sketch.ts";
import { watersSketch } from "./waters-sketch.ts";

/** In the order in which a job meets the questions. */
export const sketches: readonly Sketch[] = [
  doseSketch,
  watersSketch,
  temperatureSketch,
  topUpSketch,
  neutralizingSketch,
];
