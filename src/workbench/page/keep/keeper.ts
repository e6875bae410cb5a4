import type { BookState, SheetState } from "../../../state/workbook-state.ts";
import type { Host } from "../../host/create-host.ts";
import { stateInParts } from "../../host/state/make-state.ts";
import { isTrouble, type KeptStatus } from "./kept-words.ts";
import { type KeptLog, type LogStore, StorageFull, WrittenElsewhere } from "./log-store.ts";
import { Pace } from "./pace.ts";

interface Snapshot {
  readonly book: BookState;
  readonly bookText: string;
  readonly sheets: ReadonlyMap<SheetState["id"], string>;
}

/** Which sheet is in front is no change of the log. */
function bookText(book: BookState): string {
  return JSON.stringify({ ...book, activeSheet: "" });
}

function snapshot(host: Host): Snapshot {
  const { book, sheet } = stateInParts(host.workbook);
  return {
    book,
    bookText: bookText(book),
    sheets: new Map(book.order.map((id) => [id, JSON.stringify(sheet(id))] as const)),
  };
}

/** The log that is open, kept or about to be. */
export interface OpenLog {
  readonly id: string;
  readonly name: string;
  readonly revision: number;
}

interface Means {
  readonly host: Host;
  readonly store: LogStore;
  readonly now: () => number;
  /** The log is kept for the first time. */
  readonly onFirstKept: (log: KeptLog) => void;
  readonly onStatus: (status: KeptStatus) => void;
}

/** Writes what changes in the open workbook into the browser's storage, soon after each change. */
export class Keeper {
  private readonly means: Means;
  private readonly pace: Pace;
  private log: OpenLog;
  private written: Snapshot;
  private present: KeptStatus;
  /** Something was entered that is not written yet. */
  private dirty = false;
  private writing: Promise<void> | undefined;
  private lastWritten: number | undefined;

  /** `status` says how the log was opened; in one that is open elsewhere nothing is written. */
  constructor(means: Means, log: OpenLog, status: KeptStatus) {
    this.means = means;
    this.log = log;
    this.present = status;
    this.lastWritten = status.kind === "kept" ? status.at : undefined;
    this.written = snapshot(means.host);
    this.pace = new Pace(() => {
      void this.keep();
    });
    this.watch();
  }

  private watch(): void {
    this.means.host.workbook.edits.onEdit(() => {
      this.dirty = true;
      if (this.mayWrite) this.pace.due();
    });
  }

  get status(): KeptStatus {
    return this.present;
  }

  get name(): string {
    return this.log.name;
  }

  get id(): string {
    return this.log.id;
  }

  /** Whether something was entered that would be lost with the page. */
  get hasUnsaved(): boolean {
    return this.dirty || this.writing !== undefined;
  }

  private get mayWrite(): boolean {
    return this.present.kind !== "open elsewhere" && this.present.kind !== "written elsewhere";
  }

  private say(status: KeptStatus): void {
    this.present = status;
    this.means.onStatus(status);
  }

  /** Writes at once what waits; resolves when it is written or cannot be. */
  async flush(): Promise<void> {
    await this.writing;
    this.pace.now();
    await this.writing;
  }

  private async keep(): Promise<void> {
    if (this.writing !== undefined) {
      this.pace.due();
      return;
    }
    this.writing = this.write();
    try {
      await this.writing;
    } finally {
      this.writing = undefined;
    }
  }

  private async write(): Promise<void> {
    this.dirty = false;
    const found = snapshot(this.means.host);
    const changed = [...found.sheets].flatMap(([id, text]) => (this.written.sheets.get(id) === text ? [] : [id]));
    const isNew = this.log.revision === 0;
    const same = changed.length === 0 && found.bookText === this.written.bookText;
    if (same && !isTrouble(this.present)) return;
    try {
      const log = await this.means.store.write({
        ...this.log,
        book: found.book,
        sheets: isNew ? found.book.order : changed,
        textOf: (sheet) => found.sheets.get(sheet) ?? "",
        now: this.means.now(),
      });
      this.log = log;
      this.written = found;
      this.lastWritten = log.changed;
      if (isNew) this.means.onFirstKept(log);
      this.say({ kind: "kept", at: log.changed });
    } catch (error) {
      this.dirty = true;
      this.say(this.troubleOf(error));
    }
  }

  private troubleOf(error: unknown): KeptStatus {
    if (error instanceof WrittenElsewhere) return { kind: "written elsewhere" };
    if (error instanceof StorageFull) return { kind: "full", last: this.lastWritten };
    return { kind: "refused", reason: error instanceof Error ? error.message : String(error) };
  }

  /** Goes on under another id and name, beside the log that it was. */
  async keepAsNew(log: OpenLog): Promise<void> {
    this.log = { ...log, revision: 0 };
    this.written = { ...this.written, bookText: "" };
    this.present = { kind: "nothing entered" };
    this.dirty = true;
    this.pace.due();
    await this.flush();
  }

  /** The host holds another workbook now, and nothing of it is written yet. */
  replaced(log: OpenLog): void {
    this.log = log;
    this.written = snapshot(this.means.host);
    this.lastWritten = undefined;
    this.dirty = false;
    this.watch();
  }

  renamed(name: string): void {
    this.log = { ...this.log, name };
  }

  /** Nothing more is written, as for a log that was deleted. */
  stop(): void {
    this.dirty = false;
    this.present = { kind: "written elsewhere" };
  }
}
