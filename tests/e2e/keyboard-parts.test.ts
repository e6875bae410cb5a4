import { afterAll, beforeAll, describe, expect, it } from "vitest";

import { openWorkbench, type WorkbenchSession, type WorkbenchWindow } from "./session/workbench-session.ts";

let bench: WorkbenchSession;

beforeAll(async () => {
  bench = await openWorkbench("", { viewport: { width: 1280, height: 800 }, clock: "2027-03-04T08:25" });
});

afterAll(async () => {
  expect([bench.faults, bench.strangers]).toEqual([[], []]);
  await bench.close();
});

/** The part of the page that has the keyboard. */
const part = (): Promise<string | undefined> =>
  bench.page.evaluate(
    () => document.activeElement?.closest<HTMLElement>("#skip, #head, #sheet, #divider, #pane")?.id ?? undefined,
  );

const press = (...keys: readonly string[]): Promise<void> =>
  keys.reduce((before, key) => before.then(() => bench.page.keyboard.press(key)), Promise.resolve());

/** The parts that one key comes to, each once as long as it stays there, until it has come to `end`. */
async function walk(key: string, end: string): Promise<string[]> {
  const parts: string[] = [];
  for (let presses = 0; presses < 60; presses += 1) {
    const here = (await part()) ?? "none";
    if (parts.at(-1) !== here) parts.push(here);
    if (here === end) return parts;
    // The cells take Tab for themselves, and say so: Escape before it leaves them.
    if (here === "sheet") await press("Escape");
    await press(key);
  }
  return parts;
}

describe("the keyboard in the workbench", () => {
  it("begins in the pane, not in the grid", async () => {
    expect(await part()).toBe("pane");
  });

  it("goes round the page with F6 and back with Shift+F6, out of the pane too", async () => {
    await bench.pane.getByRole("tab", { name: "Record" }).focus();
    const seen: (string | undefined)[] = [];
    for (const key of ["F6", "F6", "F6", "Shift+F6", "Shift+F6", "Shift+F6"]) {
      await press(key);
      seen.push(await part());
    }
    expect(seen).toEqual(["head", "sheet", "pane", "sheet", "head", "pane"]);
    const again = await bench.pane.locator(":focus").textContent();
    expect(again).toBe("Record");
  });

  it("passes over the pane where it is hidden", async () => {
    const toggle = bench.page.locator("#pane-toggle");
    await toggle.click();
    await press("F6");
    expect(await part()).toBe("sheet");
    await press("F6");
    expect(await part()).toBe("head");
    await toggle.click();
  });

  it("comes first to a link that leads past the grid", async () => {
    await bench.page.locator("#log-name").focus();
    await press("Shift+Tab");
    expect(await bench.page.locator(":focus").textContent()).toBe("Skip to the pane");
    expect(await bench.page.locator(":focus").evaluate((link) => link.getBoundingClientRect().top)).toBe(0);
    await press("Enter");
    expect(await part()).toBe("pane");
  });

  it("walks the whole page with Tab, and back with Shift+Tab, and is trapped nowhere", async () => {
    await bench.page.locator("#skip").focus();
    expect(await walk("Tab", "pane")).toEqual(["skip", "head", "sheet", "divider", "pane"]);
    await bench.page.locator("#divider").focus();
    expect(await walk("Shift+Tab", "skip")).toEqual(["divider", "sheet", "head", "skip"]);
  });

  it("says in words how to leave the cells, and Tab alone goes on to the next cell", async () => {
    await bench.page.locator("#log-name").focus();
    await press("F6");
    await bench.page.locator(".quiet-line", { hasText: "Escape, then Tab leaves the sheet." }).last().waitFor();
    const cells = bench.page.getByRole("textbox", { name: "Cell", exact: true });
    expect(await cells.evaluate((cell) => cell === document.activeElement)).toBe(true);
    await bench.select("Readings!A20");
    await press("Tab");
    expect(await part()).toBe("sheet");
    expect(
      await bench.page.evaluate(() =>
        (window as unknown as WorkbenchWindow).bathsheetHost.model.getters.getActivePosition(),
      ),
    ).toMatchObject({ col: 1, row: 19 });
  });

  it("leaves a cell that is being edited with the second Escape, and what was typed with the first", async () => {
    await bench.select("Readings!N20");
    await bench.page.keyboard.type("half");
    await press("Escape", "Tab");
    expect(await part()).toBe("sheet");
    await press("Escape", "Tab");
    expect(await part()).toBe("divider");
    expect(await bench.value("Readings!N20")).toBe("");
  });
});

describe("an entry that the log refuses in a cell", () => {
  const dialogs = () => bench.page.getByRole("dialog");

  it("is told once, by name, and the right one lands when it is typed at once", async () => {
    const cell = await bench.cellOf("Readings", "pH as read", 5);
    const before = await bench.value(cell);
    await bench.select(cell);
    await bench.page.locator("#log-name").focus();
    await press("F6");
    await bench.page.keyboard.type("112");
    await press("Enter");
    await dialogs().waitFor();
    expect(await dialogs().count()).toBe(1);
    const name = await dialogs().getAttribute("aria-labelledby");
    expect(await bench.page.locator(`#${name ?? ""}`).textContent()).toMatch(/\w/);
    const ok = dialogs().getByRole("button", { name: "OK" });
    expect((await ok.boundingBox())?.height).toBeGreaterThanOrEqual(44);
    await press("Enter");
    await dialogs().waitFor({ state: "detached" });
    expect(await bench.value(cell)).toBe(before);
    await bench.page.keyboard.type("11.2");
    await press("Enter");
    expect(await dialogs().count()).toBe(0);
    expect(await bench.value(cell)).toBe(11.2);
  });

  it("holds the pane up no longer than the cell is edited", async () => {
    const { page, pane } = bench;
    await bench.select(await bench.cellOf("Readings", "Note", 5));
    await page.keyboard.type("a note");
    // Something else changes the log meanwhile, so the pane looks at it.
    await bench.setCell(await bench.cellOf("Readings", "Note", 6), "another");
    await pane.getByText("A cell is being edited").waitFor();
    await press("Escape");
    await pane.getByText("A cell is being edited").waitFor({ state: "detached" });
    await pane.getByRole("button", { name: "Reading", exact: true }).waitFor();
  });
});
