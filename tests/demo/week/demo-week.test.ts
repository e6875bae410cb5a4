import { beforeAll, describe } from "vitest";

import { holdsInMetricUnits } from "../metric/metric-week.ts";
import { holdsAnswers } from "./answers.ts";
import { holdsCourse } from "./course.ts";
import { holdsFlags } from "./flags.ts";
import { holdsMoney } from "./money.ts";
import { type PlayedWeek, playInNewWorkbook } from "./played-week.ts";
import { holdsSample } from "./sample.ts";
import { holdsWithoutSpreadsheet } from "./without-spreadsheet.ts";

let week: PlayedWeek;

beforeAll(async () => {
  week = await playInNewWorkbook();
}, 600_000);

describe("the invented week, typed into the pane", () => {
  describe("takes its course", () => {
    holdsCourse(() => week);
  });
  describe("gives the answers", () => {
    holdsAnswers(() => week);
  });
  describe("raises the flags", () => {
    holdsFlags(() => week);
  });
  describe("stands in the sample workbook, which", () => {
    holdsSample(() => week);
  });
  describe("shares its costs", () => {
    holdsMoney(() => week);
  });
  describe("worked out without a spreadsheet", () => {
    holdsWithoutSpreadsheet(() => week);
  });
  // Opens a workbook of its own: last.
  describe("is the same week in other units", () => {
    holdsInMetricUnits(() => week);
  });
});
