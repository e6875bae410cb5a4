/** @module-tag landing */
import { afterAll, beforeAll, describe, expect, it } from "vitest";

import { looks, narrowPane, paneFaults } from "./session/pane-faults.ts";
import { openWorkbench, type WorkbenchSession } from "./session/workbench-session.ts";

let bench: WorkbenchSession;

beforeAll(async () => {
  bench = await openWorkbench();
});

afterAll(async () => {
  await bench.close();
});

const forms = [
  "Item",
  "Meter check",
  "Charge",
  "Bench test",
  "Baseline",
  "Load",
  "Reading",
  "Add concentrate",
  "Make up to the line",
  "Care",
  "Change-out",
  "Release",
];

describe("the forms of Record, at 320 px", () => {
  it.each(looks)(
    "have no accessibility fault, targets for gloved fingers, and never scroll sideways (%s)",
    async (look) => {
      expect(await narrowPane(bench, look)).toBe(320);
      await bench.pane.getByRole("tab", { name: "Record" }).click();
      for (const form of forms) {
        await bench.pane.getByRole("button", { name: form, exact: true }).click();
        await bench.pane.getByRole("form", { name: form }).waitFor();
        expect([form, await paneFaults(bench, look)]).toEqual([form, []]);
        await bench.pane.getByRole("button", { name: "All entries" }).click();
      }
    },
  );
});
