/** The stand-in is as strict as Excel: each rule of Office.js that the add-in relies on, as a sentence. */
import { describe, expect, it } from "vitest";

import { salesHost, testHost } from "../unit/workbench/test-host.ts";

async function failure(work: Promise<unknown>): Promise<{ readonly code?: string; readonly message: string }> {
  try {
    await work;
  } catch (error) {
    return error as { code?: string; message: string };
  }
  throw new Error("It did not fail.");
}

function thrown(work: () => unknown): { readonly code?: string; readonly message: string } {
  try {
    work();
  } catch (error) {
    return error as { code?: string; message: string };
  }
  throw new Error("It did not throw.");
}

describe("reading", () => {
  it("throws PropertyNotLoaded for a property that was not loaded", async () => {
    const { Excel } = testHost();
    await Excel.run(async (context) => {
      const range = context.workbook.worksheets.getItem("Sheet1").getRange("A1");
      await context.sync();
      expect(thrown(() => range.values).code).toBe("PropertyNotLoaded");
    });
  });

  it("throws PropertyNotLoaded for a property that was loaded but not synced", async () => {
    const { Excel } = testHost();
    await Excel.run(async (context) => {
      const range = context.workbook.worksheets.getItem("Sheet1").getRange("A1").load("address");
      expect(thrown(() => range.address).code).toBe("PropertyNotLoaded");
      await context.sync();
      expect(range.address).toBe("Sheet1!A1");
    });
  });

  it("gives the value of the moment of the load, not of a later change", async () => {
    const { Excel } = testHost();
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Sheet1");
      const cell = sheet.getRange("A1");
      const other = sheet.getRange("A1");
      cell.load("values");
      other.values = [["later"]];
      await context.sync();
      expect(cell.values).toEqual([[""]]);
    });
  });

  it("gives back at once what was set, as Office.js does", async () => {
    const { Excel } = testHost();
    await Excel.run(async (context) => {
      const range = context.workbook.worksheets.getItem("Sheet1").getRange("A1");
      range.values = [["set"]];
      expect(range.values).toEqual([["set"]]);
      await context.sync();
    });
  });

  it("does not know a result's value before the sync", async () => {
    const host = await salesHost();
    await host.Excel.run(async (context) => {
      const count = context.workbook.tables.getItem("Sales").rows.getCount();
      expect(thrown(() => count.value).code).toBe("ValueNotLoaded");
      await context.sync();
      expect(count.value).toBe(3);
    });
  });

  it("has no items in a collection that was not loaded", async () => {
    const { Excel } = testHost();
    await Excel.run(async (context) => {
      const { worksheets } = context.workbook;
      await context.sync();
      expect(thrown(() => worksheets.items).code).toBe("PropertyNotLoaded");
      worksheets.load("items/name");
      await context.sync();
      expect(worksheets.items.map(({ name }) => name)).toEqual(["Sheet1"]);
    });
  });
});

describe("batches", () => {
  it("change nothing before the sync", async () => {
    const host = testHost();
    await host.Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Sheet1").getRange("A1").values = [[1]];
      expect(host.values("Sheet1")).toEqual([]);
      await context.sync();
      expect(host.values("Sheet1")).toEqual([[1]]);
    });
  });

  it("apply writes in the order they were made", async () => {
    const host = testHost();
    await host.Excel.run(async (context) => {
      const cell = context.workbook.worksheets.getItem("Sheet1").getRange("A1");
      cell.values = [[1]];
      cell.values = [[2]];
      await context.sync();
    });
    expect(host.values("Sheet1")).toEqual([[2]]);
  });

  it("end at the first failure: what stood before is applied, what stood after is not", async () => {
    const host = testHost();
    const error = await failure(
      host.Excel.run(async (context) => {
        const sheet = context.workbook.worksheets.getItem("Sheet1");
        sheet.getRange("A1").values = [["before"]];
        context.workbook.worksheets.getItem("Readings").getRange("A1").values = [["nowhere"]];
        sheet.getRange("A2").values = [["after"]];
        await context.sync();
      }),
    );
    expect(error.code).toBe("ItemNotFound");
    expect(host.values("Sheet1")).toEqual([["before"]]);
  });

  it("run what is still queued when the function given to Excel.run ends", async () => {
    const host = testHost();
    await host.Excel.run((context) => {
      context.workbook.worksheets.getItem("Sheet1").getRange("B1").values = [["late"]];
      return Promise.resolve();
    });
    expect(host.values("Sheet1")).toEqual([["", "late"]]);
  });

  it("are refused while a person edits a cell", async () => {
    const host = testHost();
    host.session.isCellBeingEdited = () => true;
    const error = await failure(
      host.Excel.run(async (context) => {
        await context.sync();
      }),
    );
    expect(error.code).toBe("InvalidOperationInCellEditMode");
  });

  it("wait for the end of the editing when asked to", async () => {
    const host = testHost();
    let editing = true;
    host.session.isCellBeingEdited = () => editing;
    setTimeout(() => {
      editing = false;
    }, 60);
    await host.Excel.run({ delayForCellEdit: true }, async (context) => {
      context.workbook.worksheets.getItem("Sheet1").getRange("A1").values = [["patient"]];
      await context.sync();
    });
    expect(host.values("Sheet1")).toEqual([["patient"]]);
  });

  it("are refused on a locked sheet with AccessDenied", async () => {
    const host = testHost();
    host.model.dispatch("LOCK_SHEET", { sheetId: host.model.getters.getActiveSheetId() });
    const error = await failure(
      host.Excel.run(async (context) => {
        context.workbook.worksheets.getItem("Sheet1").getRange("A1").values = [[1]];
        await context.sync();
      }),
    );
    expect(error.code).toBe("AccessDenied");
  });
});

