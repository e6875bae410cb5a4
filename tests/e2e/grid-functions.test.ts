import { afterAll, beforeAll, describe, expect, it } from "vitest";

import { openWorkbench, type WorkbenchSession } from "./session/workbench-session.ts";

let bench: WorkbenchSession;

beforeAll(async () => {
  bench = await openWorkbench("?start=empty");
});

afterAll(async () => {
  await bench.close();
});

/** Milliseconds between two keys: the grid's offers are drawn in between, as for a person. */
const keyPause = 20;

/** Types into the selected cell as a person does: keys, not the test interface. */
async function typeInto(cell: string, text: string, confirm = true): Promise<void> {
  await bench.select(cell);
  await bench.page.keyboard.type(text, { delay: keyPause });
  if (!confirm) return;
  await bench.page.waitForTimeout(10 * keyPause);
  await bench.page.keyboard.press("Enter");
}

describe("worksheet functions in the workbench's grid", () => {
  it("computes a dose that was typed into a cell", async () => {
    await bench.page.getByRole("region", { name: "Workbook grid" }).click();
    await typeInto("Sheet1!A1", '=BATH.DOSE(121.175,"1+28")');
    // 1 part in 29 parts of bath.
    expect(await bench.value("Sheet1!A1")).toBeCloseTo(121.175 / 29, 9);
  });

  it("spills a range and takes one element of it", async () => {
    await bench.setCell("Sheet1!C1", "=BATH.SHARE(100,{1;1;1})");
    // A penny-exact split of 100.00 over 1:1:1, ties to the first: arithmetic.
    expect([await bench.value("Sheet1!C1"), await bench.value("Sheet1!C2"), await bench.value("Sheet1!C3")]).toEqual([
      33.34, 33.33, 33.33,
    ]);
    await bench.setCell("Sheet1!E1", "=INDEX(BATH.SHARE(100,{1;1;1}),2)");
    expect(await bench.value("Sheet1!E1")).toBe(33.33);
  });

  it("shows an error with the message that names the argument, what was given and what is allowed", async () => {
    await bench.setCell("Sheet1!A3", '=BATH.DOSE(121.175,"1,500")');
    expect(await bench.value("Sheet1!A3")).toBe("#VALUE!");
    const message = (await bench.tooltip("Sheet1!A3")) ?? "";
    expect(message).toMatch(/rate/i);
    expect(message).toContain("1,500");
  });

  it("refuses a blank volume rather than reading it as zero", async () => {
    await bench.setCell("Sheet1!A4", '=BATH.DOSE(Z99,"1+28")');
    expect(await bench.value("Sheet1!A4")).toBe("#VALUE!");
    expect(await bench.tooltip("Sheet1!A4")).toMatch(/volume is blank or 0/i);
  });

  it("knows the functions while one is being typed", async () => {
    await typeInto("Sheet1!A6", "=BATH.TR", false);
    await bench.page.getByText("BATH.TRIGGER", { exact: true }).first().waitFor();
    await bench.page.keyboard.press("Escape");
    await bench.page.keyboard.press("Escape");
  });

  it("offers the words of an argument that takes a few, and leaves a finished formula as it was typed", async () => {
    await typeInto("Sheet1!G1", '=BATH.ACIDFOR("459 L","6.4 meq/L","hyd', false);
    await bench.page.getByText('"hydrochloric"', { exact: true }).first().waitFor();
    await bench.page.waitForTimeout(10 * keyPause);
    await bench.page.keyboard.press("Tab");
    await bench.page.waitForTimeout(10 * keyPause);
    // Now and then the grid leaves the caret where the typing stopped, amid the word that it put in.
    await bench.page.keyboard.press("End");
    await bench.page.keyboard.type(',31.45,"metric")', { delay: keyPause });
    await bench.page.waitForTimeout(10 * keyPause);
    await bench.page.keyboard.press("Enter");
    // Volume × alkalinity over 10.0 N, the usual figure for hydrochloric acid of 31.45 %.
    await expect.poll(() => bench.value("Sheet1!G1")).toBeCloseTo(0.294, 2);
    await typeInto("Sheet1!G2", '=BATH.HARDNESSCLASS("45 mg/L","WQA")');
    // 45 mg/L is 2.6 gpg: slightly hard by the Water Quality Association's classes, soft by the USGS's.
    await expect.poll(() => bench.value("Sheet1!G2")).toBe("slightly hard");
  });

  it("refuses a call without its arguments once, in words, and keeps what was typed in the cell", async () => {
    const { page } = bench;
    const dialogs = page.getByRole("dialog");
    await bench.setCell("Sheet1!A7", "kept");
    await typeInto("Sheet1!A7", "=BATH.DOSE(100");
    await dialogs.waitFor();
    expect(await dialogs.count()).toBe(1);
    expect(await dialogs.innerText()).toContain(
      "Too few arguments for BATH.DOSE: it needs volume and rate, and was given 1 argument.",
    );
    expect(await bench.value("Sheet1!A7")).toBe("kept");
    await page.keyboard.press("Enter");
    await dialogs.waitFor({ state: "detached" });
    await page.keyboard.press("Backspace");
    await page.keyboard.type(',"1+28")', { delay: keyPause });
    await page.waitForTimeout(10 * keyPause);
    await page.keyboard.press("Enter");
    await expect.poll(() => bench.value("Sheet1!A7")).toBeCloseTo(100 / 29, 9);
    await typeInto("Sheet1!A7", "=BATH.DOSE()");
    await dialogs.getByText("and was given none").waitFor();
    await page.keyboard.press("Enter");
    await dialogs.waitFor({ state: "detached" });
    await page.keyboard.press("Escape");
    expect(await bench.value("Sheet1!A7")).toBeCloseTo(100 / 29, 9);
    await typeInto("Sheet1!A7", "=NOSUCH(1)");
    await expect.poll(() => bench.value("Sheet1!A7")).toBe("#NAME?");
  });

  it("puts a function's example into the selected cell from the pane", async () => {
    await bench.select("Sheet1!A8");
    await bench.view("Functions");
    await bench.pane.getByRole("searchbox").fill("tank");
    await bench.pane.getByText("BATH.TANKVOLUME", { exact: true }).click();
    await bench.pane.getByRole("button", { name: "Put in sheet: TANKVOLUME" }).click();
    await expect.poll(() => bench.value("Sheet1!A8")).toBeTypeOf("number");
  });

  it("has had no fault in the page and asked nothing of any other machine", () => {
    expect(bench.faults).toEqual([]);
    expect(bench.strangers).toEqual([]);
  });
});
