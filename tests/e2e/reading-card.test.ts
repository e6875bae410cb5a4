/** @module-tag landing */
import { afterAll, beforeAll, describe, expect, it } from "vitest";

import { openWorkbench, type WorkbenchSession, type WorkbenchWindow } from "./session/workbench-session.ts";

let bench: WorkbenchSession;

beforeAll(async () => {
  bench = await openWorkbench("", { clock: "2027-03-04T08:25" });
});

afterAll(async () => {
  expect([bench.faults, bench.strangers]).toEqual([[], []]);
  await bench.close();
});

const heading = (): Promise<string> => bench.pane.locator(":focus").evaluate((element) => element.textContent);

/** What has the focus in the pane, by its label. */
const focused = (): Promise<string> =>
  bench.pane
    .locator(":focus")
    .evaluate((element) =>
      element instanceof HTMLInputElement ? (element.labels?.[0]?.textContent ?? "") : element.textContent,
    );

const ph = () => bench.pane.getByLabel("pH as read");

describe("a reading at the tank", () => {
  it("takes one press, two fields and Enter from Now, with the verdict in sight before it is recorded", async () => {
    const { page, pane } = bench;
    await pane.getByRole("button", { name: "Reading", exact: true }).click();
    expect(await focused()).toContain("pH as read");
    await page.keyboard.type("10.83");
    await page.keyboard.press("Tab");
    expect(await focused()).toContain("Sample temp");
    await page.keyboard.type("78");
    const verdict = pane.getByRole("status", { name: "What this means" });
    await verdict.getByText("Top up: at or under the trigger.").waitFor();
    await expect.poll(() => verdict.isVisible()).toBe(true);
    const inSight = await pane.locator("html").evaluate(() => {
      const shown = document.querySelector('[aria-label="What this means"]')?.getBoundingClientRect();
      const button = document.querySelector('button[type="submit"]')?.getBoundingClientRect();
      return [shown, button].every((one) => one !== undefined && one.top >= 0 && one.bottom <= window.innerHeight);
    });
    expect(inSight).toBe(true);
    await page.keyboard.press("Enter");
    await pane.getByText("Recorded: pH 10.83 at 78 °F, check of bath B-T1-0301.").waitFor();
    expect(await heading()).toContain("Recorded: pH 10.83");
  });

  it("is shown where it stands in the sheet, and the keyboard stays in the pane", async () => {
    const selected = await bench.page.evaluate(() => {
      const { getters } = (window as unknown as WorkbenchWindow).bathsheetHost.model;
      return getters.getEvaluatedCell(getters.getActivePosition()).value;
    });
    expect(await bench.lookUp("Readings", String(selected), "pH as read")).toBe(10.83);
    expect(await bench.pane.locator("html").evaluate(() => document.hasFocus())).toBe(true);
  });

  it("can be taken back from there", async () => {
    await bench.pane.getByRole("button", { name: /^Take back/ }).click();
    await bench.pane.getByText(/^Recorded: pH 10.83/).waitFor({ state: "detached" });
  });

  it("needs two presses of Tab at most from the pH to the button", async () => {
    const { page, pane } = bench;
    await pane.getByRole("button", { name: "Reading", exact: true }).click();
    await page.keyboard.type("10.9");
    let tabs = 0;
    while (tabs < 5 && !(await focused()).includes("Record reading")) {
      await page.keyboard.press("Tab");
      tabs += 1;
    }
    expect(tabs).toBeLessThanOrEqual(2);
  });
});

