/** @module-tag landing */
import { afterAll, afterEach, beforeAll, describe, expect, it } from "vitest";

import { axeFaults } from "./session/pane-faults.ts";
import { openWorkbench, type WorkbenchSession } from "./session/workbench-session.ts";

let bench: WorkbenchSession;

beforeAll(async () => {
  bench = await openWorkbench("?start=empty", { clock: "2027-03-04T18:00" });
  await bench.page.evaluate(() => {
    document.querySelector("main")?.style.setProperty("--pane-width", "320px");
  });
});

afterEach(async ({ task }) => {
  if (task.result?.state === "fail")
    await bench.page.screenshot({ path: `test-results/${task.name.slice(0, 40)}.png` });
});

afterAll(async () => {
  await bench.close();
});

const button = (name: string | RegExp) => bench.pane.getByRole("button", { name });
const field = (name: string) => bench.pane.getByRole("textbox", { name, exact: true });

const select = (name: string) => bench.pane.getByRole("combobox", { name });

/** A shop's own sheet: a title, headings, and rows of which two can be read. */
const ownSheet = [
  ["Tank log", "", "", ""],
  ["Date", "Time", "pH", "Temp"],
  ["'3/1/2027", "9:00", "'11,4", "25"],
  ["'3/2/2027", "9:00", "", "25"],
  ["'3/3/2027", "'2:30 PM", "11.3", "25"],
  ["'3/4/2027", "9:00", "15", "25"],
  ["'3/3/2027", "14:30", "11.3", "25"],
  ["", "15:30", "11.3", "25"],
] as const;

/** Where the fourth reading goes. */
const fourth = (header: string): Promise<string> => bench.cellOf("Readings", header, 4);

async function ownCells(): Promise<unknown[]> {
  const cells = ownSheet.flatMap((row, at) =>
    row.map((_, column) => `Sheet1!${"ABCDE".charAt(column)}${String(at + 1)}`),
  );
  return Promise.all(cells.map((cell) => bench.value(cell)));
}

async function record(ph: string): Promise<void> {
  await bench.pane.getByRole("tab", { name: "Record" }).click();
  await bench.pane.getByRole("button", { name: "Reading", exact: true }).click();
  await field("pH as read").fill(ph);
  await field("Sample temp, °F").fill("77");
  const form = bench.pane.getByRole("form", { name: "Reading" });
  await form.getByRole("button", { name: "Record reading" }).click();
  const asked = form.getByRole("button", { name: "Record it anyway" });
  await asked.or(bench.pane.getByRole("region", { name: "Recorded" })).waitFor();
  if (await asked.isVisible()) await asked.click();
  await bench.pane.getByRole("region", { name: "Recorded" }).waitFor();
}

/** Faults by WCAG 2.2 A and AA, and how many pixels the content is wider than the pane. */
async function looks(): Promise<readonly [faults: string[], overflow: number]> {
  const overflow = await bench.pane.locator("html").evaluate((page) => page.scrollWidth - page.clientWidth);
  return [await axeFaults(bench), overflow];
}

