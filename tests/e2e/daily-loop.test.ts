import { afterEach, describe, expect, it } from "vitest";

import { openWorkbench, type WorkbenchSession } from "./session/workbench-session.ts";

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
  it("go by touch alone on a phone, and clear of its keyboard", async () => {
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
});

/** What the focus is on: a field's label, or what a button says. */
function focused(): Promise<string> {
  return bench.pane.locator("html").evaluate(() => {
    const at = document.activeElement;
    const isField = at instanceof HTMLInputElement || at instanceof HTMLSelectElement;
    return (isField ? at.labels?.[0]?.textContent : undefined) ?? at?.textContent ?? "";
  });
}

/** Presses Tab until what has the focus is called so. */
async function tabTo(name: RegExp, key: "Tab" | "Shift+Tab" = "Tab"): Promise<void> {
  for (let presses = 0; presses < 60; presses += 1) {
    if (name.test(await focused())) return;
    await bench.page.keyboard.press(key);
  }
  throw new Error(`${key} never came to ${String(name)}; it stands at ${(await focused()).trim().slice(0, 80)}`);
}

/** Goes from field to field in the order of the form, then presses Enter. In a list the first letters choose. */
async function typeForm(fields: readonly (readonly [label: RegExp, text: string])[]): Promise<void> {
  const { keyboard } = bench.page;
  for (const [label, text] of fields) {
    await tabTo(label);
    await keyboard.press("Control+A");
    await keyboard.type(text);
  }
}

/** Presses the button that Now or the last entry offers. */
async function follow(name: RegExp): Promise<void> {
  // The first log is built meanwhile, which takes a while.
  await bench.pane.getByRole("button", { name }).first().waitFor({ timeout: 60_000 });
  await tabTo(name);
  await bench.page.keyboard.press("Enter");
}

/** Records by the button, and once more where the form asks. */
async function record(name: RegExp): Promise<void> {
  const { pane } = bench;
  await tabTo(name);
  await bench.page.keyboard.press("Enter");
  const anyway = pane.getByRole("button", { name: "Record it anyway" });
  const done = pane.getByText(/^Recorded:/).first();
  await anyway.or(done).first().waitFor();
  if (await anyway.isVisible()) {
    await tabTo(/^Record it anyway$/);
    await bench.page.keyboard.press("Enter");
  }
  await done.waitFor();
}

describe("a day from the empty workbook to the bath that is back", () => {
  it("goes by the keyboard alone", { tags: "landing", timeout: 120_000 }, async () => {
    bench = await openWorkbench("?start=empty", { viewport: { width: 1280, height: 800 }, clock: "2027-03-04T06:50" });
    const { page, pane } = bench;
    await follow(/^Start a log here/);
    await typeForm([
      [/^Claim/, "D-0427"],
      [/^Tank/, "T1"],
      [/^Inside length/, "48"],
      [/^Inside width/, "24"],
      [/^Fill depth/, "25"],
      [/^Water/, "RO"],
      [/^Concentrate/, "CN-1"],
    ]);
    await page.keyboard.press("Enter");
    await follow(/^Charge/);
    await typeForm([
      [/^Strength wanted/, "1+28"],
      [/^Water in/, "117"],
      [/^Concentrate in/, "4.178"],
    ]);
    await record(/^Record charge$/);
    await itIs("09:30");
    await follow(/^Bench test/);
    await typeForm(
      [/^Metal/, /^Plastic/, /^Sealed/, /^Smooth/, /^Painted/].map((surface) => [surface, "pass"] as const),
    );
    await record(/^Record bench test$/);
    await itIs("09:45");
    await follow(/^Baseline/);
    await typeForm([
      [/^pH of reading 1/, "11.42"],
      [/^Sample temp of reading 1/, "77"],
      [/^pH of reading 2/, "11.43"],
      [/^Sample temp of reading 2/, "77"],
      [/^pH of reading 3/, "11.41"],
      [/^Sample temp of reading 3/, "77"],
    ]);
    await record(/^Record baseline$/);
    await itIs("10:10");
    await follow(/^All entries/);
    await follow(/^Load/);
    await typeForm([
      [/^Baskets/, "3"],
      [/^Soil/, "medium"],
      [/^In the bath/, "20"],
    ]);
    await record(/^Record load$/);
    await itIs("15:00");
    const read = async (ph: string): Promise<void> => {
      await typeForm([
        [/^pH as read/, ph],
        [/^Sample temp/, "77"],
      ]);
      await page.keyboard.press("Enter");
      await recorded(new RegExp(`^Recorded: pH ${ph.replace(".", "\\.")} at 77 °F`));
    };
    await follow(/^All entries/);
    await follow(/^Reading/);
    await read("10.83");
    await itIs("15:04");
    await follow(/^Add concentrate/);
    await record(/^Record addition$/);
    await itIs("15:15");
    await tabTo(/^Record$/, "Shift+Tab");
    await page.keyboard.press("ArrowLeft");
    await page.keyboard.press("Enter");
    await pane.getByRole("combobox", { name: "Bath" }).waitFor();
    if (!(await pane.getByLabel("pH as read").isVisible())) await follow(/^Reading$/);
    await read("11.38");
    const column = async (table: string, header: string, line: number): Promise<unknown> =>
      bench.value(await bench.cellOf(table, header, line));
    expect(await column("Readings", "Verdict", 4)).toBe("top up");
    expect(await column("Readings", "Purpose", 5)).toBe("after top-up");
    expect(await column("Loads", "Baskets", 1)).toBe(3);
    expect(await column("Baths", "State", 1)).toBe("in use");
    await page.keyboard.press("F6");
    await page.keyboard.press("Shift+F6");
    expect(await focused()).toContain("Recorded: pH 11.38");
  });
});
