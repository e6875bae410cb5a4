import { expect, it } from "vitest";

import { jobLog } from "../../../../src/joblog/job-log.ts";
import { layOut } from "../../../../src/joblog/layout/lay-out.ts";
import { typedLog } from "../../../../src/joblog/layout/typed-cells.ts";
import { typedContent } from "../../../../src/joblog/layout/typed-content.ts";
import type { LogContent } from "../../../../src/joblog/model/definition.ts";
import { fullWeek } from "../sheets/hostile-log.ts";

const [first = {}, second = {}] = fullWeek.rows.readings ?? [];

const contents: Readonly<Record<string, LogContent>> = {
  "nothing typed": { fields: {}, rows: {} },
  "a week": fullWeek,
  "a blank row between others, and one at the end": { ...fullWeek, rows: { readings: [first, {}, second, {}] } },
  "cells that are cleared": {
    fields: { ...fullWeek.fields, usualDrop: "" },
    rows: { ...fullWeek.rows, readings: [{ ...first, note: "" }, { note: "" }] },
  },
  "a list of the usual words emptied": { ...fullWeek, rows: { ...fullWeek.rows, keepOutWords: [] } },
};

it.each(
  Object.entries(contents).flatMap(([what, content]) =>
    (["US", "metric", "imperial"] as const).map((system) => ({ what, content, system })),
  ),
)("$what in a $system log is what would be read of it once it was laid out", ({ content, system }) => {
  const laidOut = typedLog(layOut(jobLog, { system }, content));
  const typed = typedContent(system, content);
  expect(typed.rows).toEqual(laidOut.rows);
  expect(typed.fields).toEqual(laidOut.fields);
});
