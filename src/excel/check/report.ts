/** The report as a person sends it: plain text. */
import type { Verdict } from "./excel-check.ts";
import type { HostFacts } from "./host-facts.ts";
import type { CheckResult } from "./run-checks.ts";

export interface CheckReport {
  readonly facts: HostFacts;
  /** The browser that shows the pane, as it names itself. */
  readonly browser: string;
  readonly at: Date;
  readonly results: readonly CheckResult[];
}

const countWords: Readonly<Record<Verdict, readonly [one: string, several: string]>> = {
  ok: ["as expected", "as expected"],
  differs: ["differs", "differ"],
  "could not be tried": ["could not be tried", "could not be tried"],
};

/** "20 as expected, 1 differs, 2 could not be tried" */
export function summaryOf(results: readonly CheckResult[]): string {
  return (Object.keys(countWords) as Verdict[])
    .map((verdict) => {
      const count = results.filter((one) => one.verdict === verdict).length;
      return `${String(count)} ${countWords[verdict][count === 1 ? 0 : 1]}`;
    })
    .join(", ");
}

export function headLines({ facts, browser, at, results }: CheckReport): readonly string[] {
  return [
    `Excel check of Bathsheet, ${at.toISOString().slice(0, 16).replace("T", " ")} UTC`,
    `Platform: ${facts.platform}`,
    `Version: ${facts.version}`,
    `Languages: ${facts.languages}`,
    `API sets: ${facts.sets.join(", ")}`,
    `Browser: ${browser}`,
    summaryOf(results),
  ];
}

export function reportText(report: CheckReport): string {
  const blocks = report.results.map(({ check, verdict, seen }) =>
    [
      `[${verdict}] ${check.title} (${check.id})`,
      `  Asked: ${check.asks}`,
      `  Expected: ${check.expected}`,
      `  Seen: ${seen}`,
    ].join("\n"),
  );
  return [headLines(report).join("\n"), ...blocks].join("\n\n");
}
