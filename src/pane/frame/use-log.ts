import { useCallback, useEffect, useRef, useState } from "react";

import { onLogChanged, readLog } from "../../excel/log-workbook.ts";
import { type LogProblem, problemFrom } from "../../excel/office-problems.ts";
import type { LogSnapshot } from "../../joblog/model/log-snapshot.ts";

type LogState =
  | { readonly status: "reading" }
  | { readonly status: "no log" }
  | {
      readonly status: "problem";
      readonly problem: LogProblem;
      /** As it was last read, if ever: a form that is being filled in stays open on it. */ readonly last:
        LogSnapshot | undefined;
    }
  | {
      readonly status: "ready";
      readonly log: LogSnapshot;
      /** Formulas still show #NAME? after the functions had their time to load. */ readonly unknownFunctions: boolean;
    };

/** Changes come in bursts, one for each cell. */
const settleMs = 300;

/** Excel works formulas out after a write; figures that are not there yet are read again. */
const unfinishedMs = 1200;

const mostRereads = 5;

function shows(log: LogSnapshot, ...errors: readonly string[]): boolean {
  return Object.values(log.rows).some((rows) =>
    rows.some((row) => Object.values(row.cells).some((value) => errors.includes(String(value)))),
  );
}

function problemState(error: unknown, before: LogState): LogState {
  const last = before.status === "ready" ? before.log : before.status === "problem" ? before.last : undefined;
  return { status: "problem", problem: problemFrom(error), last };
}

export interface LogStore {
  readonly state: LogState;
  /** Reads the workbook again; resolves once the new state is in place. */
  readonly refresh: () => Promise<void>;
}

/** The workbook's log, read again whenever the workbook changes. The pane keeps no copy of its own beyond the last reading. */
export function useLog(): LogStore {
  const [state, setState] = useState<LogState>({ status: "reading" });
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  const reading = useRef<Promise<void>>(Promise.resolve());

  const readOnce = useCallback(async (rereads: number): Promise<void> => {
    try {
      const log = await readLog();
      const readAgain = log !== undefined && rereads < mostRereads && shows(log, "#BUSY!", "#NAME?");
      setState(
        log === undefined
          ? { status: "no log" }
          : { status: "ready", log, unknownFunctions: !readAgain && shows(log, "#NAME?") },
      );
      if (readAgain) {
        timer.current = setTimeout(() => void readOnce(rereads + 1), unfinishedMs);
      }
    } catch (error) {
      setState((before) => problemState(error, before));
    }
  }, []);

  const refresh = useCallback((): Promise<void> => {
    clearTimeout(timer.current);
    reading.current = reading.current.then(() => readOnce(0));
    return reading.current;
  }, [readOnce]);

  useEffect(() => {
    let stop: (() => Promise<void>) | undefined;
    let gone = false;
    void refresh();
    onLogChanged(() => {
      clearTimeout(timer.current);
      timer.current = setTimeout(() => void refresh(), settleMs);
    }).then(
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
      clearTimeout(timer.current);
      if (stop !== undefined) void stop();
    };
  }, [refresh]);

  return { state, refresh };
}
