import { useState } from "react";

import type { CallRecord } from "../../excel/check/call-record.ts";
import { hostFacts } from "../../excel/check/host-facts.ts";
import type { CheckReport } from "../../excel/check/report.ts";
import { runChecks } from "../../excel/check/run-checks.ts";
import { LogProblem } from "../../excel/office-problems.ts";
import { ReportView } from "./report-view.tsx";

type State =
  | { readonly status: "waiting" }
  | { readonly status: "running"; readonly done: number; readonly of: number; readonly title: string }
  | { readonly status: "done"; readonly report: CheckReport; readonly left: readonly string[] }
  | { readonly status: "refused"; readonly problem: string };

const pause = (milliseconds: number): Promise<void> => new Promise((resume) => setTimeout(resume, milliseconds));

/** One button, and then what this Excel answered. */
export function CheckView({ calls }: { readonly calls: CallRecord }): React.JSX.Element {
  const [state, setState] = useState<State>({ status: "waiting" });
  const run = async (): Promise<void> => {
    setState({ status: "running", done: 0, of: 1, title: "getting ready" });
    try {
      const { excelChecks } = await import(/* webpackChunkName: "checks" */ "../../excel/check/checks.ts");
      const { results, left } = await runChecks(excelChecks, {
        calls,
        pause,
        onStart: ({ title }, done) => {
          setState({ status: "running", done, of: excelChecks.length, title });
        },
      });
      const report = { facts: hostFacts(), browser: navigator.userAgent, at: new Date(), results };
      setState({ status: "done", report, left });
    } catch (error) {
      if (!(error instanceof LogProblem)) throw error;
      setState({ status: "refused", problem: error.message });
    }
  };
  const button = (words: string, look: "main" | "again" = "main"): React.JSX.Element => (
    <button
      type="button"
      className={look}
      onClick={() => {
        void run();
      }}
    >
      {words}
    </button>
  );
  return (
    <>
      <h1>Excel check</h1>
      {state.status === "done" ? null : (
        <p>
          Tries in this Excel what Bathsheet relies on, on sheets of its own that it removes again. Best in a new
          workbook. It takes about a minute; leave Excel alone meanwhile.
        </p>
      )}
      {state.status === "waiting" ? button("Run the check") : null}
      {state.status === "running" ? (
        <>
          <progress aria-label="Checks done" max={state.of} value={state.done} />
          <p className="soft">
            {state.done + 1} of {state.of}: {state.title}
          </p>
        </>
      ) : null}
      {state.status === "refused" ? (
        <>
          <p role="alert">{state.problem}</p>
          {button("Run the check")}
        </>
      ) : null}
      {state.status === "done" ? (
        <>
          <ReportView report={state.report} left={state.left} />
          {button("Run it again", "again")}
        </>
      ) : null}
    </>
  );
}
