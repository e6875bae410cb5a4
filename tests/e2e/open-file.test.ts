/** @module-tag landing */
import { readFile } from "node:fs/promises";
import path from "node:path";

import type { BrowserContext } from "playwright-core";
import { afterAll, afterEach, beforeAll, describe, expect, it } from "vitest";

import { samplesFolder, weekSample } from "../../scripts/build-samples.ts";
import { packed } from "../unit/files/read/packed.ts";
import { axeFaultsIn, wcagTags } from "./session/axe-faults.ts";
import { openWorkbench, type WorkbenchSession } from "./session/workbench-session.ts";

const clock = "2027-03-06T08:00";
const week = path.join(samplesFolder, weekSample);
let bench: WorkbenchSession;

beforeAll(async () => {
  bench = await openWorkbench("?start=empty", { viewport: { width: 1280, height: 800 }, clock, answers: "at once" });
});

afterEach(async ({ task }) => {
  if (task.result?.state === "fail")
    await bench.page.screenshot({ path: `test-results/${task.name.slice(0, 40)}.png` });
});

afterAll(async () => {
  await bench.close();
});

interface Picked {
  readonly name: string;
  readonly mimeType: string;
  readonly buffer: Buffer;
}

function picked(name: string, bytes: Uint8Array): Picked {
  return { name, mimeType: "", buffer: Buffer.from(bytes) };
}

async function choose(file: string | Picked): Promise<void> {
  const chooser = bench.page.waitForEvent("filechooser");
  await bench.page.getByRole("button", { name: "Open", exact: true }).click();
  await (await chooser).setFiles(file);
}

const dialog = () => bench.page.getByRole("dialog");

async function answer(name: string): Promise<void> {
  await dialog().getByRole("button", { name }).click();
  await dialog().waitFor({ state: "detached" });
}

/** The page goes to the log that the file became. */
async function openIt(): Promise<void> {
  const gone = bench.page.waitForEvent("framenavigated", (frame) => frame === bench.page.mainFrame());
  await dialog().getByRole("button", { name: "Open it" }).click();
  await gone;
  await bench.page.locator("#notice").waitFor({ state: "hidden" });
}

const logName = () => bench.page.locator("#log-name").innerText();

/** What a person reads, line by line. */
const said = () => dialog().innerText();

/** The line below the last reading, counted from the headings. */
async function firstFreeLine(): Promise<number> {
  let line = 1;
  while ((await bench.value(await bench.cellOf("Readings", "pH as read", line))) !== "") line += 1;
  return line;
}

async function record(): Promise<void> {
  await bench.pane.getByRole("tab", { name: "Record" }).click();
  await bench.pane.getByRole("button", { name: "Reading", exact: true }).click();
  await bench.pane.getByRole("combobox", { name: "Bath" }).selectOption("B-T2-0303");
  await bench.pane.getByRole("textbox", { name: "pH as read", exact: true }).fill("11.31");
  await bench.pane.getByRole("textbox", { name: "Sample temp, °F", exact: true }).fill("77");
  const form = bench.pane.getByRole("form", { name: "Reading" });
  await form.getByRole("button", { name: "Record reading" }).click();
  const asked = form.getByRole("button", { name: "Record it anyway" });
  const recorded = bench.pane.getByRole("region", { name: "Recorded" });
  await asked.or(recorded).waitFor();
  if (await asked.isVisible()) await asked.click();
  await recorded.waitFor();
}

const people = packed({
  sheets: [
    {
      name: "Joe&apos;s prices",
      rows: "<row><c><v>2</v></c><c><f>_xlfn.XMATCH(1,A1:A2)</f><v>41</v></c></row>",
      after: '<hyperlinks><hyperlink ref="A1"/></hyperlinks>',
    },
    {
      name: "Sums",
      rows: "<row><c><f>'Joe''s prices'!A1*3</f><v>6</v></c><c><f>SUM(A1:B4 A1:A2)</f><v>6</v></c><c><f>-2^2</f><v>4</v></c></row>",
    },
  ],
  names: '<definedName name="Rate">0.07</definedName>',
});