describe("protection", () => {
  it("is read like any property and lifted like any change", async () => {
    const { Excel } = testHost();
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Sheet1");
      sheet.protection.protect();
      sheet.protection.load("protected");
      await context.sync();
      expect(sheet.protection.protected).toBe(true);
      sheet.protection.unprotect();
      sheet.getRange("A1").values = [[1]];
      sheet.load("protection/protected");
      await context.sync();
      expect(sheet.protection.protected).toBe(false);
    });
  });
});

describe("missing things", () => {
  it("become null objects where asked for so, and their parts too", async () => {
    const { Excel } = testHost();
    await Excel.run(async (context) => {
      const table = context.workbook.tables.getItemOrNullObject("Sales");
      const body = table.getDataBodyRange();
      expect(thrown(() => table.isNullObject).code).toBe("PropertyNotLoaded");
      await context.sync();
      expect([table.isNullObject, body.isNullObject]).toEqual([true, true]);
    });
  });

  it("fail with ItemNotFound when a null object is written to", async () => {
    const { Excel } = testHost();
    const error = await failure(
      Excel.run(async (context) => {
        context.workbook.names.getItemOrNullObject("Unit.System").getRange().values = [["US"]];
        await context.sync();
      }),
    );
    expect(error.code).toBe("ItemNotFound");
  });

  it.each(["tables", "names", "worksheets"] as const)("fail with ItemNotFound in %s.getItem", async (collection) => {
    const { Excel } = testHost();
    const error = await failure(
      Excel.run(async (context) => {
        context.workbook[collection].getItem("Nothing");
        await context.sync();
      }),
    );
    expect(error.code).toBe("ItemNotFound");
  });
});

describe("arguments", () => {
  it.each([
    ["too few rows", [[1, 2]]],
    ["too few columns", [[1], [2]]],
    ["a ragged array", [[1, 2], [3]]],
    ["a flat array", [1, 2, 3, 4]],
  ])("of the wrong shape (%s) give InvalidArgument and write nothing", async (_what, values) => {
    const host = testHost();
    const error = await failure(
      host.Excel.run(async (context) => {
        context.workbook.worksheets.getItem("Sheet1").getRange("A1:B2").values = values as unknown as number[][];
        await context.sync();
      }),
    );
    expect(error.code).toBe("InvalidArgument");
    expect(host.values("Sheet1")).toEqual([]);
  });

  it.each(["A1:", "Sheet 1", "A0", "XFE1", "A1048577"])(
    "that are no address (%s) give InvalidArgument",
    async (address) => {
      const { Excel } = testHost();
      const error = await failure(
        Excel.run(async (context) => {
          context.workbook.worksheets.getItem("Sheet1").getRange(address).load("values");
          await context.sync();
        }),
      );
      expect(error.code).toBe("InvalidArgument");
    },
  );

  it("beyond the sheet's edge give InvalidArgument", async () => {
    const { Excel } = testHost();
    const error = await failure(
      Excel.run(async (context) => {
        context.workbook.worksheets.getItem("Sheet1").getRange("A1").getOffsetRange(-1, 0).load("values");
        await context.sync();
      }),
    );
    expect(error.code).toBe("InvalidArgument");
  });

  it.each(["=SUM(A1", "=1+", "=SUM(Sales[Amount])", "=Nothing[[#Data],[x]]"])(
    "that are no formula (%s) give InvalidArgument",
    async (formula) => {
      const host = await salesHost();
      const error = await failure(
        host.Excel.run(async (context) => {
          context.workbook.worksheets.getItem("Sheet1").getRange("F1").formulas = [[formula]];
          await context.sync();
        }),
      );
      expect(error.code).toBe("InvalidArgument");
    },
  );

  it.each(["Two words", "A1", "R1C1", "1st", ""])(
    "that cannot be a table's name (%s) give InvalidArgument",
    async (name) => {
      const host = await salesHost();
      const error = await failure(
        host.Excel.run(async (context) => {
          context.workbook.tables.getItem("Sales").name = name;
          await context.sync();
        }),
      );
      expect(error.code).toBe("InvalidArgument");
    },
  );

  it("that would lay one table over another give InvalidArgument", async () => {
    const host = await salesHost();
    const error = await failure(
      host.Excel.run(async (context) => {
        context.workbook.worksheets.getItem("Sheet1").tables.add("D4:E6", true);
        await context.sync();
      }),
    );
    expect(error.code).toBe("InvalidArgument");
  });

  it("that repeat a sheet's name give ItemAlreadyExists, whatever the case of its letters", async () => {
    const { Excel } = testHost();
    const error = await failure(
      Excel.run(async (context) => {
        context.workbook.worksheets.add("SHEET1");
        await context.sync();
      }),
    );
    expect(error.code).toBe("ItemAlreadyExists");
  });
});

