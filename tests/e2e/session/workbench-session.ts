import { type Browser, type BrowserContext, chromium, type FrameLocator, type Page } from "playwright-core";

import { serve } from "../../../scripts/serve.ts";
import { ensureBrowser, headlessFlags } from "../../../scripts/tests/find-browser.ts";
import type { WorkbookState } from "../../../src/state/workbook-state.ts";
import type { Host } from "../../../src/workbench/host/create-host.ts";
import type { CellValue } from "../../../src/workbench/host/workbook/cells.ts";
import { randomSeed } from "../../setup/random-runs.ts";

/** The part of the workbench's test interface that the browser tests use. */
export interface WorkbenchWindow {
  readonly bathsheetWorkbench: {
    readonly answered: () => Promise<void>;
    readonly value: (address: string) => string | number | boolean;
    readonly tooltip: (address: string) => string | undefined;
    readonly setCell: (address: string, content: string) => void;
    readonly select: (address: string) => void;
    readonly sheets: () => readonly string[];
    readonly tables: () => readonly {
      readonly name: string;
      readonly address: string;
      readonly headers: readonly string[];
    }[];
  };
  /** The host behind the grid, for what a person does to a workbook and no test tool has a word for. */
  readonly bathsheetHost: Host;
}

/** All that a workbook holds: its tables with their places and headings, and every sheet's cells. */
export interface Contents {
  readonly tables: ReturnType<WorkbenchWindow["bathsheetWorkbench"]["tables"]>;
  readonly sheets: Readonly<Record<string, CellValue[][]>>;
}

/** A browser with the built workbench in it. Everything that goes wrong in the page is kept in `faults`. */
export interface WorkbenchSession {
  readonly page: Page;
  readonly pane: FrameLocator;
  readonly faults: string[];
  /** Requests that left this machine, which must stay empty. */
  readonly strangers: string[];
  value(address: string): Promise<string | number | boolean>;
  /** The cell under a header, in the row whose first cell is `key`, found as a person would look it up. */
  lookUp(sheet: string, key: string, header: string): Promise<string | number | boolean>;
  /** Where a cell of a table stands: line 0 is its headings, the first line below the table comes after its last. */
  cellOf(table: string, header: string, line: number): Promise<string>;
  tooltip(address: string): Promise<string | undefined>;
  setCell(address: string, content: string): Promise<void>;
  select(address: string): Promise<void>;
  sheets(): Promise<readonly string[]>;
  /** Opens a view of the pane, by its tab or by the list behind More. */
  view(name: View): Promise<void>;
  contents(): Promise<Contents>;
  /** Presses Cancel as soon as the work's bar has come to `step`: the stand-in works faster than a person presses. */
  cancelAt(doing: string, step: number): Promise<void>;
  close(): Promise<void>;
}

/** Runs in the page, so it can use nothing from outside itself. */
function lookUpInGrid({
  sheet,
  key,
  header,
}: {
  sheet: string;
  key: string;
  header: string;
}): string | number | boolean {
  const { value } = (window as unknown as WorkbenchWindow).bathsheetWorkbench;
  const letters = (column: number): string =>
    (column < 26 ? "" : String.fromCharCode(64 + Math.floor(column / 26))) + String.fromCharCode(65 + (column % 26));
  const at = (row: number, column: number): string | number | boolean => value(`${sheet}!${letters(column)}${row}`);
  const rows = Array.from({ length: 80 }, (_, index) => index + 1);
  const columns = Array.from({ length: 52 }, (_, index) => index);
  const column = columns.find((one) => rows.some((row) => at(row, one) === header));
  if (column === undefined) throw new Error(`Sheet ${sheet} has no header ${header}`);
  // Tables that are printed two pages wide begin in the second column.
  const row = rows.find((one) => at(one, 0) === key || at(one, 1) === key);
  if (row === undefined) throw new Error(`Sheet ${sheet} has no row ${key}`);
  return at(row, column);
}

/** Runs in the page, as above. */
function cellInTable({ table, header, line }: { table: string; header: string; line: number }): string {
  const found = (window as unknown as WorkbenchWindow).bathsheetWorkbench.tables().find(({ name }) => name === table);
  const corner = /^'?([^'!]+)'?!\$?([A-Z]+)\$?(\d+)/.exec(found?.address ?? "");
  const at = found?.headers.indexOf(header) ?? -1;
  if (corner === null || at < 0) throw new Error(`There is no column ${header} of a table ${table}`);
  const [, sheet = "", letters = "", row = ""] = corner;
  const first = letters.split("").reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
  const column = first + at;
  const name =
    (column < 26 ? "" : String.fromCharCode(64 + Math.floor(column / 26))) + String.fromCharCode(65 + (column % 26));
  return `${sheet}!${name}${String(Number(row) + line)}`;
}

/** Runs in the page, as above. */
function allContents(): Contents {
  const { bathsheetWorkbench: tools, bathsheetHost: host } = window as unknown as WorkbenchWindow;
  return {
    tables: tools.tables(),
    sheets: Object.fromEntries(tools.sheets().map((name) => [name, host.values(name)])),
  };
}

/** Runs in the pane's frame, as above. */
function watchForCancel(body: Element, { doing, step }: { doing: string; step: number }): void {
  let isSeen = false;
  const watch = new MutationObserver(() => {
    const bar = body.querySelector(`[role="progressbar"][aria-label="${doing}"]`);
    // As on a busy machine: a look at the workbook that was put off comes due in the middle of the work.
    const until = performance.now() + (isSeen || bar === null ? 0 : 500);
    while (performance.now() < until);
    isSeen ||= bar !== null;
    const cancel = [...body.querySelectorAll("button")].find((one) => one.textContent === "Cancel");
    if (cancel === undefined || bar === null || Number(bar.getAttribute("aria-valuenow") ?? 0) < step) return;
    watch.disconnect();
    cancel.click();
  });
  watch.observe(body, { childList: true, subtree: true, attributes: true });
}

