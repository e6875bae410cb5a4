import { strengthLeft } from "../../src/core/bath/drag-out.ts";
import { positiveNumber } from "../arguments/arguments.ts";
import { checkAlike, likeVolume } from "../arguments/like-volumes.ts";
import { defineFunction } from "../define-function.ts";

export const dragOut = defineFunction({
  id: "DRAGOUT",
  category: "Threshold and top-up",
  summary:
    "Share of its strength that a bath has left after a number of loads, each of which carried solution out that water replaced.",
  arguments: [
    likeVolume("volume", "working volume"),
    likeVolume(
      "per_load",
      "solution that one load carries out; with a unit where the volume has one, without where it has none",
    ),
    positiveNumber("loads", "loads since the charge", "count"),
  ],
  result: {
    excelType: "number",
    dimensionality: "scalar",
    unit: "share, 0 to 1",
    help: "strength left per strength at the start",
  },
  examples: [
    {
      formula: "=BATH.DRAGOUT(121.175,0.18,24)",
      cells: [121.175, 0.18, 24],
      result: 0.965,
      tolerance: 0.0002,
      source: "(1 − 0.18/121.175)^24; the exponential form of the same law gives 0.965 too",
    },
    {
      formula: "=BATH.DRAGOUT(100,1,68.97)",
      cells: [100, 1, 68.97],
      result: 0.5,
      tolerance: 0.0001,
      source: "loads that halve the strength at 1 %: ln 0.5 / ln 0.99 = 68.97",
    },
  ],
  notes: [
    "Drag-out and water only: does not know what soil used up, additions, or the alkali that hard make-up water eats.",
    "Weigh or meter a few loads for the drag-out; printed rates differ sixtyfold. Bare numbers must share one unit; one beside a text with a unit is refused.",
  ],
  source: "(1 − per load / volume)^loads, level kept with water.",
  compute: ([volume, perLoad, loads]) => {
    checkAlike([volume, perLoad]);
    return strengthLeft(volume.volume, perLoad.volume, loads);
  },
});
