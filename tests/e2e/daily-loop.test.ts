import { afterEach, describe, expect, it } from "vitest";

import { openWorkbench, type WorkbenchSession } from "./workbench-session.ts";

let bench: WorkbenchSession;

afterEach(async () => {
  expect([bench.faults, bench.strangers]).toEqual([[], []]);
  await bench.close();
});

/** What the loop leaves in the sheets: the two readings with what came between them. */
async function written(): Promise<readonly unknown[]> {
  const first = await bench.cellOf("Readings", "pH as read", 20);
  const last = await bench.cellOf("Readings", "pH as read", 21);
  const purpose = await bench.cellOf("Readings", "Purpose", 21);
  return [await bench.value(first), await bench.value(last), await bench.value(purpose)];
}

/** Whether the field that has the focus stands whole between the pane's upper edge and what stays at the lower one. */
function fieldIsClear(): Promise<boolean> {
  return bench.pane.locator("html").evaluate(() => {
    const field = document.activeElement?.getBoundingClientRect();
    const verdict = document.querySelector('[aria-label="What this means"]')?.getBoundingClientRect();
    return field !== undefined && verdict !== undefined && field.top >= 0 && field.bottom <= verdict.top;
  });
}

const recorded = (words: RegExp) => bench.pane.getByText(words).waitFor();

/** Things are done one after another, minutes apart. */
const itIs = (time: string): Promise<void> => bench.page.clock.setFixedTime(`2027-03-04T${time}`);

describe("reading, top-up and reading again", () => {
  it("go by touch alone on a phone", async () => {
    bench = await openWorkbench("", {
      viewport: { width: 390, height: 844 },
      clock: "2027-03-04T08:25",
      touch: true,
      answers: "at once",
    });
    const { page, pane } = bench;
    const read = async (ph: string): Promise<void> => {
      // Where the next step is a reading, its two fields stand ready.
      const ready = await pane.getByLabel("pH as read").isVisible();
      if (!ready) await pane.getByRole("button", { name: "Reading", exact: true }).tap();
      await pane.getByLabel("pH as read").tap();
      await page.keyboard.type(ph);
      await pane.getByLabel("Sample temp").tap();
      await page.keyboard.type("78");
      await pane
        .getByRole("status", { name: "What this means" })
        .getByText(/trigger|top-up/i)
        .first()
        .waitFor();
      // So much is left of the screen when its keyboard is up.
      await page.setViewportSize({ width: 390, height: 500 });
      await expect.poll(fieldIsClear).toBe(true);
      await page.setViewportSize({ width: 390, height: 844 });
      const button = pane.getByRole("button", { name: "Record reading" });
      expect(await button.evaluate((one) => one.getBoundingClientRect().bottom <= window.innerHeight)).toBe(true);
      await button.tap();
      await recorded(new RegExp(`^Recorded: pH ${ph.replace(".", "\\.")} at 78 °F`));
    };
    await read("10.83");
    await itIs("08:29");
    await pane.getByRole("button", { name: "Add concentrate" }).tap();
    await pane.getByRole("button", { name: "Record addition" }).tap();
    await pane.getByRole("heading", { name: /^Recorded/ }).waitFor();
    await itIs("08:40");
    await pane.getByRole("tab", { name: "Now" }).tap();
    await read("11.28");
    expect(await written()).toEqual([10.83, 11.28, "after top-up"]);
    await page.getByRole("button", { name: "Sheet" }).tap();
    expect(await page.locator(".o-sheet.active").textContent()).toBe("Readings");
    await page.getByRole("button", { name: "Pane", exact: true }).tap();
    expect(await pane.getByText(/^Recorded: pH 11\.28/).isVisible()).toBe(true);
  });

  it("go by the keyboard alone", async () => {
    bench = await openWorkbench("", { viewport: { width: 1280, height: 800 }, clock: "2027-03-04T08:25" });
    const { page, pane } = bench;
    const focused = (): Promise<string> =>
      pane.locator("html").evaluate(() => {
        const at = document.activeElement;
        return at instanceof HTMLInputElement ? (at.labels?.[0]?.textContent ?? "") : (at?.textContent ?? "");
      });
    /** Presses Tab until what has the focus is called so. */
    const tabTo = async (name: RegExp, key: "Tab" | "Shift+Tab" = "Tab"): Promise<void> => {
      for (let presses = 0; presses < 40; presses += 1) {
        if (name.test(await focused())) return;
        await page.keyboard.press(key);
      }
      throw new Error(`Tab never came to ${String(name)}; it stands at ${await focused()}`);
    };
    const type = async (ph: string): Promise<void> => {
      await tabTo(/^pH as read/);
      await page.keyboard.type(ph);
      await page.keyboard.press("Tab");
      await page.keyboard.type("78");
      await page.keyboard.press("Enter");
      await recorded(new RegExp(`^Recorded: pH ${ph.replace(".", "\\.")} at 78 °F`));
    };
    // The first advice waits for the sheet's functions. The page opens with the focus in the pane.
    await pane.getByRole("button", { name: "Reading", exact: true }).waitFor();
    await tabTo(/^Reading$/);
    await page.keyboard.press("Enter");
    await type("10.83");
    await itIs("08:29");
    await pane.getByRole("button", { name: "Add concentrate" }).waitFor();
    await tabTo(/^Add concentrate/);
    await page.keyboard.press("Enter");
    await tabTo(/^Record addition$/);
    await page.keyboard.press("Enter");
    await pane.getByRole("heading", { name: /^Recorded/ }).waitFor();
    await itIs("08:40");
    await tabTo(/^Record$/, "Shift+Tab");
    await page.keyboard.press("ArrowLeft");
    await page.keyboard.press("Enter");
    await pane.getByRole("combobox", { name: "Bath" }).waitFor();
    if (!(await pane.getByLabel("pH as read").isVisible())) {
      await tabTo(/^Reading$/);
      await page.keyboard.press("Enter");
    }
    await type("11.28");
    expect(await written()).toEqual([10.83, 11.28, "after top-up"]);
    await page.keyboard.press("F6");
    await page.keyboard.press("Shift+F6");
    expect(await focused()).toContain("Recorded: pH 11.28");
  });
});
