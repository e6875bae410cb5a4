/** @module-tag landing */
import { readFile } from "node:fs/promises";

import type { BrowserContext, Page } from "playwright-core";
import { afterEach, describe, expect, it } from "vitest";

import { at, cellsOf, listAt, parsed, partsOf } from "../unit/files/read-parts.ts";
import { openWorkbench, type WorkbenchSession, type WorkbenchWindow } from "./session/workbench-session.ts";

let bench: WorkbenchSession;

afterEach(async ({ task }) => {
  if (task.result?.state === "fail")
    await bench.page.screenshot({ path: `test-results/${task.name.slice(0, 40)}.png` });
  await bench.close();
});

function kept(page: Page) {
  return page.locator("#kept");
}

async function settled(page: Page): Promise<Page> {
  await page.waitForFunction(() => "bathsheetWorkbench" in window);
  await page.frameLocator("iframe").getByRole("heading").first().waitFor();
  return page;
}

function origin(page: Page): string {
  return new URL(page.url()).origin;
}

async function another(context: BrowserContext, address: string): Promise<Page> {
  const page = await context.newPage();
  await page.goto(address);
  return settled(page);
}

function valueOn(page: Page, address: string): Promise<string | number | boolean> {
  return page.evaluate((at) => (window as unknown as WorkbenchWindow).bathsheetWorkbench.value(at), address);
}

function sheetsOn(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => (window as unknown as WorkbenchWindow).bathsheetWorkbench.sheets());
}

function typeOn(page: Page, address: string, content: string): Promise<void> {
  return page.evaluate(
    ([at, text]) => {
      (window as unknown as WorkbenchWindow).bathsheetWorkbench.setCell(at, text);
    },
    [address, content] as const,
  );
}

/** Ends the page's process as a browser that runs out of memory does: no event tells the page of it. */
async function kill(page: Page): Promise<void> {
  const crashed = page.waitForEvent("crash");
  const session = await page.context().newCDPSession(page);
  session.send("Page.crash").catch(() => undefined);
  await crashed;
}

