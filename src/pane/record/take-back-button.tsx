import { Button, Spinner } from "@fluentui/react-components";
import { useState } from "react";

import { type LogProblem, problemFrom } from "../../excel/office-problems.ts";
import { ProblemBar } from "../controls/problem-bar.tsx";
import { usePageStyles } from "../controls/use-page-styles.ts";
import { type LastEntry, takeLastEntryBack } from "./take-back.ts";

/** What is named on the button, and what was written for it. */
type Written = Pick<LastEntry, "what" | "receipt">;

interface Props<Entry extends Written> {
  readonly entry: Entry;
  readonly onTakenBack: (entry: Entry) => Promise<void>;
  /** Whether it may just have moved under a finger that was meant for something else. */
  readonly isMoving?: boolean;
}

/** Takes the last entry back, or says why it stays. */
export function TakeBackButton<Entry extends Written>({
  entry,
  onTakenBack,
  isMoving = false,
}: Props<Entry>): React.JSX.Element {
  const page = usePageStyles();
  const [busy, setBusy] = useState(false);
  const [failure, setFailure] = useState<LogProblem>();
  const Icon = takeLastEntryBack.icon;
  const run = async (): Promise<void> => {
    setBusy(true);
    setFailure(undefined);
    try {
      await takeLastEntryBack.run(entry.receipt);
      await onTakenBack(entry);
    } catch (error) {
      setFailure(problemFrom(error));
      setBusy(false);
    }
  };
  return (
    <>
      {failure === undefined ? null : <ProblemBar problem={failure} />}
      <Button
        size="large"
        icon={busy ? <Spinner size="tiny" /> : <Icon />}
        className={page.big}
        disabledFocusable={isMoving}
        aria-label={`${takeLastEntryBack.name}: ${entry.what}`}
        onClick={() => {
          if (!busy) void run();
        }}
      >
        {takeLastEntryBack.name}
      </Button>
    </>
  );
}
