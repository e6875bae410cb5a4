import * as fakes from "fake-indexeddb";
import { afterAll, beforeAll, beforeEach, describe, expect, it, vi } from "vitest";

import type { Host } from "../../../src/workbench/host/create-host.ts";
import { Keeper, type OpenLog } from "../../../src/workbench/page/keep/keeper.ts";
import { type KeptStatus, keptWords, timeWords } from "../../../src/workbench/page/keep/kept-words.ts";
import { type LogChange, LogStore, StorageFull, WrittenElsewhere } from "../../../src/workbench/page/keep/log-store.ts";
import { freeName, newLog, openAsAsked } from "../../../src/workbench/page/keep/opening.ts";
import { enter, read, salesHost, testHost } from "./test-host.ts";

const noon = new Date(2027, 2, 1, 12, 0).getTime();

let store: LogStore;

beforeAll(() => {
  for (const [name, fake] of Object.entries(fakes)) if (/^(?:IDB|indexedDB)/.test(name)) vi.stubGlobal(name, fake);
});

afterAll(() => {
  vi.unstubAllGlobals();
});

beforeEach(async () => {
  store = new LogStore();
  for (const { id } of await store.list()) await store.remove(id);
});

/** Notes which sheets are written, and can be full. */
class WatchedStore extends LogStore {
  readonly written: (readonly string[])[] = [];
  isFull = false;

  override write(change: LogChange): ReturnType<LogStore["write"]> {
    this.written.push(change.sheets);
    return this.isFull ? Promise.reject(new StorageFull("No room.")) : super.write(change);
  }
}

interface Kept {
  readonly keeper: Keeper;
  readonly statuses: KeptStatus[];
  readonly store: WatchedStore;
}

function keep(host: Host, log: OpenLog = newLog("Sales", []), status: KeptStatus = { kind: "nothing entered" }): Kept {
  const statuses: KeptStatus[] = [];
  const watched = new WatchedStore();
  const keeper = new Keeper(
    { host, store: watched, now: () => noon, onFirstKept: () => undefined, onStatus: (one) => statuses.push(one) },
    log,
    status,
  );
  return { keeper, statuses, store: watched };
}

const take = (): Promise<boolean> => Promise.resolve(true);

const demo = (): Promise<undefined> => Promise.resolve(undefined);

async function reopened(): Promise<Host> {
  const host = testHost();
  await openAsAsked({ host, store, now: () => noon, take, demo }, undefined);
  return host;
}

describe("the keeper", () => {
  it("writes nothing as long as nothing is entered, then all sheets, then only what changed", async () => {
    const host = await salesHost();
    const { keeper, statuses, store: watched } = keep(host);
    host.workbook.activate(host.workbook.sheets.add("Notes"));
    expect(keeper.hasUnsaved).toBe(true);
    await keeper.flush();
    const [sales = "", notes = ""] = host.workbook.sheets.ids();
    host.workbook.activate(sales);
    await keeper.flush();
    await enter(host, "F1", [["mine"]]);
    await keeper.flush();
    expect(watched.written).toEqual([[sales, notes], [sales]]);
    expect(statuses).toEqual([
      { kind: "kept", at: noon },
      { kind: "kept", at: noon },
    ]);
    expect(keeper.hasUnsaved).toBe(false);
    expect(await read(await reopened(), "A1:F4", "formulas")).toEqual(await read(host, "A1:F4", "formulas"));
  });

  it("takes away the sheets that were deleted", async () => {
    const host = await salesHost();
    const { keeper } = keep(host);
    const notes = host.workbook.sheets.add("Notes");
    await keeper.flush();
    host.workbook.grid.do("DELETE_SHEET", { sheetId: notes, sheetName: "Notes" });
    await keeper.flush();
    expect((await reopened()).save().sheets.map(({ name }) => name)).toEqual(["Sheet1"]);
  });

  it("keeps what only Office.js sets", async () => {
    const host = await salesHost();
    const { keeper } = keep(host);
    await host.Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Sheet1").pageLayout.orientation = "Landscape";
      await context.sync();
    });
    await keeper.flush();
    expect((await reopened()).save().sheets[0]?.print).toEqual({ orientation: "Landscape" });
  });

  it("says that there is no room, keeps the old state whole, and writes all of it once there is", async () => {
    const host = await salesHost();
    const { keeper, statuses, store: watched } = keep(host);
    await enter(host, "F1", [["before"]]);
    await keeper.flush();
    watched.isFull = true;
    await enter(host, "F1", [["while full"]]);
    await keeper.flush();
    expect(statuses.at(-1)).toEqual({ kind: "full", last: noon });
    expect(keeper.hasUnsaved).toBe(true);
    expect(await read(await reopened(), "F1", "values")).toEqual([["before"]]);
    watched.isFull = false;
    await enter(host, "F2", [["after"]]);
    await keeper.flush();
    expect(statuses.at(-1)).toEqual({ kind: "kept", at: noon });
    expect(await read(await reopened(), "F1:F2", "values")).toEqual([["while full"], ["after"]]);
  });

  it("does not write over a log that another tab wrote", async () => {
    const log = newLog("Sales", []);
    const [here, there] = [await salesHost(), await salesHost()];
    const [mine, other] = [keep(here, log), keep(there, log)];
    await enter(here, "F1", [["here"]]);
    await mine.keeper.flush();
    await enter(there, "F1", [["there"]]);
    await other.keeper.flush();
    expect(other.statuses).toEqual([{ kind: "written elsewhere" }]);
    expect(await read(await reopened(), "F1", "values")).toEqual([["here"]]);
    await other.keeper.keepAsNew(newLog("Sales", await store.list()));
    expect((await store.list()).map(({ name }) => name).sort()).toEqual(["Sales", "Sales 2"]);
  });

  it("writes nothing of a log that is open in another tab", async () => {
    const host = await salesHost();
    const { keeper, store: watched } = keep(host, newLog("Sales", []), { kind: "open elsewhere" });
    await enter(host, "F1", [["mine"]]);
    await keeper.flush();
    expect(watched.written).toEqual([]);
    expect(keeper.hasUnsaved).toBe(true);
  });
});

