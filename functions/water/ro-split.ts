import { reverseOsmosisSplit } from "../../src/core/water/reverse-osmosis-split.ts";
import { fraction } from "../arguments/fraction-argument.ts";
import { defineFunction } from "../define-function.ts";
import { value } from "./value-argument.ts";

export const roSplit = defineFunction({
  id: "ROSPLIT",
  category: "Water",
  summary:
    "Returns what a reverse osmosis unit makes of a feed: value of the permeate, value of the reject water, feed volume per permeate volume.",
  arguments: [
    value("feed", "hardness, alkalinity or dissolved solids of the feed"),
    fraction("recovery", 'permeate volume per feed volume, below 1: 0.5, a percent cell or "50%"'),
    fraction("rejection", 'share that the membrane holds back: 0.95, a percent cell or "95%"'),
  ],
  result: {
    excelType: "any",
    dimensionality: "matrix",
    unit: "unit of the feed; the third is a ratio of volumes",
    help: "one row: permeate value, reject value, feed volume per permeate volume",
  },
  examples: [
    {
      formula: "=BATH.ROSPLIT(400,0.9,0.9)",
      cells: [400, 0.9, 0.9],
      result: [[40, 3640, 1.1111]],
      tolerance: 0.0001,
      source:
        "Design of Reverse Osmosis Membrane, Example 1 (studylib.net): 40 mg/L, 4444 m³ of feed for 4000 of permeate; its 3643 mg/L comes from rounded flows",
    },
  ],
  notes: [
    "Rejection differs by what is dissolved and falls as the membrane ages: take it from a test of both waters. Carbon dioxide passes the membrane.",
    "Does not know pressure, temperature or scaling. A high recovery scales the membrane: the maker's limit wins.",
    "Where the reject water may go is the permit's to say.",
  ],
  source:
    "Permeate = feed × (1 − rejection); reject = (feed − recovery × permeate) / (1 − recovery); feed volume = permeate / recovery.",
  compute: ([feed, recovery, rejection]) => {
    const { permeate, reject, feedPerPermeate } = reverseOsmosisSplit(feed, recovery, rejection);
    return [[permeate, reject, feedPerPermeate]];
  },
});
