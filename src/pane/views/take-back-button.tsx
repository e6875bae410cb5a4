import { Button, Spinner } from "@fluentui/react-components";
import { useState } from "react";
import { problemFrom, type LogProblem } from "../../excel/office-problems.ts";
import { takeLastEntryBack, type LastEntry } from "../actions/take-back.ts";
import { ProblemBar } from "./problem-bar.tsx";
import { usePageStyles } from "./use-page-styles.ts";

interface Props {
  readonly entry: LastEntry;
  readonly onTakenBack: (entry: LastEntry) => Promise<void>;
}

/** Takes the last entry back, or says why it stays. */
export function TakeBackButton({ entry, onTakenBack }: Props): React.JSX.Element {
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
        aria-label={`${takeLastEntryBack.name}: ${entry.what}`}
        onClick={() => { if (!busy) void run(); }}
      >
        {takeLastEntryBack.name}
      </Button>
    </>
  );
}
