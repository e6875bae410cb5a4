import type { WorkbookState } from "../../../state/workbook-state.ts";
import type { Host } from "../../host/create-host.ts";
import { KeepHead } from "./keep-head.ts";
import { Keeper } from "./keeper.ts";
import { isTrouble, type KeptStatus } from "./kept-words.ts";
import { showLogList } from "./log-list.ts";
import { takeLog } from "./log-lock.ts";
import { LogStore, StorageFull, StorageRefused } from "./log-store.ts";
import { newLog, openAsAsked, type Start } from "./opening.ts";

interface Means {
  readonly host: Host;
  readonly start: Start;
  readonly demo: () => Promise<WorkbookState | undefined>;
  readonly saveCopy: (name: string) => void;
  /** True while a cell holds a cursor: what is in it is not in the workbook yet. */
  readonly isCellBeingEdited: () => boolean;
}

/** The address of a log, with what else the page's address asks for. */
function addressOf(wanted: { readonly log?: string; readonly start?: "demo" | "empty" }): string {
  const query = new URLSearchParams(location.search);
  query.delete("start");
  query.delete("log");
  for (const [name, value] of Object.entries(wanted)) query.set(name, value);
  return `?${query.toString()}`;
}

/** The log on screen as it is kept, for what opens another beside it. */
export interface Keeping {
  /** Writes at once what waits; resolves when it is written or cannot be. */
  readonly flush: () => Promise<void>;
  /** What becomes of the log on screen when another is opened, in a sentence. */
  readonly onScreen: () => string;
  /** Keeps a workbook as a log of its own and goes to it; false where this device keeps nothing, or has no room for it. */
  readonly openBeside: (state: WorkbookState, name: string) => Promise<boolean>;
  /** Says that the host holds another workbook now, which is a log of its own. */
  readonly replaced: (name: string) => void;
}

/** Opens the log that the address asks for and keeps on this device what becomes of it. */
export async function keepLog({ host, start, demo, saveCopy, isCellBeingEdited }: Means): Promise<Keeping> {
  const store = new LogStore();
  const now = (): number => Date.now();
  const opened = await openAsAsked({ host, store, now, take: takeLog, demo }, start);
  const onStatus = (status: KeptStatus): void => {
    head.show(keeper.name, status, now());
  };
  const keeper = new Keeper(
    {
      host,
      store,
      now,
      onStatus,
      onFirstKept: (log) => {
        void takeLog(log.id);
        history.replaceState(null, "", addressOf({ log: log.id }));
      },
    },
    opened.log,
    opened.status,
  );
  const leave = (address: string): void => {
    void keeper.flush().then(() => {
      location.assign(address);
    });
  };
  const head = new KeepHead({
    onCopy: () => {
      saveCopy(keeper.name);
    },
    onKeepAsNew: () => {
      void store.list().then(
        (logs) => keeper.keepAsNew(newLog(keeper.name, logs)),
        (error: unknown) => {
          onStatus({ kind: "refused", reason: String(error) });
        },
      );
    },
    onList: () => {
      showLogList({
        store,
        now,
        open: () => keeper.id,
        onOpen: (id) => {
          leave(addressOf({ log: id }));
        },
        onStart: (fresh) => {
          leave(addressOf({ start: fresh }));
        },
        onRenamed: (id, name) => {
          if (id !== keeper.id) return;
          keeper.renamed(name);
          onStatus(keeper.status);
        },
        onRemoved: (id) => {
          if (id !== keeper.id) return;
          keeper.stop();
          location.assign(addressOf({}));
        },
      });
    },
  });
  onStatus(keeper.status);
  const flush = (): void => {
    void keeper.flush();
  };
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "hidden") flush();
  });
  window.addEventListener("pagehide", flush);
  window.addEventListener("beforeunload", (event) => {
    if (!keeper.hasUnsaved && !isCellBeingEdited()) return;
    flush();
    event.preventDefault();
  });
  return {
    flush: () => keeper.flush(),
    onScreen: () =>
      isTrouble(keeper.status)
        ? `The log on screen, ${keeper.name}, is not kept on this device: save a copy of it first.`
        : `The log on screen, ${keeper.name}, stays kept on this device under its name.`,
    openBeside: async (state, name) => {
      try {
        const log = newLog(name, await store.list());
        const texts = new Map(state.sheets.map((sheet) => [sheet.id, JSON.stringify(sheet)]));
        const { book } = state;
        await store.write({ ...log, book, sheets: book.order, textOf: (id) => texts.get(id) ?? "", now: now() });
        leave(addressOf({ log: log.id }));
        return true;
      } catch (error) {
        if (error instanceof StorageRefused || error instanceof StorageFull) return false;
        throw error;
      }
    },
    replaced: (name) => {
      keeper.replaced(newLog(name, []));
      onStatus(keeper.status);
    },
  };
}