/** Runs in the page and its frames, as above. */
function tourSeen(): void {
  try {
    localStorage.setItem("bathsheet tour", '"seen"');
  } catch {
    // A page that may keep nothing is offered the tour each time.
  }
}

/** Runs in the page, as above. */
function neverKeepFiles(): void {
  if (!("ServiceWorker" in window)) return;
  type Post = (this: ServiceWorker, message: unknown) => void;
  const post = Object.getOwnPropertyDescriptor(ServiceWorker.prototype, "postMessage")?.value as Post;
  ServiceWorker.prototype.postMessage = function (this: ServiceWorker, message: unknown): void {
    if (message !== "keep") post.call(this, message);
  };
}

/** A server: where it is, and how to stop it. */
export interface Served {
  readonly address: string;
  readonly close: () => Promise<void>;
}

type View = "Now" | "Record" | "Claims" | "More" | "Try" | "Functions" | "Shop";

interface SessionSettings {
  readonly viewport?: { readonly width: number; readonly height: number };
  /** What the clock of the page and its frames stands at, such as `2027-03-06T12:00`; timers run on. */
  readonly clock?: string;
  /** A workbook that is open in place of the demo week. */
  readonly saved?: WorkbookState;
  /** Whether the add-in's functions answer at once, or as in Excel later than the write and in any order. */
  readonly answers?: "late" | "at once";
  /** Whether the page keeps its files on the device, as it does for a person. Tests that answer for the server cannot have it so. */
  readonly keepsFiles?: boolean;
  /** A finger in place of the mouse. */
  readonly touch?: boolean;
  /** Whether the person is new on this device, who is offered the tour. */
  readonly isNew?: boolean;
  /** What serves the page, where not our own server does. */
  readonly served?: () => Promise<Served>;
  /** What is done to the browser's profile before the page opens. */
  readonly prepare?: (context: BrowserContext) => Promise<unknown>;
}

export async function openWorkbench(
  query = "",
  {
    viewport = { width: 1440, height: 900 },
    clock,
    saved,
    answers = "late",
    keepsFiles = false,
    touch = false,
    served = () => serve(0),
    isNew = false,
    prepare,
  }: SessionSettings = {},
): Promise<WorkbenchSession> {
  const { address, close } = await served();
  const browser: Browser = await chromium.launch({ executablePath: ensureBrowser(), args: headlessFlags });
  const context = await browser.newContext({ viewport, hasTouch: touch });
  if (clock !== undefined) await context.clock.setFixedTime(clock);
  if (!keepsFiles) await context.addInitScript(neverKeepFiles);
  if (!isNew) await context.addInitScript(tourSeen);
  await prepare?.(context);
  const page = await context.newPage();
  page.setDefaultTimeout(30_000);
  const faults: string[] = [];
  const strangers: string[] = [];
  page.on("pageerror", (error) => faults.push(error.message));
  page.on("console", (message) => {
    if (message.type() === "error") faults.push(message.text());
  });
  page.on("request", (request) => {
    const { hostname, protocol } = new URL(request.url());
    if (protocol.startsWith("http") && hostname !== "localhost" && hostname !== "appsforoffice.microsoft.com")
      strangers.push(request.url());
  });
  if (saved !== undefined) await page.route("**/demo-week.json", (route) => route.fulfill({ json: saved }));
  const paced = new URLSearchParams(query);
  if (answers === "late") {
    paced.set("answers", "late");
    paced.set("seed", String(randomSeed));
  }
  await page.goto(`${address}/?${paced.toString()}`);
  await page.waitForFunction(() => "bathsheetWorkbench" in window);
  const pane = page.frameLocator("iframe");
  await pane.getByRole("heading").first().waitFor();
  const answered = (): Promise<void> =>
    page.evaluate(() => (window as unknown as WorkbenchWindow).bathsheetWorkbench.answered());
  return {
    page,
    pane,
    faults,
    strangers,
    value: async (cell) => {
      await answered();
      return page.evaluate((at) => (window as unknown as WorkbenchWindow).bathsheetWorkbench.value(at), cell);
    },
    lookUp: async (sheet, key, header) => {
      await answered();
      return page.evaluate(lookUpInGrid, { sheet, key, header });
    },
    cellOf: (table, header, line) => page.evaluate(cellInTable, { table, header, line }),
    tooltip: (cell) =>
      page.evaluate((at) => (window as unknown as WorkbenchWindow).bathsheetWorkbench.tooltip(at), cell),
    setCell: (cell, content) =>
      page.evaluate(
        ([at, text]) => {
          (window as unknown as WorkbenchWindow).bathsheetWorkbench.setCell(at, text);
        },
        [cell, content] as const,
      ),
    select: (cell) =>
      page.evaluate((at) => {
        (window as unknown as WorkbenchWindow).bathsheetWorkbench.select(at);
      }, cell),
    sheets: () => page.evaluate(() => (window as unknown as WorkbenchWindow).bathsheetWorkbench.sheets()),
    view: async (name) => {
      const tab = pane.getByRole("tab", { name, exact: true });
      if ((await tab.count()) > 0) {
        await tab.click();
        return;
      }
      await pane.getByRole("tab", { name: "More", exact: true }).click();
      await pane.getByRole("region", { name: "More" }).getByRole("button", { name, exact: true }).click();
    },
    contents: async () => {
      await answered();
      return page.evaluate(allContents);
    },
    cancelAt: (doing, step) => pane.locator("body").evaluate(watchForCancel, { doing, step }),
    close: async () => {
      await browser.close();
      await close();
    },
  };
}
