import { describe, expect, it } from "vitest";

import { joined, minus, negative, times } from "../../../../src/joblog/formula/arithmetic.ts";
import { holds } from "../../../../src/joblog/formula/conditions.ts";
import type { Expression } from "../../../../src/joblog/formula/expression.ts";
import { formulaText } from "../../../../src/joblog/formula/formula-text.ts";
import type { Row } from "../../../../src/joblog/formula/log-names.ts";
import { cellsFrom } from "../../../../src/joblog/formula/lookups.ts";
import { logNames, rowNames } from "../../../../src/joblog/formula/name-log.ts";
import { jobLog } from "../../../../src/joblog/job-log.ts";
import { findTable, referencesFor } from "../../../../src/joblog/model/references.ts";

const names = referencesFor(jobLog, findTable(jobLog, "readings"), "metric");
const reading = rowNames(findTable(jobLog, "readings")) as Row<"readings">;
const written = (formula: Expression): string => formulaText(formula, names);

describe("the words that formulas are made of", () => {
  it("write a negative figure so that Excel takes the sign before anything else", () => {
    expect(written(negative(1))).toBe("-1");
    expect(written(joined(negative(2), " left"))).toBe('-2&" left"');
    expect(written(minus(5, negative(1)))).toBe("5-(-1)");
    expect(written(times(3, negative(1)))).toBe("3*(-1)");
    expect(written(negative(minus(5, 1)))).toBe("-(5-1)");
  });

  it("look for a part of a text wherever it stands", () => {
    expect(written(holds("Zinc pan", "zinc"))).toBe('ISNUMBER(SEARCH("zinc","Zinc pan"))');
  });

  it("make a range of this row's cells, and of nothing else", () => {
    expect(written(cellsFrom(reading.ph, reading.temperature))).toBe(
      "Readings[[#This Row],[pH as read]:[Sample temp, °C]]",
    );
    expect(() => cellsFrom(reading.ph, logNames(jobLog).readings.temperature)).toThrow(RangeError);
  });
});
