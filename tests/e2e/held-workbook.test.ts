import { afterAll, afterEach, beforeAll, describe, expect, it } from "vitest";

import {
  type Contents,
  openWorkbench,
  type WorkbenchSession,
  type WorkbenchWindow,
} from "./session/workbench-session.ts";

let bench: WorkbenchSession;
/** The demo week before anything was done to it. */
let before: Contents;

beforeAll(async () => {
  bench = await openWorkbench();
  before = await bench.contents();
  await bench.pane.getByRole("tab", { name: "Record" }).click();
  await bench.pane.getByRole("button", { name: "Reading", exact: true }).click();
  await field("pH as read").fill("11.17");
  await field("Sample temp, °F").fill("77");
});

afterEach(async ({ task }) => {
  if (task.result?.state === "fail")
    await bench.page.screenshot({ path: `test-results/${task.name.slice(0, 40)}.png` });
});

afterAll(async () => {
  await bench.close();
});

const field = (name: string) => bench.pane.getByRole("textbox", { name, exact: true });
const form = () => bench.pane.getByRole("form", { name: "Reading" });

/**
 * Presses Record, or what takes its place where the form asks whether an unlikely entry is meant. No
 * focus moves: leaving the grid would end the editing of its cell, which in Excel it does not.
 */
const submit = (): Promise<void> =>
  form()
    .getByRole("button", { name: /^Record (?:reading|it anyway)$/ })
    .dispatchEvent("click");

/** What the pane says to an entry that cannot be written: the words, and nothing lost or written. */
async function refused(words: RegExp): Promise<void> {
  await submit();
  const asked = form().getByRole("button", { name: "Record it anyway" });
  const said = bench.pane.getByRole("alert").getByText(words);
  await said.or(asked).first().waitFor();
  if (await asked.isVisible()) await submit();
  await said.waitFor();
  expect(await field("pH as read").inputValue()).toBe("11.17");
  expect(await bench.contents()).toEqual(before);
}

/** Rows of the readings by their id, every cell. */
function readings({ sheets }: Contents): ReadonlyMap<unknown, readonly unknown[]> {
  return new Map(
    (sheets["Readings"] ?? []).filter((line) => /^R\d+$/.test(String(line[0]))).map((line) => [line[0], line]),
  );
}

describe("an entry that the workbook does not take", () => {
  it("is kept in the form where the workbook is open for reading only", async () => {
    await bench.page.evaluate(() => {
      (window as unknown as WorkbenchWindow).bathsheetHost.model.updateMode("readonly");
    });
    await refused(/open for reading only.*Save a copy/);
    await bench.page.evaluate(() => {
      (window as unknown as WorkbenchWindow).bathsheetHost.model.updateMode("normal");
    });
  });

  it("is kept in the form where the sheet is protected, which is named", async () => {
    const protect = (on: boolean): Promise<void> =>
      bench.page.evaluate(
        (wanted) =>
          (window as unknown as WorkbenchWindow).bathsheetHost.Excel.run(async (context) => {
            const { protection } = context.workbook.worksheets.getItem("Readings");
            if (wanted) protection.protect();
            else protection.unprotect();
            await context.sync();
          }),
        on,
      );
    await protect(true);
    await refused(/The sheet Readings is protected.*Unprotect it/);
    await protect(false);
  });

  it("is kept in the form while a cell is being edited", async () => {
    await bench.page.getByRole("region", { name: "Workbook grid" }).click();
    await bench.select("Baths!A60");
    await bench.page.keyboard.type("call", { delay: 20 });
    await refused(/A cell is being edited.*Press Enter or Esc/);
    await bench.page.getByRole("region", { name: "Workbook grid" }).press("Escape");
  });
});

describe("a table that is sorted and filtered", () => {
  it("takes the entry beneath its last row, and every other row stays", async () => {
    await bench.page.evaluate(() => {
      const { workbook, model } = (window as unknown as WorkbenchWindow).bathsheetHost;
      const table = workbook.tables.named("Readings");
      if (table === undefined) throw new Error("There are no readings.");
      const { sheet, row, column, rows, columns } = table.area;
      const zone = { left: column, right: column + columns - 1, top: row + 1, bottom: row + rows - 1 };
      const ph = column + table.headers.indexOf("pH as read");
      model.dispatch("SORT_CELLS", { sheetId: sheet, col: ph, row: row + 1, zone, sortDirection: "desc" });
      model.dispatch("UPDATE_FILTER", {
        sheetId: sheet,
        col: column + table.headers.indexOf("Purpose"),
        row,
        value: { filterType: "values", hiddenValues: ["check"] },
      });
    });
    const sorted = readings(await bench.contents());
    expect([...sorted.keys()]).not.toEqual([...readings(before).keys()]);
    await submit();
    const anyway = form().getByRole("button", { name: "Record it anyway" });
    await anyway
      .or(bench.pane.getByRole("region", { name: "Recorded" }))
      .first()
      .waitFor();
    if (await anyway.isVisible()) await anyway.click();
    await bench.pane.getByRole("region", { name: "Recorded" }).waitFor();
    expect(await bench.lookUp("Readings", "R020", "pH as read")).toBe(11.17);
    const after = readings(await bench.contents());
    expect([...after.keys()]).toEqual([...sorted.keys(), "R020"]);
    for (const [id, line] of sorted) expect(after.get(id)?.slice(0, 6), String(id)).toEqual(line.slice(0, 6));
    expect(bench.faults).toEqual([]);
  });
});
