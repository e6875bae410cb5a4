/** @module-tag landing */
import { afterAll, afterEach, beforeAll, describe, expect, it } from "vitest";

import type { Lateness } from "../../src/workbench/host/workbook/answers.ts";
import { openWorkbench, type WorkbenchSession, type WorkbenchWindow } from "./session/workbench-session.ts";

let bench: WorkbenchSession;
const bath = "B-T2-0303";

beforeAll(async () => {
  bench = await openWorkbench("", { answers: "at once", clock: "2027-03-05T08:00" });
  await bench.pane.getByRole("combobox", { name: "Bath" }).selectOption(bath);
});

afterEach(async ({ task }) => {
  if (task.result?.state === "fail")
    await bench.page.screenshot({ path: `test-results/${task.name.slice(0, 40)}.png` });
});

afterAll(async () => {
  await bench.close();
});

const step = () => bench.pane.getByRole("region", { name: "Next step" });
const said = async (): Promise<string> =>
  (await bench.pane.getByRole("status", { name: "What this means" }).getByRole("listitem").allInnerTexts()).join(" ");

/** Has every cell calculated anew, as Ctrl+Alt+F9 does. */
const calculateAll = (): Promise<void> =>
  bench.page.evaluate(() => {
    (window as unknown as WorkbenchWindow).bathsheetHost.model.dispatch("EVALUATE_CELLS");
  });

/** From here on functions answer when the test says so. */
const answerByHand = (until: Lateness["until"]): Promise<void> =>
  bench.page.evaluate((shown) => {
    (window as unknown as WorkbenchWindow).bathsheetHost.answerLate({ until: shown, seed: 1 });
  }, until);

const answer = (): Promise<void> =>
  bench.page.evaluate(() => {
    (window as unknown as WorkbenchWindow).bathsheetHost.workbook.answers.answerAll();
  });

const allow = async (drop: string): Promise<void> =>
  bench.setCell(await bench.cellOf("Baths", "Drop allowed, pH", 2), drop);

describe("a workbook whose functions answer late", () => {
  it("gives no advice from former figures, and then gives it", async () => {
    const at = await bench.cellOf("Baths", "Trigger pH", 2);
    const before = await bench.value(at);
    await answerByHand("former value");
    await allow("0.9");
    await step().getByText("Working out…").waitFor();
    expect(await bench.pane.getByText("Trigger pH", { exact: true }).count()).toBe(0);
    await answer();
    await bench.pane.getByText("Trigger pH", { exact: true }).waitFor();
    expect(await step().getByText("Working out…").count()).toBe(0);
    expect(await bench.value(at)).not.toBe(before);
  });

  it.each(["#BUSY!", "0"] as const)(
    "keeps a form open where figures show %s, and says what an entry means once they are there",
    async (until) => {
      await bench.pane.getByRole("tab", { name: "Record" }).click();
      await bench.pane.getByRole("button", { name: "Reading", exact: true }).click();
      await bench.pane.getByRole("textbox", { name: "pH as read", exact: true }).fill("11.3");
      await bench.pane.getByRole("textbox", { name: "Sample temp, °F", exact: true }).fill("77");
      await expect.poll(said).toMatch(/Baseline 11\.\d\d/);
      const worked = await said();
      await answerByHand(until);
      await calculateAll();
      await expect.poll(said).toBe("Working out…");
      expect(await bench.pane.getByRole("button", { name: "Record reading" }).isEnabled()).toBe(true);
      await answer();
      await expect.poll(said).toBe(worked);
    },
  );

  it("names the cell that goes on showing something else", async () => {
    await bench.pane.getByRole("tab", { name: "Now" }).click();
    await bench.setCell(await bench.cellOf("Baths", "Trigger pH", 2), "9");
    await answer();
    await step().getByText(`${bath} on the sheet Baths shows 9 under Trigger pH, and its formula gives`).waitFor();
    expect(bench.faults).toEqual([]);
  });
});
