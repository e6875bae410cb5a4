/** @module-tag landing */
import { afterAll, beforeAll, describe, expect, it } from "vitest";

import { axeFaultsIn, wcagTags } from "./session/axe-faults.ts";
import { openWorkbench, type WorkbenchSession } from "./session/workbench-session.ts";

let bench: WorkbenchSession;

beforeAll(async () => {
  bench = await openWorkbench("", { viewport: { width: 390, height: 844 }, clock: "2027-03-04T08:25", touch: true });
});

afterAll(async () => {
  expect([bench.faults, bench.strangers]).toEqual([[], []]);
  await bench.close();
});

/** 320 px is also what 400 % of 1,280 px comes to. */
const sizes = [
  { width: 320, height: 640, single: true },
  { width: 390, height: 844, single: true },
  { width: 768, height: 1024, single: true },
  { width: 1024, height: 768, single: false },
] as const;

const toggle = (name: "Sheet" | "Pane") => bench.page.getByRole("button", { name, exact: true });

/** How far page and pane are wider than the screen. */
async function sideways(): Promise<number[]> {
  const wider = (): number => document.documentElement.scrollWidth - window.innerWidth;
  const inPane = await bench.pane.locator("html").evaluate((page) => page.scrollWidth - page.clientWidth);
  return [await bench.page.evaluate(wider), inPane];
}

/** What of the page's own can be pressed and is smaller than a finger, or off the screen. */
function smallTargets(): Promise<string[]> {
  return bench.page.locator("button, a[href]").evaluateAll((targets) =>
    targets.flatMap((target) => {
      const { width, height, left, right } = target.getBoundingClientRect();
      const isShown = height > 0 && target.closest("#sheet, .skip") === null;
      const fits = height >= 44 && width >= 44 && left >= 0 && right <= window.innerWidth;
      return !isShown || fits ? [] : [`${String(width)} x ${String(height)} at ${String(left)}: ${target.outerHTML}`];
    }),
  );
}

/** What the head says of the log and has no room for. */
function cutWords(): Promise<string[]> {
  return bench.page
    .locator("#log-name, #kept")
    .evaluateAll((parts) => parts.flatMap((part) => (part.scrollWidth > part.clientWidth ? [part.textContent] : [])));
}

const widthOf = async (id: string): Promise<number> => (await bench.page.locator(id).boundingBox())?.width ?? 0;

async function axeOfPage(): Promise<string[]> {
  const faults: string[] = [];
  const looks = [
    { colorScheme: "light", forcedColors: "none" },
    { colorScheme: "dark", forcedColors: "none" },
    { colorScheme: "dark", forcedColors: "active" },
  ] as const;
  for (const look of looks) {
    await bench.page.emulateMedia(look);
    for (const frame of bench.page.frames())
      faults.push(
        ...(await axeFaultsIn(frame, { tags: wcagTags })).map((fault) => `${Object.values(look).join(" ")}: ${fault}`),
      );
  }
  await bench.page.emulateMedia({ colorScheme: "light", forcedColors: "none" });
  return faults;
}

describe.each(sizes)("at $width x $height", ({ width, height, single }) => {
  beforeAll(async () => {
    // Colors that fade from one scheme to the other have the contrast of neither.
    await bench.page.emulateMedia({ reducedMotion: "reduce" });
    await bench.page.setViewportSize({ width, height });
    await bench.pane.getByRole("tab", { name: "Now" }).tap();
  });

  it("begins with the pane, which fills a small screen, and nothing scrolls sideways", async () => {
    expect(await bench.pane.getByRole("tab", { name: "Now" }).isVisible()).toBe(true);
    await expect.poll(() => widthOf("#pane")).toBe(single ? width : 380);
    expect(await sideways()).toEqual([0, 0]);
    expect(await smallTargets()).toEqual([]);
    expect(await cutWords()).toEqual([]);
    expect(await axeOfPage()).toEqual([]);
  });

  it("leaves no strip beside the view that it shows", async () => {
    const view = await bench.pane.locator("#view").boundingBox();
    const pane = await bench.page.locator("#pane").boundingBox();
    expect(view?.width).toBe((pane?.width ?? 0) - 32);
  });

  // Where both stand side by side, there is nothing to turn to.
  if (single) {
    it("has the sheet one tap away, and the pane from there", async () => {
      await toggle("Sheet").tap();
      await expect.poll(() => widthOf("#sheet")).toBe(width);
      expect(await bench.page.locator("#pane").isVisible()).toBe(false);
      await expect.poll(() => bench.page.locator(".o-sheet.active").isVisible()).toBe(true);
      expect(await sideways()).toEqual([0, 0]);
      expect(await smallTargets()).toEqual([]);
      expect(await axeOfPage()).toEqual([]);
      await toggle("Pane").tap();
      expect(await bench.page.locator("#pane").isVisible()).toBe(true);
      expect(await bench.page.locator("#sheet").isVisible()).toBe(false);
    });

    it("has what does not fit in a menu", async () => {
      const { page } = bench;
      const copy = page.locator("#save-copy");
      expect(await copy.isVisible()).toBe(false);
      await page.getByRole("button", { name: "Menu" }).tap();
      await copy.waitFor();
      expect(await smallTargets()).toEqual([]);
      expect(await axeOfPage()).toEqual([]);
      await bench.pane.locator("main").tap({ position: { x: 4, y: 4 } });
      await copy.waitFor({ state: "hidden" });
      await page.getByRole("button", { name: "Menu" }).tap();
      const [download] = await Promise.all([page.waitForEvent("download"), copy.tap()]);
      expect(download.suggestedFilename()).toBe("Demo week.xlsx");
      expect(await copy.isVisible()).toBe(false);
    });
  }

  it("lists the logs of this device in a dialog that fits", async () => {
    const { page } = bench;
    await page.locator("#log-name").tap();
    const dialog = page.getByRole("dialog", { name: "Logs on this device" });
    await dialog.waitFor();
    expect(await smallTargets()).toEqual([]);
    expect(await sideways()).toEqual([0, 0]);
    expect(await axeOfPage()).toEqual([]);
    await dialog.getByRole("button", { name: "Close" }).tap();
  });
});

describe("a low window", () => {
  const line = () => bench.page.locator(".quiet-line");

  it("says that a sheet has no room for its rows where the sheet is shown, and never behind the pane", async () => {
    await bench.page.setViewportSize({ width: 844, height: 700 });
    await bench.page.setViewportSize({ width: 390, height: 380 });
    await bench.pane.getByRole("tab", { name: "Record" }).tap();
    await bench.pane.getByRole("heading", { name: "What happened?" }).waitFor();
    expect(await line().count()).toBe(0);
    await bench.page.setViewportSize({ width: 390, height: 844 });
    await toggle("Sheet").tap();
    await bench.page.setViewportSize({ width: 390, height: 340 });
    await line().getByText("The window leaves no room below this sheet’s headings.").waitFor();
  });
});
