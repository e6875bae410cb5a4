import { type DBSchema, type IDBPDatabase, openDB } from "idb";

import { readBook, readSheet } from "../../../state/read-state.ts";
import type { BookState, SheetState, WorkbookState } from "../../../state/workbook-state.ts";

/** What is known of a kept log without reading its sheets. */
export interface KeptLog {
  readonly id: string;
  readonly name: string;
  /** Milliseconds since 1970. */
  readonly changed: number;
  readonly opened: number;
  /** Counts what was written, so that two tabs cannot write over each other. */
  readonly revision: number;
}

interface LogRecord extends KeptLog {
  readonly book: BookState;
}

/** A sheet's state as text: to hand that over blocks the page far less than 50,000 cells. */
interface SheetRecord {
  readonly log: string;
  readonly sheet: string;
  readonly text: string;
}

interface Schema extends DBSchema {
  logs: { key: string; value: LogRecord };
  sheets: { key: [log: string, sheet: string]; value: SheetRecord; indexes: { log: string } };
}

type Database = IDBPDatabase<Schema>;

/** The browser lets the page keep nothing. */
export class StorageRefused extends Error {}

export class StorageFull extends Error {}

/** Another tab wrote the log, or took it away, since it was read here. */
export class WrittenElsewhere extends Error {}

/** What is to be written of a log. */
export interface LogChange {
  readonly id: string;
  /** For a log that is not kept yet. */
  readonly name: string;
  /** The revision that was read or written last; 0 for a log that is not kept yet. */
  readonly revision: number;
  readonly book: BookState;
  readonly sheets: readonly SheetState["id"][];
  readonly textOf: (sheet: string) => string;
  readonly now: number;
}

function storageError(error: unknown): Error {
  if (error instanceof WrittenElsewhere) return error;
  const [name, message] = error instanceof Error ? [error.name, error.message] : ["", String(error)];
  return name === "QuotaExceededError" ? new StorageFull(message) : new StorageRefused(message);
}

async function guarded<Result>(work: () => Promise<Result>): Promise<Result> {
  try {
    return await work();
  } catch (error) {
    throw storageError(error);
  }
}

function summary({ id, name, changed, opened, revision }: LogRecord): KeptLog {
  return { id, name, changed, opened, revision };
}

/** Logs in the browser's own storage on this device. Whatever it cannot do it throws as one of the errors above. */
export class LogStore {
  private database: Promise<Database> | undefined;

  /** Opens the storage, also again after the browser closed it. */
  private open(): Promise<Database> {
    this.database ??= openDB<Schema>("bathsheet-workbench", 1, {
      upgrade: (database) => {
        database.createObjectStore("logs", { keyPath: "id" });
        database.createObjectStore("sheets", { keyPath: ["log", "sheet"] }).createIndex("log", "log");
      },
      terminated: () => {
        this.database = undefined;
      },
    }).catch((error: unknown) => {
      this.database = undefined;
      throw error;
    });
    return this.database;
  }

  /** The kept logs, the one that was opened last in front. */
  list(): Promise<readonly KeptLog[]> {
    return guarded(async () => {
      const logs = await (await this.open()).getAll("logs");
      return logs.map(summary).sort((a, b) => b.opened - a.opened);
    });
  }

  /** Throws a RangeError where what is kept is damaged. */
  async read(id: string): Promise<{ readonly log: KeptLog; readonly state: WorkbookState } | undefined> {
    const found = await guarded(async () => {
      const transaction = (await this.open()).transaction(["logs", "sheets"]);
      const [log, sheets] = await Promise.all([
        transaction.objectStore("logs").get(id),
        transaction.objectStore("sheets").index("log").getAll(id),
        transaction.done,
      ]);
      return log === undefined ? undefined : { log, sheets };
    });
    if (found === undefined) return undefined;
    const texts = new Map(found.sheets.map(({ sheet, text }) => [sheet, text] as const));
    const book = readBook(found.log.book);
    const sheets = book.order.map((sheet) => {
      const text = texts.get(sheet);
      if (text === undefined) throw new RangeError("The saved workbook is damaged: a sheet is missing.");
      return readSheet(JSON.parse(text));
    });
    return { log: summary(found.log), state: { book, sheets } };
  }

  /** Writes some sheets and takes away those that are in no order any more, all or nothing. */
  write({ id, name, revision, book, sheets, textOf, now }: LogChange): Promise<KeptLog> {
    return guarded(async () => {
      const transaction = (await this.open()).transaction(["logs", "sheets"], "readwrite", { durability: "strict" });
      const work = async (): Promise<KeptLog> => {
        const [logStore, sheetStore] = [transaction.objectStore("logs"), transaction.objectStore("sheets")];
        const known = await logStore.get(id);
        if ((known?.revision ?? 0) !== revision) throw new WrittenElsewhere();
        const record: LogRecord = {
          id,
          name: known?.name ?? name,
          changed: now,
          opened: now,
          revision: revision + 1,
          book,
        };
        await logStore.put(record);
        for (const sheet of sheets) await sheetStore.put({ log: id, sheet, text: textOf(sheet) });
        for (const key of await sheetStore.index("log").getAllKeys(id))
          if (!book.order.includes(key[1])) await sheetStore.delete(key);
        return summary(record);
      };
      try {
        const written = await work();
        await transaction.done;
        return written;
      } catch (error) {
        transaction.done.catch(() => undefined);
        try {
          transaction.abort();
        } catch {
          // It has ended already, by the very error that is thrown below.
        }
        throw transaction.error ?? error;
      }
    });
  }

  /** Notes that a log is opened, so that it is in front the next time. */
  async noteOpened(id: string, now: number): Promise<void> {
    await this.amend(id, (log) => ({ ...log, opened: now }));
  }

  async rename(id: string, name: string): Promise<void> {
    await this.amend(id, (log) => ({ ...log, name }));
  }

  private amend(id: string, change: (log: LogRecord) => LogRecord): Promise<void> {
    return guarded(async () => {
      const transaction = (await this.open()).transaction("logs", "readwrite");
      const log = await transaction.store.get(id);
      if (log !== undefined) await transaction.store.put(change(log));
      await transaction.done;
    });
  }

  remove(id: string): Promise<void> {
    return guarded(async () => {
      const transaction = (await this.open()).transaction(["logs", "sheets"], "readwrite");
      await transaction.objectStore("logs").delete(id);
      const sheetStore = transaction.objectStore("sheets");
      for (const key of await sheetStore.index("log").getAllKeys(id)) await sheetStore.delete(key);
      await transaction.done;
    });
  }
}
