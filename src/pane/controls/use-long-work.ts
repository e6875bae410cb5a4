import { createContext, useContext, useRef, useState } from "react";

import type { LongWork, Progress } from "../../excel/long-work.ts";
import { type LogProblem, problemFrom } from "../../excel/office-problems.ts";

export interface LongWorkState {
  /** What is being done, as a heading: "Building the log". Undefined while nothing runs. */
  readonly doing: string | undefined;
  readonly progress: Progress | undefined;
  readonly cancelling: boolean;
  /** How the last piece of work ended, where not well; Cancelled is one of them. */
  readonly problem: LogProblem | undefined;
  readonly start: (doing: string, work: (long: LongWork) => Promise<void>) => Promise<void>;
  /** Stops before the next batch. */
  readonly cancel: () => void;
}

/** Called when work begins that takes several trips to the workbook; what it gives is called when the work has ended. */
export type HoldLooks = () => () => void;

/** The pane looks at the workbook by itself, and a half-written log would take the work's view away. */
export const HoldLooksContext = createContext<HoldLooks>(() => () => undefined);

/** One piece of work at a time that takes several trips to the workbook. */
export function useLongWork(): LongWorkState {
  const [doing, setDoing] = useState<string>();
  const [progress, setProgress] = useState<Progress>();
  const [cancelling, setCancelling] = useState(false);
  const [problem, setProblem] = useState<LogProblem>();
  const controller = useRef<AbortController>(undefined);
  const holdLooks = useContext(HoldLooksContext);
  const start = async (name: string, work: (long: LongWork) => Promise<void>): Promise<void> => {
    controller.current = new AbortController();
    setDoing(name);
    setProgress(undefined);
    setCancelling(false);
    setProblem(undefined);
    const release = holdLooks();
    try {
      await work({ onProgress: setProgress, signal: controller.current.signal });
    } catch (error) {
      setProblem(problemFrom(error));
    } finally {
      release();
      setDoing(undefined);
    }
  };
  const cancel = (): void => {
    controller.current?.abort();
    setCancelling(true);
  };
  return { doing, progress, cancelling, problem, start, cancel };
}