describe("what was typed and not recorded", () => {
  it("is there after another tab of the pane, in the form too", async () => {
    const { pane } = bench;
    await pane.getByRole("tab", { name: "Claims" }).click();
    await pane.getByRole("tab", { name: "Record" }).click();
    await pane.getByText("Unfinished, begun Mar 4, 08:25.").waitFor();
    await pane.getByRole("button", { name: "Reading", exact: true }).click();
    expect(await ph().inputValue()).toBe("10.9");
  });

  it("is there after the page was closed and opened again", async () => {
    const { page, pane } = bench;
    await page.reload();
    await pane.getByRole("tab", { name: "Record" }).click();
    await pane.getByRole("button", { name: "Reading", exact: true }).click();
    expect(await ph().inputValue()).toBe("10.9");
    await pane.getByText("Begun Mar 4, 08:25 and not recorded yet. Go on, or press Clear.").waitFor();
  });

  it("goes when it is cleared", async () => {
    const { pane } = bench;
    await pane.getByRole("button", { name: "Clear" }).click();
    expect(await ph().inputValue()).toBe("");
    await pane.getByRole("button", { name: "All entries" }).click();
    expect(await pane.getByText(/Unfinished/).count()).toBe(0);
  });

  it("keeps a question that waits for its answer", async () => {
    const { pane } = bench;
    await pane.getByRole("button", { name: "Reading", exact: true }).click();
    await ph().fill("1.12");
    await pane.getByLabel("Sample temp").fill("78");
    await pane.getByRole("button", { name: "Record reading" }).click();
    await pane.getByRole("button", { name: "Record it anyway" }).waitFor();
    await pane.getByRole("tab", { name: "Now" }).click();
    await pane.getByRole("tab", { name: "Record" }).click();
    await pane.getByRole("button", { name: "Reading", exact: true }).click();
    await pane.getByRole("button", { name: "Record it anyway" }).waitFor();
    await pane.getByRole("button", { name: "Clear" }).click();
  });
});

describe("whoever works on this device", () => {
  it("says so once, and stands in what is recorded from then on", async () => {
    const { pane } = bench;
    await pane.getByRole("tab", { name: "Now" }).click();
    const people = await pane.getByLabel("I am").locator("option").allTextContents();
    expect(people.length).toBeGreaterThan(1);
    const [initials = ""] = (people[1] ?? "").split(",");
    await pane.getByLabel("I am").selectOption(initials);
    await pane.getByRole("button", { name: "Add concentrate" }).click();
    await pane.getByText("More details", { exact: true }).click();
    expect(await pane.getByLabel("Initials").inputValue()).toBe(initials);
  });
});

describe("two baths", () => {
  it("have a draft each: what was read in one tank does not show up under another", async () => {
    const { pane } = bench;
    await pane.getByRole("tab", { name: "Now" }).click();
    await pane.getByRole("button", { name: "Reading", exact: true }).click();
    await ph().fill("10.7");
    await pane.getByLabel("Bath", { exact: true }).selectOption("B-T2-0303");
    await expect.poll(() => ph().inputValue()).toBe("");
    await pane.getByLabel("Bath", { exact: true }).selectOption("B-T1-0301");
    await expect.poll(() => ph().inputValue()).toBe("10.7");
    await pane.getByRole("button", { name: "Clear" }).click();
  });

  it("take the same reading twice, one after the other", async () => {
    const { pane } = bench;
    await pane.getByLabel("Bath", { exact: true }).selectOption("B-T2-0303");
    for (let time = 1; time <= 2; time += 1) {
      await ph().fill("11.31");
      await pane.getByLabel("Sample temp").fill("77");
      const before = await pane.getByText(/^Recorded: /).count();
      await pane.getByRole("button", { name: /^Record (reading|it anyway)$/ }).click();
      if (before === 0) await pane.getByText("Recorded: pH 11.31 at 77 °F, check of bath B-T2-0303.").waitFor();
      await expect.poll(() => ph().inputValue()).toBe("");
    }
    await pane.getByLabel("Bath", { exact: true }).selectOption("B-T1-0301");
  });
});

describe("a top-up", () => {
  it("takes two presses from Now", async () => {
    const { pane } = bench;
    await pane.getByRole("tab", { name: "Now" }).click();
    await pane.getByRole("button", { name: "Add concentrate" }).click();
    await pane.getByRole("button", { name: "Record addition" }).click();
    await pane.getByRole("heading", { name: /^Recorded/ }).waitFor();
  });
});
