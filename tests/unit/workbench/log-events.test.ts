import { expect, it } from "vitest";

import { onLogChanged } from "../../../src/excel/log-workbook.ts";
import { enter, testHost } from "./test-host.ts";

// Events pass through no request, so Microsoft's object model cannot judge them.
it("the pane is told of changes and of figures that came later, until it no longer wants to be", async () => {
  const host = testHost();
  Object.assign(globalThis, { Excel: host.Excel });
  await enter(host, "A1:A2", [[1], ["=BATH.TWICE(A1)"]]);
  const told: string[] = [];
  const stop = await onLogChanged(
    () => told.push("changed"),
    () => told.push("calculated"),
  );
  host.answerLate({ until: "#BUSY!", seed: 1 });
  await enter(host, "A1", [[5]]);
  expect(told).toEqual(["changed"]);
  host.workbook.answers.answerAll();
  await Promise.resolve();
  expect(told).toEqual(["changed", "calculated"]);
  await stop();
  await enter(host, "A1", [[6]]);
  host.workbook.answers.answerAll();
  await Promise.resolve();
  expect(told).toEqual(["changed", "calculated"]);
});
