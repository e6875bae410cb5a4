/** @module-tag landing */
import { beforeAll, describe, expect, it } from "vitest";

import { forms } from "../../../src/pane/record/forms.ts";
import { randomSeed, runs } from "../../setup/random-runs.ts";
import { holdsInMetricUnits } from "../metric/metric-week.ts";
import { comparing, type Comparison, type Pace } from "./late-sentences.ts";
import { type PlayedWeek, playInNewWorkbook } from "./played-week.ts";
import { holdsSample } from "./sample.ts";
import { holdsWholeWeek } from "./whole-week.ts";
import { holdsWithoutSpreadsheet } from "./without-spreadsheet.ts";

let week: PlayedWeek;
let compared: Comparison;

/** A soak looks oftener, and opens every form each time. */
const pace: Pace = runs(1).numRuns > 1 ? { every: 1, looks: 4, forms: forms.length } : { every: 3, looks: 2, forms: 2 };

beforeAll(async () => {
  week = await playInNewWorkbook((host) => {
    host.answerLate({ until: "any of them", seed: randomSeed });
    const { present, found } = comparing(host, pace);
    compared = found;
    return present;
  });
}, 600_000);

describe("the invented week, typed into the pane", () => {
  holdsWholeWeek(() => week);
  describe("stands in the sample workbook, which", () => {
    holdsSample(() => week);
  });
  describe("while functions answer late", () => {
    it("has the pane say what it says in the end, or that it is working it out", () => {
      expect(compared.wrong).toEqual([]);
      expect(compared.looks).toBeGreaterThan(40);
      expect(compared.sentences).toBeGreaterThan(2000);
      // Both happen, or the functions were not late.
      expect(compared.waiting).toBeGreaterThan(100);
      expect(compared.averted).toBeGreaterThan(30);
    });
  });
  describe("worked out without a spreadsheet", () => {
    holdsWithoutSpreadsheet(() => week);
  });
  // Opens a workbook of its own: last.
  describe("is the same week in other units", () => {
    holdsInMetricUnits(() => week);
  });
});