describe("the storage", () => {
  it("writes all of a log or nothing", async () => {
    const host = await salesHost();
    const { keeper } = keep(host);
    await enter(host, "F1", [["before"]]);
    await keeper.flush();
    const [log] = await store.list();
    const { book, sheets } = host.save();
    const broken = { ...book, order: [...book.order, "more"] };
    const textOf = (sheet: string): string => {
      if (sheet === "more") throw new Error("This sheet cannot be written.");
      return JSON.stringify({ ...sheets[0], name: "Changed" });
    };
    const change = {
      id: log?.id ?? "",
      name: "",
      revision: log?.revision ?? 0,
      book: broken,
      sheets: broken.order,
      textOf,
      now: noon,
    };
    await expect(store.write(change)).rejects.toThrow("This sheet cannot be written.");
    await expect(store.write({ ...change, revision: 7 })).rejects.toThrow(WrittenElsewhere);
    const found = await store.read(log?.id ?? "");
    expect(found?.log).toEqual(log);
    expect(found?.state.sheets.map(({ name }) => name)).toEqual(["Sheet1"]);
  });

  it("renames and removes a log, and lists the one that was opened last in front", async () => {
    for (const name of ["One", "Two"]) {
      const host = await salesHost();
      const { keeper } = keep(host, newLog(name, []));
      await enter(host, "F1", [[name]]);
      await keeper.flush();
    }
    const logs = await store.list();
    const one = logs.find(({ name }) => name === "One")?.id ?? "";
    await store.noteOpened(one, noon + 1);
    await store.rename(one, "First");
    expect((await store.list()).map(({ name }) => name)).toEqual(["First", "Two"]);
    await store.remove(one);
    expect((await store.list()).map(({ name }) => name)).toEqual(["Two"]);
    expect(await store.read(one)).toBeUndefined();
  });

  it("leaves a log alone that cannot be read, and says which and why", async () => {
    const host = await salesHost();
    const { keeper } = keep(host);
    await enter(host, "F1", [["mine"]]);
    await keeper.flush();
    const [log] = await store.list();
    if (log === undefined) throw new Error("No log was kept.");
    const { book } = host.save();
    await store.write({ ...log, book, sheets: book.order, textOf: () => '{"name":"Sheet1"}', now: noon });
    const opened = await openAsAsked({ host: testHost(), store, now: () => noon, take, demo }, { log: log.id });
    expect(opened.status).toMatchObject({ kind: "unreadable", name: "Sales" });
    expect(opened.log.id).not.toBe(log.id);
    expect(keptWords(opened.status, noon)).toMatch(
      /^“Sales” could not be opened and was left as it is\. The saved workbook is damaged at sheet Sheet1/,
    );
  });
});

describe("words and names of kept logs", () => {
  it("say the time, and the day where it is another", () => {
    const at = new Date(2027, 2, 1, 8, 25).getTime();
    expect(timeWords(at, noon)).toBe("08:25");
    expect(timeWords(at, new Date(2027, 2, 2, 7, 0).getTime())).toBe("Mar 1, 08:25");
    expect(keptWords({ kind: "kept", at }, noon)).toBe("kept on this device, 08:25");
    expect(timeWords(new Date(2027, 2, 1, 0, 5).getTime(), noon)).toBe("00:05");
  });

  it("count on where a name is taken", () => {
    expect(freeName("New log", [])).toBe("New log");
    expect(freeName("New log", [{ name: "new LOG" }, { name: "New log 2" }])).toBe("New log 3");
  });
});
