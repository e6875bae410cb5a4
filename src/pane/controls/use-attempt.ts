import { useState } from "react";

import { type LogProblem, problemFrom } from "../../excel/office-problems.ts";

/** One button's work on the workbook: under way, done with a sentence to say, or failed. */
export interface Attempt {
  readonly busy: boolean;
  /** Empty until something is done. */
  readonly said: string;
  readonly failure: LogProblem | undefined;
  /** The work gives the sentence. */
  readonly start: (work: () => Promise<string>) => Promise<void>;
}

export function useAttempt(): Attempt {
  const [busy, setBusy] = useState(false);
  const [said, setSaid] = useState("");
  const [failure, setFailure] = useState<LogProblem>();
  const start = async (work: () => Promise<string>): Promise<void> => {
    setBusy(true);
    setSaid("");
    setFailure(undefined);
    try {
      setSaid(await work());
    } catch (error) {
      setFailure(problemFrom(error));
    } finally {
      setBusy(false);
    }
  };
  return { busy, said, failure, start };
}
