import { useCallback, useEffect, useRef, useState } from "react";

import type { CheckedLog } from "../../advice/checked-log.ts";
import type { UnlikeCell } from "../../advice/unlike-cells.ts";
import { onLogChanged, readLog } from "../../excel/log-workbook.ts";
import { isCellBeingEdited, LogProblem, problemFrom } from "../../excel/office-problems.ts";
import { isUnfinished, type LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import type { HoldLooks } from "../controls/use-long-work.ts";
import type { Figures } from "./figures-context.ts";

/** A log whose computed cells say what their formulas give, and how far the sheet agrees. */
export interface ReadLog extends Figures {
  readonly log: LogSnapshot;
}

type LogState =
  | { readonly status: "reading" }
  | { readonly status: "no log" }
  | {
      readonly status: "problem";
      readonly problem: LogProblem;
      /** As it was last read, if ever: a form that is being filled in stays open on it. */ readonly last:
        ReadLog | undefined;
    }
  | {
      readonly status: "ready";
      readonly read: ReadLog;
      /** Formulas still show #NAME? after the functions had their time to load. */ readonly unknownFunctions: boolean;
      /** A cell that stays other than its formula gives: named at once, as no advice may ever look at it. */
      readonly typedOver: UnlikeCell | undefined;
    };

/** Changes come in bursts, one for each cell. */
const settleMs = 300;

/**
 * When to look at the sheet again after a change: Excel's functions answer later than the write, and no document
 * promises an event for each answer.
 */
const againMs = [1200, 1200, 1200, 1200, 1200, 5000, 10_000, 20_000, 40_000];

/** How often a problem that ends with the edit of a cell is tried again. */
const editedMs = 1200;

/** Once more after this many looks whatever the cells show, since what they showed before looks like an answer. */
const inAnyCase = 3;

/** After so many, what a sheet shows that stands still is taken for all that it will show. */
const long = 5;

function shows(log: LogSnapshot, fits: (value: unknown) => boolean): boolean {
  return Object.values(log.rows).some((rows) => rows.some((row) => Object.values(row.cells).some(fits)));
}

function problemState(error: unknown, before: LogState): LogState {
  const last = before.status === "ready" ? before.read : before.status === "problem" ? before.last : undefined;
  return { status: "problem", problem: problemFrom(error), last };
}

async function loadChecked(): Promise<(read: LogSnapshot) => CheckedLog> {
  try {
    return (await import(/* webpackChunkName: "pane-figures" */ "../../advice/checked-log.ts")).checkedLog;
  } catch (error) {
    throw new LogProblem(
      { what: "A part of this pane could not be loaded. The log is untouched.", remedy: "Check the connection." },
      error,
    );
  }
}

/** What the last look at the workbook found. */
interface Look {
  readonly log: LogSnapshot;
  readonly text: string;
  readonly checked: CheckedLog;
  /** Something that was said in the pane since rests on figures that the sheet does not show. */
  unlike: boolean;
  /** Looked for once the sheet has stood still; undefined until then. */
  typedOver: { readonly cell: UnlikeCell | undefined } | undefined;
}

export interface LogStore {
  readonly state: LogState;
  /** Reads the workbook again; resolves once the new state is in place. */
  readonly refresh: () => Promise<void>;
  /** Keeps looks that nobody asked for away from a workbook that is being written in several trips, until called back. */
  readonly holdLooks: HoldLooks;
}

/** The workbook's log, read again whenever the workbook changes. The pane keeps no copy of its own beyond the last reading. */
export function useLog(): LogStore {
  const [state, setState] = useState<LogState>({ status: "reading" });
  const burst = useRef<ReturnType<typeof setTimeout>>(undefined);
  const again = useRef<ReturnType<typeof setTimeout>>(undefined);
  const reading = useRef<Promise<void>>(Promise.resolve());
  const look = useRef<Look>(undefined);
  /** How many pieces of work go on that would be seen half done. */
  const held = useRef(0);

  /** `times`: how often the sheet was looked at since the last change. */
  const readOnce = useCallback(async (times: number, asked: boolean): Promise<void> => {
    const isHeld = (): boolean => !asked && held.current > 0;
    if (isHeld()) return;
    const lookAgain = (done: number): void => {
      const wait = againMs[done];
      clearTimeout(again.current);
      if (wait === undefined) return;
      again.current = setTimeout(() => {
        const last = look.current;
        const open = last === undefined || last.unlike || shows(last.log, isUnfinished);
        if (open || done + 1 === inAnyCase) reading.current = reading.current.then(() => readOnce(done + 1, false));
        else if (done < inAnyCase) lookAgain(done + 1);
      }, wait);
    };
    try {
      const [log, checkedLog] = await Promise.all([readLog(), loadChecked()]);
      if (isHeld()) return;
      if (log === undefined) {
        look.current = undefined;
        setState({ status: "no log" });
        return;
      }
      const text = JSON.stringify(log);
      const same = look.current?.text === text ? look.current : undefined;
      const now: Look = same ?? { log, text, checked: checkedLog(log), unlike: false, typedOver: undefined };
      look.current = now;
      const rootOf = same !== undefined && times >= long ? same.checked.rootOf : undefined;
      const noting: ReadLog["noting"] = (work) => {
        const noted = now.checked.noting(work);
        if (noted.unlike.length > 0) now.unlike = true;
        return noted;
      };
      if (same !== undefined && times >= inAnyCase && !shows(log, isUnfinished))
        now.typedOver ??= { cell: now.checked.typedOver() };
      // Excel may still be at it: looked at a few times more before it is said.
      if (now.typedOver?.cell !== undefined) now.unlike = true;
      const typedOver = times >= long ? now.typedOver?.cell : undefined;
      const unknownFunctions = times >= long && shows(log, (value) => value === "#NAME?");
      // A form is worked out anew for each new state; a sheet that shows the same is none.
      setState((before) =>
        before.status === "ready" &&
        before.read.log === now.checked.log &&
        before.read.rootOf === rootOf &&
        before.unknownFunctions === unknownFunctions &&
        before.typedOver === typedOver
          ? before
          : { status: "ready", read: { log: now.checked.log, noting, rootOf }, unknownFunctions, typedOver },
      );
      lookAgain(times);
    } catch (error) {
      if (isHeld()) return;
      const isEdited = isCellBeingEdited(error);
      // Nobody asked for this look, and somebody is typing.
      if (times > 0 && isEdited && look.current !== undefined) {
        lookAgain(times);
        return;
      }
      look.current = undefined;
      setState((before) => problemState(error, before));
      // No event says that an edit ended which changed nothing.
      if (isEdited) {
        clearTimeout(again.current);
        again.current = setTimeout(() => {
          reading.current = reading.current.then(() => readOnce(0, false));
        }, editedMs);
      }
    }
  }, []);

  const refresh = useCallback((): Promise<void> => {
    reading.current = reading.current.then(() => readOnce(0, true));
    return reading.current;
  }, [readOnce]);

  const lookAtChange = useCallback((): void => {
    reading.current = reading.current.then(() => readOnce(0, false));
  }, [readOnce]);

  const lookOnce = useCallback((): void => {
    reading.current = reading.current.then(() => (look.current === undefined ? undefined : readOnce(1, false)));
  }, [readOnce]);

  const holdLooks = useCallback((): (() => void) => {
    held.current += 1;
    return () => {
      held.current -= 1;
      if (held.current === 0) lookOnce();
    };
  }, [lookOnce]);

  useEffect(() => {
    let stop: (() => Promise<void>) | undefined;
    let gone = false;
    void refresh();
    const soon = (read: () => void): void => {
      clearTimeout(burst.current);
      burst.current = setTimeout(read, settleMs);
    };
    onLogChanged(
      () => {
        soon(lookAtChange);
      },
      () => {
        // A log that is being built or repaired calculates too, and what is said of that stays until it is put away.
        if (look.current !== undefined) soon(lookOnce);
      },
    ).then(
      (stopListening) => {
        stop = stopListening;
        if (gone) void stopListening();
      },
      (error: unknown) => {
        setState((before) => problemState(error, before));
      },
    );
    return () => {
      gone = true;
      clearTimeout(burst.current);
      clearTimeout(again.current);
      if (stop !== undefined) void stop();
    };
  }, [refresh, lookAtChange, lookOnce]);

  return { state, refresh, holdLooks };
}
