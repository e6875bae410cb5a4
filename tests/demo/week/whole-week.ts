import { describe } from "vitest";

import type { WeekBook } from "../../../src/pane/demo/play-week.ts";
import { holdsAnswers } from "./answers.ts";
import { holdsCourse } from "./course.ts";
import { holdsFlags } from "./flags.ts";
import { holdsMoney } from "./money.ts";
import type { PlayedWeek } from "./played-week.ts";

/** What the week must come to, wherever it was typed. `book` is what it was typed into; the open workbook, if left out. */
export function holdsWholeWeek(week: () => PlayedWeek, book?: WeekBook): void {
  describe("takes its course", () => {
    holdsCourse(week);
  });
  describe("gives the answers", () => {
    holdsAnswers(week);
  });
  describe("raises the flags", () => {
    holdsFlags(week);
  });
  describe("shares its costs", () => {
    holdsMoney(week, book);
  });
}