describe("what is entered in the workbench", () => {
  it("is there again two seconds later in a new tab after the tab was killed", async () => {
    bench = await openWorkbench("?start=empty");
    const { page } = bench;
    await kept(page).getByText("what you enter is kept on this device").waitFor();
    await typeOn(page, "Sheet1!A1", "12.5");
    await typeOn(page, "Sheet1!A2", "=A1*2");
    const start = Date.now();
    await kept(page)
      .getByText(/^kept on this device, \d\d:\d\d$/)
      .waitFor();
    expect(Date.now() - start).toBeLessThan(2000);
    expect(page.url()).toMatch(/[?&]log=/);
    const [context, home] = [page.context(), origin(page)];
    await kill(page);
    const again = await another(context, home);
    expect(await valueOn(again, "Sheet1!A1")).toBe(12.5);
    expect(await valueOn(again, "Sheet1!A2")).toBe(25);
    await kept(again)
      .getByText(/^kept on this device, \d\d:\d\d$/)
      .waitFor();
    expect(await again.locator("#log-name").textContent()).toBe("New log");
    expect(bench.faults).toEqual([]);
  });

  it("in the demo week's log outlives a reload, with all sheets, and a new log leaves it alone", async () => {
    bench = await openWorkbench("");
    const { page } = bench;
    await typeOn(page, "Readings!B2", "of my own");
    await kept(page)
      .getByText(/^kept on this device/)
      .waitFor();
    const [sheets, contents] = [await bench.sheets(), await bench.contents()];
    await page.reload();
    await settled(page);
    expect(await bench.sheets()).toEqual(sheets);
    expect(await bench.contents()).toEqual(contents);
    await page.getByRole("button", { name: "Logs on this device" }).click();
    await page.getByRole("dialog").getByRole("button", { name: "New log" }).click();
    await page.waitForURL(/start=empty/);
    await settled(page);
    expect(await sheetsOn(page)).toEqual(["Sheet1"]);
    await typeOn(page, "Sheet1!A1", "another log");
    await kept(page)
      .getByText(/^kept on this device/)
      .waitFor();

    await page.getByRole("button", { name: "Logs on this device" }).click();
    const list = page.getByRole("dialog", { name: "Logs on this device" });
    await list.getByText("open here").waitFor();
    expect(await list.locator(".log-name").allTextContents()).toEqual(["New log", "Demo week"]);
    await list.getByRole("button", { name: "Rename New log" }).click();
    await list.getByRole("textbox", { name: "New name of New log" }).fill("Oak Street fire");
    await list.getByRole("button", { name: "Save name" }).click();
    await list.getByText("Oak Street fire").waitFor();
    expect(await page.locator("#log-name").textContent()).toBe("Oak Street fire");
    await list.getByRole("button", { name: "Open Demo week" }).click();
    await page.waitForFunction(() => document.getElementById("log-name")?.textContent === "Demo week");
    await settled(page);
    expect(await bench.value("Readings!B2")).toBe("of my own");

    await page.getByRole("button", { name: "Logs on this device" }).click();
    await list.getByRole("button", { name: "Delete Oak Street fire" }).click();
    const question = page.getByRole("dialog").filter({ hasText: "Delete “Oak Street fire” from this device?" });
    await question.getByRole("button", { name: "Keep it" }).click();
    await list.getByRole("button", { name: "Delete Oak Street fire" }).click();
    await question.getByRole("button", { name: "Delete it" }).click();
    await list.getByText("Oak Street fire").waitFor({ state: "detached" });
    expect(await list.locator(".log-name").allTextContents()).toEqual(["Demo week"]);
    expect(bench.faults).toEqual([]);
  });

  it("in a second tab of the same log is not kept, is said so, and can become a log of its own", async () => {
    bench = await openWorkbench("?start=empty");
    const { page } = bench;
    await typeOn(page, "Sheet1!A1", "first");
    await kept(page)
      .getByText(/^kept on this device/)
      .waitFor();
    const second = await another(page.context(), page.url());
    const trouble = second.getByRole("alert");
    await trouble.getByText("This log is open in another tab. What you enter here is not kept.").waitFor();
    expect(await valueOn(second, "Sheet1!A1")).toBe("first");
    await typeOn(second, "Sheet1!A1", "second");
    await typeOn(page, "Sheet1!A2", "first again");
    await page.waitForTimeout(2500);
    const third = await another(page.context(), page.url());
    expect([await valueOn(third, "Sheet1!A1"), await valueOn(third, "Sheet1!A2")]).toEqual(["first", "first again"]);
    await third.close();
    await second.getByRole("button", { name: "Keep it as a new log" }).click();
    await kept(second)
      .getByText(/^kept on this device/)
      .waitFor();
    expect(await second.locator("#log-name").textContent()).toBe("New log 2");
    await second.reload();
    await settled(second);
    expect(await valueOn(second, "Sheet1!A1")).toBe("second");
    expect(await valueOn(page, "Sheet1!A1")).toBe("first");
  });

  it("asks before the page is left only while something is not kept yet", async () => {
    bench = await openWorkbench("?start=empty");
    const { page } = bench;
    const asked: string[] = [];
    page.on("dialog", (dialog) => {
      asked.push(dialog.type());
      void dialog.accept();
    });
    // A browser asks only on a page that a person has touched.
    await page.mouse.click(400, 500);
    await typeOn(page, "Sheet1!A1", "1");
    await page.reload();
    await settled(page);
    expect(asked).toEqual(["beforeunload"]);
    await page.mouse.click(400, 500);
    await typeOn(page, "Sheet1!A1", "2");
    await kept(page)
      .getByText(/^kept on this device/)
      .waitFor();
    await page.waitForTimeout(2000);
    await page.reload();
    await settled(page);
    expect(asked).toEqual(["beforeunload"]);
    expect(await valueOn(page, "Sheet1!A1")).toBe(2);
  });
});

