import type { WorkbookState } from "../../../state/workbook-state.ts";
import type { Host } from "../../host/create-host.ts";
import type { OpenLog } from "./keeper.ts";
import type { KeptStatus } from "./kept-words.ts";
import { type KeptLog, type LogStore, StorageRefused } from "./log-store.ts";

/** The start that an address asks for: a log by its id, or a new one; undefined for the log that was open last. */
export type Start = { readonly log: string } | { readonly fresh: "demo" | "empty" } | undefined;

interface Opened {
  readonly log: OpenLog;
  readonly status: KeptStatus;
}

const freshNames = { demo: "Demo week", empty: "New log" } as const;

/** The name, or the name and a number where there is a log of that name. */
export function freeName(name: string, logs: readonly Pick<KeptLog, "name">[]): string {
  const taken = new Set(logs.map((log) => log.name.toLowerCase()));
  if (!taken.has(name.toLowerCase())) return name;
  let count = 2;
  while (taken.has(`${name} ${String(count)}`.toLowerCase())) count += 1;
  return `${name} ${String(count)}`;
}

export function newLog(name: string, logs: readonly Pick<KeptLog, "name">[]): OpenLog {
  return { id: crypto.randomUUID(), name: freeName(name, logs), revision: 0 };
}

interface Means {
  readonly host: Host;
  readonly store: LogStore;
  readonly now: () => number;
  /** Whether this tab may write the log. */
  readonly take: (id: string) => Promise<boolean>;
  /** The state of the demo week; undefined where it was not built. */
  readonly demo: () => Promise<WorkbookState | undefined>;
}

async function openFresh(
  means: Means,
  fresh: "demo" | "empty",
  logs: readonly KeptLog[],
  status: KeptStatus,
): Promise<Opened> {
  const state = fresh === "demo" ? await means.demo() : undefined;
  if (state !== undefined) means.host.restore(state);
  return { log: newLog(freshNames[state === undefined ? "empty" : "demo"], logs), status };
}

async function openKept(means: Means, known: KeptLog, logs: readonly KeptLog[]): Promise<Opened> {
  const { store, host, now, take } = means;
  const isMine = await take(known.id);
  let found: Awaited<ReturnType<LogStore["read"]>>;
  try {
    found = await store.read(known.id);
    if (found !== undefined) host.restore(found.state);
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    const status: KeptStatus =
      error instanceof StorageRefused ? { kind: "refused", reason } : { kind: "unreadable", name: known.name, reason };
    return openFresh(means, "empty", logs, status);
  }
  if (found === undefined) return openFresh(means, "empty", logs, { kind: "nothing entered" });
  // Where there is no room to note it, the next entry says so.
  if (isMine) await store.noteOpened(known.id, now()).catch(() => undefined);
  const status: KeptStatus = isMine ? { kind: "kept", at: found.log.changed } : { kind: "open elsewhere" };
  return { log: found.log, status };
}

/** Puts into the host what the address asks for, or else the log that was open last, or else the demo week. */
export async function openAsAsked(means: Means, start: Start): Promise<Opened> {
  let logs: readonly KeptLog[];
  try {
    logs = await means.store.list();
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    const fresh = start !== undefined && "fresh" in start ? start.fresh : "demo";
    return openFresh(means, fresh, [], { kind: "refused", reason });
  }
  if (start !== undefined && "fresh" in start) return openFresh(means, start.fresh, logs, { kind: "nothing entered" });
  const known = start === undefined ? logs[0] : logs.find(({ id }) => id === start.log);
  if (known !== undefined) return openKept(means, known, logs);
  return openFresh(means, start === undefined ? "demo" : "empty", logs, { kind: "nothing entered" });
}
