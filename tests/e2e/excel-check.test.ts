/**
 * The page that asks Excel what the add-in relies on, in the workbench, whose answers are known.
 *
 * @module-tag landing
 */
import { afterAll, beforeAll, describe, expect, it } from "vitest";

import { looks, narrowPane, paneFaults } from "./session/pane-faults.ts";
import { type Contents, openWorkbench, type WorkbenchSession } from "./session/workbench-session.ts";

let bench: WorkbenchSession;
let before: Contents;
const full = "=BathCheckWords[[#This Row],[pH as read]]*2";

const column = "ok: =A2*2, =A3*2, =A4*2, =A5*2, =A6*2";

const noStandIn = (member: string): string =>
  `could not be tried: The workbench's stand-in for Excel has no ${member}. Add it to src/workbench/host, or do without.`;

/** Each check's id with its verdict and what was seen, without times and sizes. */
function answersIn(report: string): Record<string, string> {
  const block = /^\[(.+)\] .+ \(([a-z-]+)\)\n {2}Asked: .+\n {2}Expected: .+\n {2}Seen: (.+)$/gm;
  return Object.fromEntries(
    [...report.matchAll(block)].map(([, verdict = "", id = "", seen = ""]) => [
      id,
      // One calculation may be told of more than once.
      `${verdict}: ${seen.replace(/\d+ (ms|bytes)/g, "… $1").replace(/: (after … ms)(?: and after … ms)+/g, ": $1")}`,
    ]),
  );
}

beforeAll(async () => {
  bench = await openWorkbench("?start=empty&check", { answers: "at once" });
  before = await bench.contents();
});
afterAll(async () => {
  await bench.close();
});

