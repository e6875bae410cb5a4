import { landing } from "../../tests/landing-tag.ts";

/** What counts as passed, failed or left out in a vitest report. */
export interface Counts {
  readonly passed: number;
  readonly failed: number;
  /** What each test that was left out needs and this machine lacks. */
  readonly leftOut: readonly string[];
  /** Tests that run with a landing alone. */
  readonly forLanding: number;
}

/** The part of vitest's JSON report that is read. */
export interface TestReport {
  readonly numPassedTests: number;
  readonly numFailedTests: number;
  readonly testResults: readonly {
    readonly status: string;
    readonly assertionResults: readonly {
      readonly status: string;
      readonly title: string;
      readonly ancestorTitles: readonly string[];
      readonly tags: readonly string[];
    }[];
  }[];
}

/** The end of a title that excuses a skipped test, as in "recalculates the log [needs LibreOffice]". */
const need = /\[needs ([^\]]+)\]$/;

export interface Run {
  /** Whether the program said that all went well. */
  readonly endedWell: boolean;
  /** Whether the tests that are kept for a landing were asked for. */
  readonly isLanding: boolean;
}

/**
 * A test that names an optional program is left out where it was skipped, and one for a landing where none is made; any
 * other that did not run counts as failed, and so does a file that could not be collected, and an error outside of every test.
 */
export function countTests(
  { numPassedTests, numFailedTests, testResults }: TestReport,
  { endedWell, isLanding }: Run,
): Counts {
  const skipped = testResults
    .flatMap(({ assertionResults }) => assertionResults)
    .filter(({ status }) => status !== "passed" && status !== "failed");
  const notRun = skipped.filter(({ tags }) => isLanding || !tags.includes(landing.name));
  const leftOut: string[] = [];
  for (const { status, title, ancestorTitles } of notRun) {
    const program = [title, ...ancestorTitles].map((one) => need.exec(one)?.[1]).find((one) => one !== undefined);
    if (status !== "todo" && program !== undefined) leftOut.push(program);
  }
  const uncollected = testResults.filter(
    ({ status, assertionResults }) => status === "failed" && assertionResults.every((one) => one.status !== "failed"),
  );
  const failed = numFailedTests + uncollected.length + notRun.length - leftOut.length;
  return {
    passed: numPassedTests,
    failed: endedWell ? failed : Math.max(failed, 1),
    leftOut,
    forLanding: skipped.length - notRun.length,
  };
}

/** "left out: 3 (2 for want of LibreOffice, 1 for want of xmllint)", or undefined where nothing was. */
export function sayLeftOut(leftOut: readonly string[]): string | undefined {
  if (leftOut.length === 0) return undefined;
  const reasons = [...new Set(leftOut)].map(
    (program) => `${String(leftOut.filter((one) => one === program).length)} for want of ${program}`,
  );
  return `left out: ${String(leftOut.length)} (${reasons.join(", ")})`;
}
