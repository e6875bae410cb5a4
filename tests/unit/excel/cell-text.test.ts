import { describe, expect, test } from "vitest";

import { cellText, cellValue } from "../../../src/excel/cell-text.ts";

describe("text typed by a person", () => {
  test.each(["=1+1", "+1", "-cmd", "@SUM(A1)", "\tx", "\rx", "\nx", "'quoted"])(
    "%j never becomes a formula",
    (text) => {
      expect(cellText(text)).toBe(`'${text}`);
    },
  );

  test.each([
    "007",
    "1.5",
    "1,5",
    "1 500",
    "-3",
    "50%",
    "3E5",
    "1/2",
    "1-2",
    "2027-03-01",
    "3/1/27",
    "09:45",
    "9:45 pm",
    "$5",
    "5 €",
    "(12)",
    "1 Mar",
    "Mar-27",
    "March 2027",
    "1-Mar-2027",
    "TRUE",
    "false",
    "#N/A",
    "#REF!",
  ])("%j stays text and is not read as a number, date, truth value or error", (text) => {
    expect(cellText(text)).toBe(`'${text}`);
  });

  test.each([
    "B-T1-0301",
    "RO",
    "KT",
    "kitchen fire, terrace house",
    "5 US gal pail",
    "Marbles",
    "maybe",
    "R001",
    "true story",
    "pH 11",
  ])("%j needs no quote mark", (text) => {
    expect(cellText(text)).toBe(text);
  });

  test("a strength such as 1+28, 1:28 or 1 in 28 stays the words that were typed", () => {
    expect(cellText("1+28")).toBe("'1+28");
    expect(cellText("1:28")).toBe("'1:28");
    expect(cellText("1 in 28")).toBe("1 in 28");
  });

  test("text longer than a cell holds is cut at 32,767 characters", () => {
    expect(cellText("x".repeat(40_000))).toHaveLength(32_767);
  });

  test("numbers and truth values pass through", () => {
    expect(cellValue(11.42)).toBe(11.42);
    expect(cellValue(false)).toBe(false);
    expect(cellValue("=x")).toBe("'=x");
  });
});