describe("the check in the workbench", () => {
  it.each(looks)("can be started by anyone (%s)", async (look) => {
    expect(await narrowPane(bench, look)).toBe(320);
    expect(await paneFaults(bench, look)).toEqual([]);
  });

  it("answers every check after one press, and leaves the workbook as it was", async () => {
    const { pane } = bench;
    await pane.getByRole("button", { name: "Run the check" }).click();
    await pane.getByRole("progressbar", { name: "Checks done" }).waitFor();
    await pane.getByRole("button", { name: "Run it again" }).waitFor({ timeout: 100_000 });
    expect(answersIn(await pane.locator("textarea").inputValue())).toEqual({
      "one-formula-for-a-column": column,
      "formula-copied-down": column,
      "one-number-format-for-a-column": 'ok: ["0.00", "0.00", "0.00", "0.00", "0.00"]',
      "this-row-in-full": `ok: ${full}, value 20`,
      "this-row-in-short": "ok: =[@[pH as read]]*2, value 20",
      "validation-of-grown-rows": "ok: List",
      "number-format-of-grown-rows": 'ok: "0.00"',
      "formula-of-grown-rows": 'ok: "=BathCheckGrown[[#This Row],[pH as read]]*2"',
      "value-among-formulas":
        'ok: 19, "=BathCheckGrown[[#This Row],[pH as read]]*2", "=BathCheckGrown[[#This Row],[pH as read]]*2"',
      "conditional-format-of-grown-rows": "ok: 1 in the column, 1 at its last cell",
      "conditional-format-of-copied-looks": "ok: 1 in the column, 1 at its last cell",
      "blank-argument": 'ok: received null, shows "#VALUE!"',
      "omitted-argument": "ok: received null, shows 1",
      "blank-in-a-range": "ok: received [[1], [null], [1]], shows 50",
      "error-argument": 'ok: not called, shows "#N/A"',
      "values-after-a-new-formula": "ok: 1 after … ms",
      "values-after-a-changed-cell": "ok: 2 after … ms",
      "calls-after-one-edit": "ok: 0 for the note, 1 for the volume; 30 when the table was written",
      "changed-events":
        "ok: value: A1 after … ms; formula: B1 after … ms; BATH formula: C1 after … ms; value that changes both formulas: A1 after … ms; number format: none",
      "calculated-events":
        "ok: value: none; formula: none; BATH formula: after … ms; value that changes both formulas: after … ms; number format: after … ms",
      "stored-function-when-inserted": noStandIn("Workbook.insertWorksheetsFromBase64"),
      "stored-function-when-saved": "could not be tried: The file holds no such formula.",
      "file-handed-over": "ok: offered; … bytes after … ms",
      "chart-of-scatter": "ok: Reading, Trigger, Forecast",
      "chart-of-bars": "ok: Baskets",
      "write-to-a-protected-sheet": expect.stringMatching(
        /^ok: AccessDenied: You cannot perform the requested operation\. .* The person reads: Excel refused the entry: a sheet of the log is protected/,
      ) as string,
      "sheet-in-a-protected-workbook":
        "ok: AccessDenied: The workbook's structure is protected. The person reads: The structure of this workbook is protected, so no sheet can be added to it. Nothing was changed.",
      "filter-state-without-buttons": "ok: refused: GeneralException",
      "null-object-of-a-missing-column": "ok: missing: a null object, blank: a null object",
      "one-page-wide": "ok: horizontalFitToPages 1, scale undefined",
      "date-system": "ok: 46351",
      "startup-behavior": "ok: Load, before None",
      "whole-log":
        "ok: built in … ms, looked through for an upgrade … ms, 40 readings recorded … ms, read … ms, taken back … ms",
    });
    expect(await bench.contents()).toEqual(before);
  });

  it("counts the answers, and tells what could not be tried before what is as expected", async () => {
    const { pane } = bench;
    expect(await pane.getByRole("listitem").allTextContents()).toEqual([
      "0 differing",
      "2 not tried",
      "31 as expected",
    ]);
    expect(await pane.locator(".group > summary").allTextContents()).toEqual([
      "2 not tried",
      "31 as expected",
      "The report as text",
    ]);
    const isShown = (hasText: string): Promise<boolean> => pane.locator("summary", { hasText }).isVisible();
    expect([
      await isShown("A function as files spell it, when a file comes in"),
      await isShown("Which day is 1"),
    ]).toEqual([true, false]);
  });

  it("shows of each check what was seen, expected and asked", async () => {
    const { pane } = bench;
    for (const hasText of ["31 as expected", "Which day is 1"]) await pane.locator("summary", { hasText }).click();
    expect(await pane.locator("dd:visible").allTextContents()).toEqual([
      "46351",
      "46351, by days from 1900; a workbook with days from 1904 shows 44889",
      "=DATE(2026,11,25)",
    ]);
  });

  it("copies the report, or shows it selected where the browser does not let it", async () => {
    const { page, pane } = bench;
    const { origin } = new URL(page.url());
    const report = await pane.locator("textarea").inputValue();
    await page.context().grantPermissions(["clipboard-read", "clipboard-write"], { origin });
    await pane.getByRole("button", { name: "Copy the report" }).click();
    await expect.poll(() => pane.getByRole("status").textContent()).toBe("The report is copied.");
    expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(report);
    await pane.locator("body").evaluate(() => {
      Object.defineProperty(navigator, "clipboard", { value: undefined });
    });
    await pane.getByRole("button", { name: "Copy the report" }).click();
    await expect.poll(() => pane.getByRole("status").textContent()).toContain("Press Ctrl+C");
    const selected = await pane
      .locator("textarea")
      .evaluate((text: HTMLTextAreaElement) => text.value.slice(text.selectionStart, text.selectionEnd));
    expect(selected).toBe(report);
  });

  it("puts the report on a sheet", async () => {
    const { pane } = bench;
    await pane.getByRole("button", { name: "Put it on a sheet" }).click();
    await expect.poll(() => pane.getByRole("status").textContent()).toBe("The report is on the sheet Excel check.");
    expect(await bench.value("Excel check!A7")).toBe("31 as expected, 0 differ, 2 could not be tried");
    expect(await bench.value("Excel check!F42")).toBe("whole-log");
  });

  it.each(looks)("shows its answers to anyone (%s)", async (look) => {
    expect(await narrowPane(bench, look)).toBe(320);
    expect(await paneFaults(bench, look)).toEqual([]);
  });

  it("asks nothing of any other place, and no page has failed", () => {
    expect([bench.strangers, bench.faults]).toEqual([[], []]);
  });
});
