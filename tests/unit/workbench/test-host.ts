import * as library from "@odoo/o-spreadsheet";

import { createHost, type Host } from "../../../src/workbench/host/create-host.ts";
import type { FunctionsMetadata } from "../../../src/workbench/host/functions/metadata.ts";

/** Small functions that show what they were handed. */
const metadata: FunctionsMetadata = {
  functions: [
    { id: "TWICE", name: "TWICE", parameters: [{ name: "number", type: "any" }] },
    {
      id: "SHOW",
      name: "SHOW",
      parameters: [
        { name: "first", type: "any" },
        { name: "second", type: "any", optional: true },
      ],
    },
    { id: "SHOWRANGE", name: "SHOWRANGE", parameters: [{ name: "cells", type: "any", dimensionality: "matrix" }] },
    { id: "NUMBER", name: "NUMBER", parameters: [{ name: "number", type: "number" }] },
    {
      id: "SPREAD",
      name: "SPREAD",
      parameters: [{ name: "from", type: "number" }],
      result: { dimensionality: "matrix" },
    },
    { id: "REFUSE", name: "REFUSE", parameters: [{ name: "how", type: "string" }] },
  ],
};

/** A host with a blank workbook of one sheet, Sheet1, and the functions above. */
export function testHost(): Host {
  // The grid library reports every model it makes.
  console.debug = (): void => undefined;
  const host = createHost(library);
  const { CustomFunctions: custom } = host;
  host.loadFunctions(metadata);
  custom.associate("TWICE", (number: number) => number * 2);
  custom.associate("SHOW", (...args: unknown[]) => JSON.stringify(args.slice(0, 2)));
  custom.associate("SHOWRANGE", (cells: unknown) => JSON.stringify(cells));
  custom.associate("NUMBER", (number: number) => number);
  custom.associate("SPREAD", (from: number) => [
    [from, from + 1, from + 2],
    [from + 3, from + 4, from + 5],
  ]);
  custom.associate("REFUSE", (how: string) => {
    // The type of CustomFunctions.Error does not say that it is an Error.
    const refusal = (code: CustomFunctions.ErrorCode, message: string): Error =>
      new custom.Error(code, message) as unknown as Error;
    if (how === "invalid") throw refusal(custom.ErrorCode.invalidValue, "Volume is blank or 0; give more than 0.");
    if (how === "no answer") throw refusal(custom.ErrorCode.notAvailable, "No such bath.");
    throw new Error("a fault");
  });
  return host;
}

/** A table Sales over A1:D4 of Sheet1 whose last column is calculated. */
export async function salesHost(): Promise<Host> {
  const host = testHost();
  await host.Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getItem("Sheet1");
    sheet.getRange("A1:D4").values = [
      ["Person", "Amount, $", "Rate", "Commission"],
      ["Joe", 260, 0.1, ""],
      ["Robert", 660, 0.15, ""],
      ["Michelle", 940, 0.15, ""],
    ];
    sheet.tables.add("A1:D4", true).name = "Sales";
    const formula = "=Sales[[#This Row],[Amount, $]]*Sales[[#This Row],[Rate]]";
    sheet.getRange("D2:D4").formulas = [[formula], [formula], [formula]];
    await context.sync();
  });
  return host;
}

/** Writes formulas or values from a top left cell down and right, and gives the values that follow. */
export async function enter(host: Host, address: string, cells: (string | number | boolean)[][]): Promise<unknown[][]> {
  return host.Excel.run(async (context) => {
    const range = context.workbook.worksheets.getItem("Sheet1").getRange(address);
    range.formulas = cells;
    await context.sync();
    range.load("values");
    await context.sync();
    return range.values as unknown[][];
  });
}

export async function read(
  host: Host,
  address: string,
  property: "values" | "formulas" | "numberFormat",
): Promise<unknown[][]> {
  return host.Excel.run(async (context) => {
    const range = context.workbook.worksheets.getItem("Sheet1").getRange(address).load(property);
    await context.sync();
    return range[property] as unknown[][];
  });
}
