import { Button } from "@fluentui/react-components";
import { useState } from "react";
import { problemFrom, type LogProblem } from "../../excel/office-problems.ts";
import { mendLog } from "../actions/mend-log.ts";
import { ProblemBar } from "./problem-bar.tsx";
import { usePageStyles } from "./use-page-styles.ts";

interface Props {
  readonly problem: LogProblem;
  readonly onReadAgain: () => Promise<void>;
}

/** The log could not be read: why, and the two things that can help. */
export function ProblemView({ problem, onReadAgain }: Props): React.JSX.Element {
  const page = usePageStyles();
  const [failure, setFailure] = useState<LogProblem>();
  const Icon = mendLog.icon;
  const mend = async (): Promise<void> => {
    try {
      await mendLog.run(undefined);
      await onReadAgain();
    } catch (error) {
      setFailure(problemFrom(error));
    }
  };
  return (
    <div className={page.page}>
      <ProblemBar problem={failure ?? problem} />
      <Button appearance="primary" size="large" className={page.big} onClick={() => void onReadAgain()}>
        Read the workbook again
      </Button>
      <Button size="large" icon={<Icon />} className={page.big} onClick={() => void mend()}>
        {mendLog.name}
      </Button>
    </div>
  );
}
