/** @module-tag landing */
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
});

afterEach(async ({ task }) => {
  if (task.result?.state === "fail")
    await bench.page.screenshot({ path: `test-results/${task.name.slice(0, 40)}.png` });
});

afterAll(async () => {
  await bench.close();
});

const button = (name: string) => bench.pane.getByRole("button", { name, exact: true });
const alert = () => bench.pane.getByRole("alert");

/** As a person does it with the column's menu: the whole column of the sheet goes, and with it the table's. */
function deleteColumn(table: string, header: string): Promise<void> {
  return bench.page.evaluate(
    ([name, column]) =>
      (window as unknown as WorkbenchWindow).bathsheetHost.Excel.run(async (context) => {
        context.workbook.tables
          .getItem(name)
          .columns.getItem(column)
          .getDataBodyRange()
          .getEntireColumn()
          .delete("Left");
        await context.sync();
      }),
    [table, header] as const,
  );
}

function renameTable(from: string, to: string): Promise<void> {
  return bench.page.evaluate(
    ([former, name]) =>
      (window as unknown as WorkbenchWindow).bathsheetHost.Excel.run(async (context) => {
        context.workbook.tables.getItem(former).name = name;
        await context.sync();
      }),
    [from, to] as const,
  );
}

describe("a damaged log", () => {
  it("that lacks a computed column says which, what repair does, and stays as it is where the repair is cancelled", async () => {
    await deleteColumn("Readings", "Verdict");
    await alert()
      .getByText(/column "Verdict" of table Readings \(sheet Readings\) is missing/)
      .waitFor();
    await bench.pane.getByText(/puts the lost part back and repairs formulas that need it/).waitFor();
    const damaged = await bench.contents();
    await bench.cancelAt("Adding what is missing", 1);
    // Looked at a moment later, in the middle of the repair, which must not take its view away.
    await bench.setCell("Baths!A60", "call Ann");
    await button("Add what is missing").click();
    await bench.pane.getByText(/the workbook is as it was/).waitFor();
    await bench.setCell("Baths!A60", "");
    expect(await bench.contents()).toEqual(damaged);
  });

  it("gets the column back, with every formula that broke, and no other cell is changed", async () => {
    await button("Add what is missing").click();
    await bench.pane.getByRole("region", { name: "What was done" }).getByText("New in Readings: Verdict.").waitFor();
    expect(await bench.contents()).toEqual(before);
    await button("Go to the log").click();
    await bench.pane.getByRole("combobox", { name: "Bath" }).waitFor();
  });

  it("with numbers typed over its formulas is repaired from the Shop view, which lists each of them", async () => {
    const readings = before.tables.find(({ name }) => name === "Readings");
    const [, column = "", row = ""] = /!\$?([A-Z]+)\$?(\d+)/.exec(readings?.address ?? "") ?? [];
    const letter = String.fromCharCode(column.charCodeAt(0) + (readings?.headers.indexOf("Verdict") ?? 0));
    const over = (line: number): string => `Readings!${letter}${String(Number(row) + line)}`;
    for (const line of [1, 3]) await bench.setCell(over(line), String(line));
    await bench.view("Shop");
    await bench.pane.getByText("Formulas", { exact: true }).click();
    await button("Repair formulas").click();
    const replaced = bench.pane.getByRole("group", { name: "Typed over formulas" });
    await replaced.waitFor();
    expect(await replaced.getByRole("listitem").allInnerTexts()).toEqual([
      "Readings R001, Verdict: 1",
      "Readings R003, Verdict: 3",
    ]);
    expect(await bench.contents()).toEqual(before);
    await button("Go to the log").click();
    await bench.pane.getByRole("heading", { name: "The shop’s own figures" }).waitFor();
  });

  it("with a verdict typed over that no advice looks at is told of at once, and put right with one tap", async () => {
    const readings = before.tables.find(({ name }) => name === "Readings");
    const [, column = "", row = ""] = /!\$?([A-Z]+)\$?(\d+)/.exec(readings?.address ?? "") ?? [];
    const letter = String.fromCharCode(column.charCodeAt(0) + (readings?.headers.indexOf("Verdict") ?? 0));
    await bench.pane.getByRole("tab", { name: "Now" }).click();
    await bench.setCell(`Readings!${letter}${String(Number(row) + 1)}`, "hold");
    await bench.pane
      .getByText(
        /^Reading R001 of .*, on the sheet Readings shows “hold” under Verdict, and its formula gives “baseline”/,
      )
      .waitFor();
    await button("Repair formulas").click();
    await bench.pane
      .getByRole("group", { name: "Typed over formulas" })
      .getByText("Readings R001, Verdict: hold")
      .waitFor();
    expect(await bench.contents()).toEqual(before);
    await button("Go to the log").click();
    await bench.pane.getByRole("combobox", { name: "Bath" }).waitFor();
    await bench.view("Shop");
  });

  it("with a renamed table adds no second one, and says where the name is given back", async () => {
    await renameTable("Loads", "Lots");
    // A new name alone tells the pane nothing; the next change in any cell does.
    await bench.setCell("Baths!A60", "call Ann");
    await alert()
      .getByText(/table Loads \(sheet Loads\) is missing or renamed/)
      .waitFor();
    await button("Add what is missing").click();
    await alert()
      .getByText(/give it the name Loads again \(Table Design, Table Name\)/)
      .waitFor();
    await renameTable("Lots", "Loads");
    await bench.setCell("Baths!A60", "");
    await bench.pane.getByRole("heading", { name: "The shop’s own figures" }).waitFor();
    expect(await bench.contents()).toEqual(before);
    expect(bench.faults).toEqual([]);
  });
});