describe("opening a file", () => {
  it("that is no workbook says why, and changes nothing", async () => {
    const before = await bench.contents();
    await choose(picked("notes.xlsx", Buffer.from("not a workbook")));
    await dialog().waitFor();
    expect(await said()).toMatch(/notes\.xlsx cannot be opened.*no Excel workbook \(\.xlsx\)/s);
    await answer("OK");
    expect(await bench.contents()).toEqual(before);
  });

  it("lists what cannot be kept before anything is opened, and stays where the person stays", async () => {
    const before = await bench.contents();
    await bench.setCell("Sheet1!A1", "mine");
    await choose(picked("prices.xlsx", people));
    await dialog().waitFor();
    const text = await said();
    expect(text).toContain("Open prices.xlsx?");
    expect(text).toContain("A workbook with 2 sheets and 4 formulas. It holds no job log of Bathsheet.");
    expect(text).toContain("Sheet Joe's prices is called Joe’s prices here");
    expect(text).toMatch(/Joe.s prices: links \(their texts stay\); 1 formula needs the function XMATCH/);
    expect(text).toContain("1 formula cannot be worked out here, so the file's value stays in its place (B1)");
    expect(text).toContain("1 formula gives something else here than in the file (C1)");
    expect(text).toContain("the name Rate, which stands for 0.07");
    expect(text).toContain("The log on screen, New log, stays kept on this device under its name.");
    await bench.page.screenshot({ path: "test-results/opening-dialog.png" });
    const faults = await axeFaultsIn(bench.page, { tags: wcagTags });
    expect(faults.filter((fault) => /question|losses|answer/.test(fault))).toEqual([]);
    await answer("Stay here");
    expect(await bench.value("Sheet1!A1")).toBe("mine");
    expect(await bench.sheets()).toEqual(Object.keys(before.sheets));
  });

  it("that is a workbook of the shop's own shows its sheets, and the file's value where the grid has none", async () => {
    await choose(picked("prices.xlsx", people));
    await openIt();
    await expect.poll(() => bench.sheets()).toEqual(["Joe’s prices", "Sums"]);
    expect(await logName()).toBe("prices");
    expect(await bench.value("Sums!A1")).toBe(6);
    expect(await bench.value("Sums!B1")).toBe(6);
    expect(await bench.value("'Joe’s prices'!B1")).toBe(41);
  });

  it("that was dropped on the page shows a job log, in which a reading is recorded", async () => {
    const bytes = await readFile(week);
    const transfer = await bench.page.evaluateHandle(
      ({ name, data }) => {
        const carried = new DataTransfer();
        carried.items.add(new File([Uint8Array.from(atob(data), (letter) => letter.charCodeAt(0))], name));
        return carried;
      },
      { name: weekSample, data: bytes.toString("base64") },
    );
    await bench.page.dispatchEvent("body", "dragenter", { dataTransfer: transfer });
    await bench.page.getByText("Drop a workbook (.xlsx) here to open it").waitFor();
    await bench.page.dispatchEvent(".drop-here", "drop", { dataTransfer: transfer });
    await dialog().waitFor();
    expect(await said()).toMatch(/A job log of Bathsheet in US units \(version 1\), with \d+ sheets, \d+ tables and/);
    expect(await said()).toContain("Nothing was found in it that cannot be kept here.");
    await bench.page.screenshot({ path: "test-results/opening-log.png" });
    await openIt();
    await expect.poll(async () => (await bench.sheets()).length).toBe(19);
    expect(await logName()).toBe("demo-week");
    const line = await firstFreeLine();
    await record();
    expect(await bench.value(await bench.cellOf("Readings", "pH as read", line))).toBe(11.31);
    // A column that the log works out is there in the new row too.
    expect(await bench.value(await bench.cellOf("Readings", "Trigger here", line))).toBeTypeOf("number");
    expect(bench.faults).toEqual([]);
    expect(bench.strangers).toEqual([]);
  });

  it("that was saved as a copy a moment ago is the same in every cell", { timeout: 180_000 }, async () => {
    const before = await bench.contents();
    const download = bench.page.waitForEvent("download");
    await bench.page.locator("#save-copy").click();
    const copy = await download;
    expect(copy.suggestedFilename()).toBe("demo-week.xlsx");
    await choose(await copy.path());
    await dialog().waitFor();
    expect(await said()).toContain("Nothing was found in it that cannot be kept here.");
    await openIt();
    await bench.pane.getByRole("combobox", { name: "Bath" }).waitFor();
    expect(await bench.contents()).toEqual(before);
  });

  it("left the logs that were on screen before as they were, each under its name", async () => {
    await bench.page.locator("#log-name").click();
    await dialog().waitFor();
    const text = await said();
    for (const name of ["New log", "prices", "demo-week"]) expect(text).toContain(name);
    await answer("Close");
  });
});

/** As a private window of some browsers does. */
function keepNothing(context: BrowserContext): Promise<unknown> {
  return context.addInitScript(() => {
    Object.defineProperty(window, "indexedDB", {
      get: () => {
        throw new DOMException("Storage is switched off.", "SecurityError");
      },
    });
  });
}

describe("opening a file where the browser keeps nothing", () => {
  it("says what is lost, opens it in the place of the log on screen and goes on", async () => {
    const own = await openWorkbench("?start=empty", {
      viewport: { width: 1280, height: 800 },
      clock,
      answers: "at once",
      prepare: keepNothing,
    });
    try {
      const chooser = own.page.waitForEvent("filechooser");
      await own.page.getByRole("button", { name: "Open", exact: true }).click();
      await (await chooser).setFiles(week);
      const asked = own.page.getByRole("dialog");
      await asked.waitFor();
      expect(await asked.innerText()).toContain("is not kept on this device: save a copy of it first");
      await asked.getByRole("button", { name: "Open it" }).click();
      await expect.poll(async () => (await own.sheets()).length).toBe(19);
      await own.pane.getByRole("combobox", { name: "Bath" }).waitFor();
      await own.setCell("Notes!B40", "kept nowhere");
      expect(await own.value("Notes!B40")).toBe("kept nowhere");
      expect(await own.page.locator("#log-name").innerText()).toBe("demo-week");
      expect(await own.page.getByText(/lets pages keep nothing/).isVisible()).toBe(true);
      expect(own.faults).toEqual([]);
    } finally {
      await own.close();
    }
  });
});