describe("the guard", () => {
  it("throws for a member of Excel that the stand-in does not have", async () => {
    const { Excel } = testHost();
    await Excel.run((context) => {
      const range = context.workbook.worksheets.getItem("Sheet1").getRange("A1");
      expect(thrown(() => range.getSpillingToRange()).message).toContain("no Range.getSpillingToRange");
      expect(thrown(() => context.workbook.pivotTables).message).toContain("no Workbook.pivotTables");
      return Promise.resolve();
    });
  });

  it("throws when a property is set that does not exist or is read-only", async () => {
    const { Excel } = testHost();
    await Excel.run((context) => {
      const range = context.workbook.worksheets.getItem("Sheet1").getRange("A1");
      expect(
        thrown(() => {
          Object.assign(range, { valeus: [[1]] });
        }).message,
      ).toContain("no Range.valeus");
      expect(
        thrown(() => {
          Object.assign(range, { address: "B1" });
        }).message,
      ).toContain("read-only");
      return Promise.resolve();
    });
  });

  it("throws for a property that cannot be loaded", async () => {
    const { Excel } = testHost();
    await Excel.run((context) => {
      const range = context.workbook.worksheets.getItem("Sheet1").getRange("A1");
      expect(thrown(() => range.load("value")).message).toContain("cannot load Range.value");
      return Promise.resolve();
    });
  });
});

describe("change events", () => {
  async function changes(during: (host: ReturnType<typeof testHost>) => Promise<void> | void): Promise<string[]> {
    const host = testHost();
    const seen: string[] = [];
    await host.Excel.run(async (context) => {
      context.workbook.worksheets.onChanged.add((args) => {
        seen.push(args.address);
        return Promise.resolve();
      });
      await context.sync();
    });
    await during(host);
    await new Promise((resolve) => setTimeout(resolve, 0));
    return seen;
  }

  it("tell what a person typed", async () => {
    const seen = await changes((host) => {
      host.model.dispatch("UPDATE_CELL", {
        sheetId: host.model.getters.getActiveSheetId(),
        row: 1,
        col: 1,
        content: "7",
      });
    });
    expect(seen).toEqual(["B2"]);
  });

  it("tell what the add-in wrote", async () => {
    const seen = await changes(async (host) => {
      await host.Excel.run(async (context) => {
        context.workbook.worksheets.getItem("Sheet1").getRange("A1:B2").values = [
          [1, 2],
          [3, 4],
        ];
        await context.sync();
      });
    });
    expect(seen).toEqual(["A1:B2"]);
  });

  it("are silent while events are off", async () => {
    const seen = await changes(async (host) => {
      await host.Excel.run(async (context) => {
        context.runtime.enableEvents = false;
        context.workbook.worksheets.getItem("Sheet1").getRange("A1").values = [[1]];
        context.runtime.enableEvents = true;
        await context.sync();
      });
    });
    expect(seen).toEqual([]);
  });

  it("stop when the handler is removed", async () => {
    const host = testHost();
    const seen: string[] = [];
    await host.Excel.run(async (context) => {
      const registration = context.workbook.worksheets.onChanged.add((args) => {
        seen.push(args.address);
        return Promise.resolve();
      });
      await context.sync();
      registration.remove();
      await context.sync();
      context.workbook.worksheets.getItem("Sheet1").getRange("A1").values = [[1]];
      await context.sync();
    });
    await new Promise((resolve) => setTimeout(resolve, 0));
    expect(seen).toEqual([]);
  });
});

describe("Office", () => {
  it("claims the requirement sets of the manifest's floor and no more", () => {
    const { requirements } = testHost().Office.context;
    expect(requirements.isSetSupported("ExcelApi", "1.14")).toBe(true);
    expect(requirements.isSetSupported("ExcelApi", "1.15")).toBe(false);
    expect(requirements.isSetSupported("SharedRuntime", "1.1")).toBe(true);
    expect(requirements.isSetSupported("NoSuchSet")).toBe(false);
  });

  it("is ready for Excel", async () => {
    const ready = await testHost().Office.onReady();
    expect(ready.host).toBe("Excel");
  });
});