describe("where the browser keeps nothing", () => {
  it("because it refuses its storage, the page says so at once, works, and asks before it is left", async () => {
    bench = await openWorkbench("?start=empty", {
      prepare: (context) =>
        context.addInitScript(() => {
          IDBFactory.prototype.open = () => {
            throw new DOMException("The user denied permission to access the database.", "SecurityError");
          };
        }),
    });
    const { page } = bench;
    await page
      .getByRole("alert")
      .getByText("Not kept: this browser window lets pages keep nothing. Save a copy before you close it.")
      .waitFor();
    expect(await page.locator("#keep-trouble").getByRole("button", { name: "Save a copy" }).isVisible()).toBe(true);
    await typeOn(page, "Sheet1!A1", "5");
    expect(await valueOn(page, "Sheet1!A1")).toBe(5);
    const question = page.waitForEvent("dialog");
    await page.mouse.click(400, 500);
    const left = page.reload();
    const dialog = await question;
    expect(dialog.type()).toBe("beforeunload");
    await Promise.all([dialog.accept(), left]);
    expect(bench.faults).toEqual([]);
  });

  it("because the device is full, the page says so and keeps it once there is room", async () => {
    bench = await openWorkbench("?start=empty");
    const { page } = bench;
    await typeOn(page, "Sheet1!A1", "before");
    await kept(page)
      .getByText(/^kept on this device/)
      .waitFor();
    await page.evaluate(() => {
      type Put = (this: IDBObjectStore, value: unknown, key?: IDBValidKey) => IDBRequest<IDBValidKey>;
      const put = Object.getOwnPropertyDescriptor(IDBObjectStore.prototype, "put")?.value as Put;
      const full = { is: true };
      Object.assign(window, { full });
      IDBObjectStore.prototype.put = function (this: IDBObjectStore, value: unknown) {
        if (full.is) throw new DOMException("No room.", "QuotaExceededError");
        return put.call(this, value);
      };
    });
    await typeOn(page, "Sheet1!A1", "while full");
    await page
      .getByRole("alert")
      .getByText(/^Not kept since \d\d:\d\d: this device has no room left for it. Save a copy.$/)
      .waitFor();
    const other = await another(page.context(), page.url());
    expect(await valueOn(other, "Sheet1!A1")).toBe("before");
    await other.close();
    await page.evaluate(() => {
      (window as unknown as { full: { is: boolean } }).full.is = false;
    });
    await typeOn(page, "Sheet1!A2", "and after");
    await kept(page)
      .getByText(/^kept on this device/)
      .waitFor();
    await page.reload();
    await settled(page);
    expect([await valueOn(page, "Sheet1!A1"), await valueOn(page, "Sheet1!A2")]).toEqual(["while full", "and after"]);
  });
});

describe("a saved copy", () => {
  it("is an .xlsx file under the log's name with every sheet and value, also of what was just typed", async () => {
    bench = await openWorkbench("");
    const { page } = bench;
    await bench.setCell("Readings!B2", "of my own");
    await kept(page)
      .getByText(/^kept on this device/)
      .waitFor();
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Save a copy" }).first().click(),
    ]);
    expect(download.suggestedFilename()).toBe("Demo week.xlsx");
    const parts = partsOf(new Uint8Array(await readFile(await download.path())));
    const sheets = listAt(parsed(parts, "xl/workbook.xml"), "workbook", "sheets", "sheet").map((one) => one["@name"]);
    expect(sheets).toEqual(await bench.sheets());
    expect(parts.get("xl/sharedStrings.xml")).toContain("of my own");
    const stored = new Set(
      sheets.flatMap((_, index) =>
        [...cellsOf(parts, index + 1).values()].flatMap((cell) =>
          at(cell, "@t") === undefined ? [Number(at(cell, "v"))] : [],
        ),
      ),
    );
    const numbers = Object.values((await bench.contents()).sheets)
      .flat(2)
      .filter((value) => typeof value === "number");
    expect(numbers.length).toBeGreaterThan(1000);
    expect(numbers.filter((value) => !stored.has(value))).toEqual([]);
    expect([...parts.values()].join("")).toContain("_xldudf_BATH_");
    expect(bench.faults).toEqual([]);
    expect(bench.strangers).toEqual([]);
  });
});
