import { makeStyles, MessageBar, MessageBarBody, MessageBarTitle } from "@fluentui/react-components";

import { Cancelled } from "../../excel/log-problems.ts";
import type { LogProblem } from "../../excel/office-problems.ts";

const useStyles = makeStyles({
  bar: { alignItems: "start", paddingTop: "8px", paddingBottom: "8px" },
  body: { whiteSpace: "normal" },
});

/** What happened and what to do, said at once; what a person cancelled is no error. */
export function ProblemBar({ problem }: { readonly problem: LogProblem }): React.JSX.Element {
  const styles = useStyles();
  const cancelled = problem instanceof Cancelled;
  return (
    <div role={cancelled ? "status" : "alert"}>
      <MessageBar intent={cancelled ? "info" : "error"} layout="multiline" className={styles.bar}>
        <MessageBarBody className={styles.body}>
          <MessageBarTitle>{problem.what}</MessageBarTitle>
          {problem.remedy}
        </MessageBarBody>
      </MessageBar>
    </div>
  );
}
