import { useCallback, useEffect, useRef, useState } from "react";
import type { LogSnapshot } from "../../joblog/log-snapshot.ts";
import { onLogChanged, readLog } from "../../excel/log-workbook.ts";
import { problemFrom, type LogProblem } from "../../excel/office-problems.ts";

type LogState =
  | { readonly status: "reading" }
  | { readonly status: "no log" }
  | { readonly status: "problem"; readonly problem: LogProblem }
  | { readonly status: "ready"; readonly log: LogSnapshot };

/** Changes come in bursts, one for each cell. */
const settleMs = 300;

/** Excel works formulas out after a write; figures that are not there yet are read again. */
const unfinishedMs = 1200;

const mostRereads = 5;

function isUnfinished(log: LogSnapshot): boolean {
  return Object.values(log.rows).some((rows) =>
    rows.some((row) => Object.values(row.cells).some((value) => value === "#BUSY!" || value === "#NAME?")),
  );
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
      setState(log === undefined ? { status: "no log" } : { status: "ready", log });
      if (log !== undefined && isUnfinished(log) && rereads < mostRereads) {
        timer.current = setTimeout(() => void readOnce(rereads + 1), unfinishedMs);
      }
    } catch (error) {
      setState({ status: "problem", problem: problemFrom(error) });
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
        setState({ status: "problem", problem: problemFrom(error) });
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
