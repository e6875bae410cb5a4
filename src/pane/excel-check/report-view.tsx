import { useRef, useState } from "react";

import type { Verdict } from "../../excel/check/excel-check.ts";
import { type CheckReport, reportText } from "../../excel/check/report.ts";
import { layReport } from "../../excel/check/report-sheet.ts";
import type { CheckResult } from "../../excel/check/run-checks.ts";
import { LogProblem } from "../../excel/office-problems.ts";

const groups: readonly { readonly verdict: Verdict; readonly className: string; readonly words: string }[] = [
  { verdict: "differs", className: "differs", words: "differing" },
  { verdict: "could not be tried", className: "untried", words: "not tried" },
  { verdict: "ok", className: "ok", words: "as expected" },
];

interface GroupProps {
  readonly results: readonly CheckResult[];
  readonly words: string;
  readonly open: boolean;
}

function GroupView({ results, words, open }: GroupProps): React.JSX.Element | null {
  if (results.length === 0) return null;
  return (
    <details className="group" open={open}>
      <summary>
        {results.length} {words}
      </summary>
      {results.map((result) => (
        <ResultView key={result.check.id} result={result} />
      ))}
    </details>
  );
}

function ResultView({ result: { check, seen } }: { readonly result: CheckResult }): React.JSX.Element {
  return (
    <details>
      <summary>{check.title}</summary>
      <dl>
        <dt>Seen</dt>
        <dd>{seen}</dd>
        <dt>Expected</dt>
        <dd>{check.expected}</dd>
        <dt>Asked</dt>
        <dd>{check.asks}</dd>
      </dl>
    </details>
  );
}

/** What was found, the differences first, and two ways to send it. */
export function ReportView({
  report,
  left,
}: {
  readonly report: CheckReport;
  readonly left: readonly string[];
}): React.JSX.Element {
  const [said, setSaid] = useState("");
  const whole = useRef<HTMLDetailsElement>(null);
  const text = useRef<HTMLTextAreaElement>(null);
  const asText = reportText(report);
  const of = (verdict: Verdict): readonly CheckResult[] => report.results.filter((one) => one.verdict === verdict);
  // Some of the browsers that show panes let no page write to the clipboard.
  const copy = async (): Promise<void> => {
    try {
      await navigator.clipboard.writeText(asText);
      setSaid("The report is copied.");
    } catch {
      if (whole.current !== null) whole.current.open = true;
      text.current?.focus();
      text.current?.select();
      setSaid("Press Ctrl+C (on a Mac ⌘C) to copy the report below.");
    }
  };
  const lay = async (): Promise<void> => {
    try {
      setSaid(`The report is on the sheet ${await layReport(report)}.`);
    } catch (error) {
      if (!(error instanceof LogProblem)) throw error;
      setSaid(error.message);
    }
  };
  return (
    <>
      <ul className="counts">
        {groups.map(({ verdict, className, words }) => (
          <li key={verdict} className={className}>
            <strong>{of(verdict).length}</strong> {words}
          </li>
        ))}
      </ul>
      {left.length === 0 ? null : (
        <p role="alert">Excel did not remove these sheets; delete them by hand: {left.join(", ")}.</p>
      )}
      <button
        type="button"
        className="main"
        onClick={() => {
          void copy();
        }}
      >
        Copy the report
      </button>
      <button
        type="button"
        onClick={() => {
          void lay();
        }}
      >
        Put it on a sheet
      </button>
      <p role="status">{said}</p>
      {groups.map(({ verdict, words }) => (
        <GroupView key={verdict} results={of(verdict)} words={words} open={verdict !== "ok"} />
      ))}
      <details className="group" ref={whole}>
        <summary>The report as text</summary>
        <textarea ref={text} readOnly aria-label="The report" value={asText} />
      </details>
    </>
  );
}