describe("the first run, at 320 px", () => {
  it.each(["light", "dark"] as const)("offers three ways to begin (%s)", async (colorScheme) => {
    await bench.page.emulateMedia({ colorScheme });
    expect(await bench.pane.getByRole("listitem").allInnerTexts()).toEqual([
      expect.stringMatching(/^Look at the demo week/),
      expect.stringMatching(/^Start a log here/),
      expect.stringMatching(/^Adopt a sheet you already have/),
    ]);
    expect(await looks()).toEqual([[], 0]);
  });

  it("builds nothing when the build is cancelled, and says so", async () => {
    const before = await bench.sheets();
    await bench.cancelAt("Building the demo week", 0);
    await button("Look at the demo week").click();
    await bench.pane.getByText(/the workbook is as it was|before anything was changed/).waitFor();
    expect(await bench.sheets()).toEqual(before);
    expect(await bench.pane.getByRole("alert").count(), "a wish is no error").toBe(0);
    expect(await looks()).toEqual([[], 0]);
  });

  it("builds the log first where a sheet is to be adopted", async () => {
    for (const [row, cells] of ownSheet.entries()) {
      for (const [column, text] of cells.entries())
        await bench.setCell(`Sheet1!${"ABCDE".charAt(column)}${String(row + 1)}`, text);
    }
    await button("Adopt a sheet you already have").click();
    expect(await looks()).toEqual([[], 0]);
    const typed = {
      Claim: "D-0427",
      Tank: "T1",
      "Inside length, in": "48",
      "Inside width, in": "24",
      "Fill depth, in": "25",
      Water: "RO",
      Concentrate: "CN-1",
    };
    for (const [label, text] of Object.entries(typed)) await field(label).fill(text);
    await button("Build log").click();
    await bench.pane.getByRole("heading", { name: "1 of 4: Your sheet" }).waitFor();
    expect(await looks()).toEqual([[], 0]);
  });

  it("adopts a small sheet: asks what it leaves open, lists what cannot be read, writes the rest and leaves the sheet as it was", async () => {
    const before = await ownCells();
    await bench.select("Sheet1!A1");
    await button("Read this sheet").click();
    await bench.pane.getByText("Sheet Sheet1: 6 rows below the headings.").waitFor();
    expect(await select("Row with the headings").inputValue()).toBe("1");
    await button("Next").click();
    expect(await select("pH as read").locator("option:checked").innerText()).toMatch(/pH/);
    expect(await looks()).toEqual([[], 0]);
    await field("Bath, the same for all rows").fill("spring fill");
    await button("Next").click();
    await select('1 blank cell under "Date"').selectOption("above");
    await select('Unit of "Temp"').selectOption("°C");
    await select("3/1/2027 is").selectOption("month first");
    await select('Bath "spring fill" is').selectOption("new");
    await field("Strength wanted").fill("1+28");
    expect(await looks()).toEqual([[], 0]);
    await button("Next").click();
    await bench.pane.getByText("3 rows can be taken, 3 cannot.").waitFor();
    const alike = bench.pane.getByRole("region", { name: "Is this right?" });
    expect(await alike.getByRole("listitem").allInnerTexts()).toEqual(["Row 7: the same as row 5"]);
    expect(await looks()).toEqual([[], 0]);
    await select("Rows that are alike: 1 row").selectOption("leave out");
    expect(
      await bench.pane.getByRole("region", { name: "Rows that cannot be taken" }).getByRole("listitem").allInnerTexts(),
    ).toEqual([
      expect.stringMatching(/^Row 4: pH as read: blank$/),
      expect.stringMatching(/^Row 6: .*"15".*Allowed: 0.1 to 14.5/),
      "Row 7: left out: the same as row 5",
    ]);
    expect(await looks()).toEqual([[], 0]);
    await button("Write 3 rows").click();
    await bench.pane.getByRole("heading", { name: "3 rows are in the log" }).waitFor();
    expect(await bench.lookUp("Readings", "R001", "pH as read")).toBe(11.4);
    expect(await bench.lookUp("Readings", "R001", "Sample temp, °F")).toBe(77);
    expect(await bench.lookUp("Readings", "R002", "pH as read")).toBe(11.3);
    expect(await bench.lookUp("Baths", "spring fill", "Tank")).toBe("T1");
    expect(await ownCells()).toEqual(before);
    await button("Go to the log").click();
  });

  it("takes the last entry back and opens its form again as it stood", async () => {
    await record("11.25");
    const card = bench.pane.getByRole("region", { name: "Recorded" });
    await card.getByRole("button", { name: "All entries" }).click();
    const last = bench.pane.getByRole("region", { name: "Last entry" });
    expect(await looks()).toEqual([[], 0]);
    await last.getByRole("button", { name: /^Take back/ }).click();
    await bench.pane.getByText(/^Taken back: nothing of this entry is in the log now/).waitFor();
    expect(await bench.value(await fourth("Reading"))).toBe("");
    expect(await field("pH as read").inputValue()).toBe("11.25");
    await button("All entries").click();
    expect(await last.count(), "there is nothing left to take back").toBe(0);
  });

  it("leaves an entry that was changed since, and says why", async () => {
    await record("11.26");
    await bench.setCell(await fourth("pH as read"), "11.3");
    await bench.pane.getByRole("button", { name: /^Take back/ }).click();
    await bench.pane
      .getByRole("alert")
      .getByText(/changed since/)
      .waitFor();
    expect(await bench.value(await fourth("Reading"))).toBe("R004");
    expect(await looks()).toEqual([[], 0]);
  });

  it("has had no fault in the page and asked nothing of any other machine", () => {
    expect(bench.faults).toEqual([]);
    expect(bench.strangers).toEqual([]);
  });
});
