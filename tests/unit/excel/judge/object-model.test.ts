/** That the second judge judges: what Microsoft's object model refuses is refused here, on each of its builds. */
import { describe, expect, test } from "vitest";

import type { Host } from "../../../../src/workbench/host/create-host.ts";
import { openWorkbook } from "../log/open-workbook.ts";
import { wireOf } from "./judged-excel.ts";

async function codeOf(work: (context: Excel.RequestContext) => Promise<unknown>): Promise<string> {
  try {
    await Excel.run(work);
    return "went through";
  } catch (error) {
    return (error as { readonly code?: string }).code ?? String(error);
  }
}

describe.each(["web", "win32", "mac"] as const)("the object model for %s", (build) => {
  function open(): Host {
    const host = openWorkbook(build);
    expect(Excel.run).not.toBe(host.Excel.run);
    return host;
  }

  test("gives no property that was not loaded, and none before the sync", async () => {
    open();
    const unloaded = codeOf(async (context) => {
      const range = context.workbook.worksheets.getActiveWorksheet().getRange("A1");
      await context.sync();
      return range.values;
    });
    expect(await unloaded).toBe("PropertyNotLoaded");
    const early = codeOf((context) => {
      const range = context.workbook.worksheets.getActiveWorksheet().getRange("A1").load("values");
      return Promise.resolve(range.values);
    });
    expect(await early).toBe("PropertyNotLoaded");
  });

  test("fails for a missing item and gives a null object where one is asked for", async () => {
    open();
    const missing = codeOf(async (context) => {
      context.workbook.tables.getItem("Readings").load("name");
      await context.sync();
    });
    expect(await missing).toBe("ItemNotFound");
    const isNull = await Excel.run(async (context) => {
      const table = context.workbook.tables.getItemOrNullObject("Readings").load("name");
      const worksheet = context.workbook.worksheets.getActiveWorksheet();
      worksheet.getRange("A1:B1").values = [["Who", "When"]];
      const own = worksheet.tables.add("A1:B2", true);
      const [known, unknown] = ["Who", "pH"].map((name) =>
        own.columns.getItemOrNullObject(name).getDataBodyRange().load("rowCount"),
      );
      await context.sync();
      return [table.isNullObject, known?.isNullObject, unknown?.isNullObject];
    });
    expect(isNull).toEqual([true, false, true]);
  });

  test("writes a range of its own size only, through requests that are seen", async () => {
    const host = open();
    const wrong = codeOf(async (context) => {
      context.workbook.worksheets.getActiveWorksheet().getRange("A1:B2").values = [[1, 2, 3]];
      await context.sync();
    });
    expect(await wrong).toBe("InvalidArgument");
    await Excel.run(async (context) => {
      context.workbook.worksheets.getActiveWorksheet().getRange("A1:B2").values = [
        [1, 2],
        [3, 4],
      ];
      await context.sync();
    });
    expect(host.values("Sheet1")).toEqual([
      [1, 2],
      [3, 4],
    ]);
    expect(wireOf(host)?.requests.length).toBeGreaterThan(1);
  });

  test("a load that names no property of the items is not answered", async () => {
    open();
    const loose = codeOf(async (context) => {
      context.workbook.worksheets.load("items");
      await context.sync();
    });
    expect(await loose).toMatch(/names no property/);
  });
});
