import { describe, expect, it } from "vitest";

import { readWeek } from "../../../../src/pane/demo/read-week.ts";
import { firstTwoDays } from "../../../demo/days/demo-week.ts";

describe("the file of the invented week", () => {
  it("comes back as it went", () => {
    expect(readWeek(JSON.stringify(firstTwoDays))).toEqual(firstTwoDays);
  });

  it.each<[string, string, RegExp]>([
    ["a page in its place", "<!doctype html>", /came damaged\. The file: it cannot be read\. Nothing was written\./],
    [
      "a figure that is text",
      JSON.stringify({ fields: {}, rows: { readings: [{ id: "R001" }, { id: "R002", ph: "11.2" }] } }),
      /Readings, row 2, pH as read: not a number\./,
    ],
    [
      "a column that the log lacks",
      JSON.stringify({ fields: {}, rows: { readings: [{ speed: 1 }] } }),
      /Readings, row 1: .*"speed"/,
    ],
    [
      "a computed column",
      JSON.stringify({ fields: {}, rows: { readings: [{ verdict: "hold" }] } }),
      /Readings, row 1: .*"verdict"/,
    ],
    ["a table that the log lacks", JSON.stringify({ fields: {}, rows: { speeds: [] } }), /"speeds"/],
    [
      "a named cell of another kind",
      JSON.stringify({ fields: { bathLife: "7" }, rows: {} }),
      /Bath old after: not a number\./,
    ],
    ["a table that is no list", JSON.stringify({ fields: {}, rows: { readings: {} } }), /Readings: no list of rows\./],
    ["no rows", JSON.stringify({ fields: {} }), /The file: its tables are missing\./],
  ])("is refused with %s", (_, text, message) => {
    expect(() => readWeek(text)).toThrow(message);
  });
});
