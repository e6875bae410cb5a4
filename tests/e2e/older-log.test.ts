/** @module-tag landing */
import { afterAll, afterEach, beforeAll, describe, expect, it } from "vitest";

import { buildLog } from "../../src/excel/log-workbook.ts";
import { jobLog } from "../../src/joblog/job-log.ts";
import { layOut } from "../../src/joblog/layout/lay-out.ts";
import { headerOf } from "../../src/joblog/model/headers.ts";
import { firstTwoDays } from "../demo/days/demo-week.ts";
import { contentOfThen, earlierLog, sheetsAndColumnsLater } from "../unit/excel/log/earlier-log.ts";
import { openWorkbook as openInNode } from "../unit/excel/log/open-workbook.ts";
import { axeFaults } from "./session/pane-faults.ts";
import { type Contents, openWorkbench, type WorkbenchSession } from "./session/workbench-session.ts";

/** The pane knows no shape of a version before its own, so this one lacks nothing that takes one to tell. */
const earlier = earlierLog(sheetsAndColumnsLater);
let bench: WorkbenchSession;
/** As the earlier version left it. */
let before: Contents;

beforeAll(async () => {
  const host = openInNode();
  await buildLog(layOut(earlier, { system: "US" }, contentOfThen(earlier, firstTwoDays)));
  bench = await openWorkbench("", { clock: "2027-03-03T08:00", saved: host.save() });
  await bench.page.evaluate(() => {
    document.querySelector("main")?.style.setProperty("--pane-width", "320px");
  });
  before = await bench.contents();
});

afterEach(async ({ task }) => {
  if (task.result?.state === "fail")
    await bench.page.screenshot({ path: `test-results/${task.name.slice(0, 40)}.png` });
});

afterAll(async () => {
  await bench.close();
});

const upgrade = () => bench.pane.getByRole("button", { name: "Upgrade the log" });

/** What was typed: every input column of the earlier version, cell by cell without the blank lines. */
function typed({ tables, sheets }: Contents): Readonly<Record<string, readonly unknown[]>> {
  const columns = earlier.sheets.flatMap((sheet) =>
    sheet.tables.flatMap((table) => {
      const found = tables.find(({ name }) => name === table.name);
      const headers = table.columns.filter(({ role }) => role === "input").map((column) => headerOf(column, "US"));
      const cells = sheets[sheet.name] ?? [];
      const head = cells.findIndex((line) => headers.every((header) => line.includes(header)));
      if (found === undefined || head < 0) throw new Error(`There is no table ${table.name} on sheet ${sheet.name}`);
      const rows = cells.slice(head + 1, head + 1 + rowCount(found.address));
      return headers.map(
        (header) =>
          [
            `${table.name}[${header}]`,
            rows.map((line) => line[cells[head]?.indexOf(header) ?? -1]).filter((value) => value !== ""),
          ] as const,
      );
    }),
  );
  return Object.fromEntries(columns);
}

/** Rows below the heading of an area such as `Readings!A6:Q30`. */
function rowCount(address: string): number {
  const [first = 0, last = 0] = (address.split("!")[1] ?? "").match(/\d+/g)?.map(Number) ?? [];
  return last - first;
}

describe("a log of an earlier version, at 320 px", () => {
  it("is no fault: the pane says what an upgrade does and keeps, and offers it", async () => {
    await bench.pane.getByRole("heading", { name: "This log was made by an earlier Bathsheet (version 0)" }).waitFor();
    expect(await bench.pane.getByRole("status").innerText()).toMatch(
      /All that you typed stays.*adds the sheets and columns.*lists what it added/s,
    );
    expect(await bench.pane.getByRole("alert").count()).toBe(0);
    expect(await axeFaults(bench)).toEqual([]);
  });

  it("is as it was where the upgrade is cancelled in the middle, and can still be upgraded", async () => {
    await bench.cancelAt("Upgrading the log", 4);
    await upgrade().click();
    await bench.pane.getByText(/what had been added was taken away again, and the workbook is as it was/).waitFor();
    expect(await bench.contents()).toEqual(before);
    expect(await bench.pane.getByRole("alert").count(), "a wish is no error").toBe(0);
  });

  it("upgraded, tells what it added, keeps every typed cell and opens", async () => {
    await upgrade().click();
    const report = bench.pane.getByRole("region", { name: "What was done" });
    await report.waitFor();
    const fresh = jobLog.sheets
      .map(({ name }) => name)
      .filter((name) => !earlier.sheets.some((sheet) => sheet.name === name));
    expect(await report.innerText()).toContain(`New sheets: ${fresh.join(", ")}.`);
    const after = await bench.contents();
    expect(Object.values(typed(before)).flat().length).toBeGreaterThan(200);
    expect(typed(after)).toEqual(typed(before));
    await report.getByRole("button", { name: "Go to the log" }).click();
    await bench.pane.getByRole("combobox", { name: "Bath" }).waitFor();
    expect(await bench.pane.getByRole("combobox", { name: "Bath" }).inputValue()).toBe("B-T1-0301");
    // #N/A is what the log's charts leave a gap at.
    const errors = Object.values(after.sheets)
      .flat(2)
      .filter((value) => typeof value === "string" && value.startsWith("#") && value !== "#N/A");
    expect(errors, "the functions answer in every formula").toEqual([]);
    expect(bench.faults).toEqual([]);
  });
});
