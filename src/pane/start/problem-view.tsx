import { Button } from "@fluentui/react-components";
import { useState } from "react";

import type { BuildReport } from "../../excel/build/write-plan.ts";
import { DamagedLog, OlderLog } from "../../excel/log-problems.ts";
import type { LogProblem } from "../../excel/office-problems.ts";
import { LongWorkView } from "../controls/long-work-view.tsx";
import { ProblemBar } from "../controls/problem-bar.tsx";
import { useLongWork } from "../controls/use-long-work.ts";
import { usePageStyles } from "../controls/use-page-styles.ts";
import { bringUpToDate, type MendAction, mendLog } from "./mend-log.ts";
import { MendReport } from "./mend-report.tsx";

interface Props {
  readonly problem: LogProblem;
  readonly onReadAgain: () => Promise<void>;
}

/** The action that helps, where there is one. */
function helpFor(problem: LogProblem): { readonly action: MendAction; readonly doing: string } | undefined {
  if (problem instanceof OlderLog) return { action: bringUpToDate, doing: "Upgrading the log" };
  if (problem instanceof DamagedLog) return { action: mendLog, doing: "Adding what is missing" };
  return undefined;
}

function OlderLogText({ problem }: { readonly problem: OlderLog }): React.JSX.Element {
  const page = usePageStyles();
  return (
    <div role="status">
      <h2 className={page.title}>{`This log was made by an earlier Bathsheet (version ${String(problem.version)})`}</h2>
      <p>
        All that you typed stays. The upgrade adds the sheets and columns that came since, brings formulas up to date,
        and lists what it added.
      </p>
    </div>
  );
}

/** The log cannot be used as it is: why, and what can help. */
export function ProblemView({ problem, onReadAgain }: Props): React.JSX.Element {
  const page = usePageStyles();
  const work = useLongWork();
  const [report, setReport] = useState<BuildReport>();
  const help = helpFor(problem);
  if (report !== undefined) return <MendReport report={report} onClose={onReadAgain} />;
  if (work.doing !== undefined) return <LongWorkView {...work} doing={work.doing} />;
  const Icon = help?.action.icon;
  return (
    <div className={page.page}>
      {problem instanceof OlderLog ? <OlderLogText problem={problem} /> : <ProblemBar problem={problem} />}
      {work.problem === undefined ? null : <ProblemBar problem={work.problem} />}
      {problem instanceof DamagedLog ? (
        <p className={page.quiet}>
          {`“${mendLog.name}” puts the lost part back and repairs formulas that need it. Cells that were typed come back blank: only undo brings back what was in them.`}
        </p>
      ) : null}
      {help === undefined || Icon === undefined ? null : (
        <Button
          appearance="primary"
          size="large"
          icon={<Icon />}
          className={page.big}
          onClick={() =>
            void work.start(help.doing, async (long) => {
              setReport(await help.action.run(undefined, long));
            })
          }
        >
          {help.action.name}
        </Button>
      )}
      <Button size="large" className={page.big} onClick={() => void onReadAgain()}>
        Read the workbook again
      </Button>
    </div>
  );
}
