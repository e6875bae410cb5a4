import { describe, expect, it } from "vitest";

import { enter, read, testHost } from "./test-host.ts";

const tooltip = (host: ReturnType<typeof testHost>, row: number, column: number): string | undefined =>
  host.workbook.cells.tooltip({ sheet: host.model.getters.getActiveSheetId(), row, column });

describe("a custom function", () => {
  it("is called by its name behind the namespace", async () => {
    expect(await enter(testHost(), "A1:B1", [["=BATH.TWICE(21)", "=bath.twice(A1)"]])).toEqual([[42, 84]]);
  });

  it("gets null for an omitted optional argument and for a blank cell", async () => {
    const values = await enter(testHost(), "B1:B3", [["=BATH.SHOW(1)"], ["=BATH.SHOW(A9,2)"], ["=BATH.SHOW(1,)"]]);
    expect(values).toEqual([["[1,null]"], ["[null,2]"], ["[1,null]"]]);
  });

  it("gets text as text and truth values as truth values", async () => {
    const host = testHost();
    await enter(host, "A1:A2", [["'1+28"], [true]]);
    expect(await enter(host, "B1", [["=BATH.SHOW(A1,A2)"]])).toEqual([['["1+28",true]']]);
  });

  it("gets a range as rows of columns, a single cell as a range of one", async () => {
    const host = testHost();
    await enter(host, "A1:B2", [
      [1, "a"],
      ["", 4],
    ]);
    expect(await enter(host, "D1:D2", [["=BATH.SHOWRANGE(A1:B2)"], ["=BATH.SHOWRANGE(B1)"]])).toEqual([
      ['[[1,"a"],[null,4]]'],
      ['[["a"]]'],
    ]);
  });

  it("is not called with an error: the error passes through", async () => {
    const host = testHost();
    await enter(host, "A1", [["=1/0"]]);
    expect(
      await enter(host, "B1:B3", [["=BATH.TWICE(A1)"], ["=BATH.SHOWRANGE(A1:A2)"], ["=BATH.TWICE(NA())"]]),
    ).toEqual([["#DIV/0!"], ["#DIV/0!"], ["#N/A"]]);
  });

  it("gets a typed argument converted, or is not called", async () => {
    const host = testHost();
    await enter(host, "A1:A3", [["'5"], [true], ["five"]]);
    expect(await enter(host, "B1:B3", [["=BATH.NUMBER(A1)"], ["=BATH.NUMBER(A2)"], ["=BATH.NUMBER(A3)"]])).toEqual([
      [5],
      [1],
      ["#VALUE!"],
    ]);
  });

  it("spills an array, row by row", async () => {
    const host = testHost();
    await enter(host, "A1", [["=BATH.SPREAD(1)"]]);
    expect(await read(host, "A1:C2", "values")).toEqual([
      [1, 2, 3],
      [4, 5, 6],
    ]);
  });

  it("gives one element of its array to INDEX", async () => {
    expect(await enter(testHost(), "A1:A2", [["=INDEX(BATH.SPREAD(1),1,2)"], ["=INDEX(BATH.SPREAD(1),2,3)"]])).toEqual([
      [2],
      [6],
    ]);
  });

  it("shows #SPILL! where its array has no room", async () => {
    const host = testHost();
    await enter(host, "B2", [["in the way"]]);
    expect(await enter(host, "A1", [["=BATH.SPREAD(1)"]])).toEqual([["#SPILL!"]]);
  });

  it("that refuses shows its code in the cell and its words on hovering", async () => {
    const host = testHost();
    expect(
      await enter(host, "A1:A3", [
        ['=BATH.REFUSE("invalid")'],
        ['=BATH.REFUSE("no answer")'],
        ['=BATH.REFUSE("otherwise")'],
      ]),
    ).toEqual([["#VALUE!"], ["#N/A"], ["#VALUE!"]]);
    expect([tooltip(host, 0, 0), tooltip(host, 1, 0)]).toEqual([
      "Volume is blank or 0; give more than 0.",
      "No such bath.",
    ]);
    expect(tooltip(host, 2, 0)).not.toContain("a fault");
  });

  it("counts as an error for formulas around it", async () => {
    expect(
      await enter(testHost(), "A1:B1", [
        ['=ISERROR(BATH.REFUSE("invalid"))', '=IFERROR(BATH.REFUSE("invalid"),"caught")'],
      ]),
    ).toEqual([[true, "caught"]]);
  });

  it("is #BUSY! until its code is there, then calculated", async () => {
    const host = testHost();
    host.loadFunctions({ functions: [{ id: "LATE", name: "LATE", parameters: [] }] });
    expect(await enter(host, "A1", [["=BATH.LATE()"]])).toEqual([["#BUSY!"]]);
    host.CustomFunctions.associate("LATE", () => "there");
    expect(await read(host, "A1", "values")).toEqual([["there"]]);
  });

  it("that is not in functions.json is #NAME?", async () => {
    expect(await enter(testHost(), "A1", [["=BATH.NOTHING(1)"]])).toEqual([["#NAME?"]]);
  });

  it("is known to the formula bar with its arguments", async () => {
    const { functionRegistry } = (await import("@odoo/o-spreadsheet")).registries;
    testHost();
    const description = functionRegistry.get("BATH.SHOW");
    expect(description.args.map(({ name, optional }) => [name, optional ?? false])).toEqual([
      ["first", false],
      ["second", true],
    ]);
  });
});
