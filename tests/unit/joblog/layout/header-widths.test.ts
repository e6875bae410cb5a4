import { describe, expect, it } from "vitest";

import { unitSystems } from "../../../../src/core/units/unit-system.ts";
import { jobLog } from "../../../../src/joblog/job-log.ts";
import { leastWidth } from "../../../../src/joblog/layout/header-width.ts";
import type { SheetPlan } from "../../../../src/joblog/model/plan.ts";
import { emptyPlan } from "../formula/formula-reader.ts";

/** Pixels of a column (ECMA-376, 18.3.1.13, with seven to a character). */
const pixelsOf = (characters: number): number => characters * 7 + 5;

/** Cell margins of three pixels on either side, and the indent that words have in a file. */
const margins = 15;

/** Widths of 10-point bold words in DejaVu Sans, as Chromium measures them. */
const measured = { Reading: 61.5, "Conductivity,": 98.7, sequestering: 98.6, imperial: 61.8 };

/** Arial Bold's lower case is 0.556 of the type size wide on average (Helvetica Bold's metrics, from memory). */
const averageBoldLetter = ((10 * 4) / 3) * 0.556;

/** "2027-03-01 09:45" and "2027-03-01" in 10-point DejaVu Sans, as Chromium measures them. */
const measuredTimes = { "yyyy-mm-dd hh:mm": 120.2, "yyyy-mm-dd": 77.4 };

function headersOf(
  sheet: SheetPlan,
): readonly { readonly header: string; readonly format: string | undefined; readonly width: number }[] {
  return sheet.tables.flatMap((table) =>
    table.columns.map(({ header, numberFormat }, index) => ({
      header,
      format: numberFormat,
      width: sheet.columnWidths[table.area.column + index] ?? 0,
    })),
  );
}

describe("the width of a column", () => {
  it.each(Object.entries(measured))(
    "leaves room for the word %s as a browser draws it, and little more",
    (word, pixels) => {
      const width = pixelsOf(leastWidth(`A ${word} b`, "text"));
      expect(width).toBeGreaterThanOrEqual(pixels + margins);
      expect(width).toBeLessThan(pixels + margins + 12);
    },
  );

  it.each(unitSystems)("breaks no word of a header in %s units", (system) => {
    for (const sheet of emptyPlan(jobLog, system).sheets) {
      for (const { header, width } of headersOf(sheet)) {
        const longest = Math.max(...header.split(" ").map((word) => word.length));
        expect(pixelsOf(width), `${sheet.name}: ${header}`).toBeGreaterThanOrEqual(longest * averageBoldLetter + 6);
      }
    }
  });

  it.each(unitSystems)("keeps a date and a time on one line in %s units", (system) => {
    for (const sheet of emptyPlan(jobLog, system).sheets) {
      for (const { header, format, width } of headersOf(sheet)) {
        const pixels = measuredTimes[format as keyof typeof measuredTimes] as number | undefined;
        if (pixels !== undefined)
          expect(pixelsOf(width), `${sheet.name}: ${header}`).toBeGreaterThanOrEqual(pixels + 6);
      }
    }
  });
});

/** The narrower of Letter (8.5 by 11 inches) and A4 (210 by 297 mm) between the margins, in pixels. */
const paper = { landscape: 10.5 * 96, portrait: (210 / 25.4 - 0.5) * 96 };

describe("a printed page", () => {
  it.each(unitSystems)("shows 10-point type at 8 points or more on Letter and A4, in %s units", (system) => {
    for (const sheet of emptyPlan(jobLog, system).sheets) {
      const width = sheet.columnWidths
        .slice(0, sheet.lastPrintedColumn + 1)
        .reduce((sum, characters) => sum + pixelsOf(characters), 0);
      expect((10 * paper[sheet.orientation] * sheet.pagesWide) / width, sheet.name).toBeGreaterThanOrEqual(8);
    }
  });
});
