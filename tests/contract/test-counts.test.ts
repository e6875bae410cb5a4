import { describe, expect, it } from "vitest";

import { countTests, sayLeftOut, type TestReport } from "../../scripts/tests/test-counts.ts";

type Ended = readonly [status: string, title: string, within?: string | undefined, tag?: string];

function report(...tests: readonly Ended[]): TestReport {
  const count = (wanted: string): number => tests.filter(([status]) => status === wanted).length;
  return {
    numPassedTests: count("passed"),
    numFailedTests: count("failed"),
    testResults: [
      {
        status: count("failed") > 0 ? "failed" : "passed",
        assertionResults: tests.map(([status, title, within, tag]) => ({
          status,
          title,
          ancestorTitles: within === undefined ? [] : [within],
          tags: tag === undefined ? [] : [tag],
        })),
      },
    ],
  };
}

const landed = { endedWell: true, isLanding: true };
const ended = { endedWell: false, isLanding: true };

describe("the count of the tests", () => {
  it("leaves out what was skipped for want of a program that it names, and says so", () => {
    const counts = countTests(
      report(
        ["passed", "one"],
        ["skipped", "two [needs LibreOffice]"],
        ["skipped", "three", "a manifest [needs xmllint]"],
        ["skipped", "four [needs xmllint]"],
      ),
      landed,
    );
    expect(counts).toEqual({ passed: 1, failed: 0, leftOut: ["LibreOffice", "xmllint", "xmllint"], forLanding: 0 });
    expect(sayLeftOut(counts.leftOut)).toBe("left out: 3 (1 for want of LibreOffice, 2 for want of xmllint)");
    expect(sayLeftOut([])).toBeUndefined();
  });

  it.each([
    { what: "was skipped without a need", tests: [["skipped", "two"]] },
    { what: "names a need before the end of its title", tests: [["skipped", "[needs LibreOffice] two"]] },
    { what: "is still to be written, whatever it needs", tests: [["todo", "two [needs LibreOffice]"]] },
    { what: "did not come to its turn", tests: [["pending", "two"]] },
    { what: "failed, whatever it needs", tests: [["failed", "two [needs LibreOffice]"]] },
  ] as const)("counts as failed what $what", ({ tests }) => {
    expect(countTests(report(["passed", "one"], ...tests), landed)).toEqual({
      passed: 1,
      failed: 1,
      leftOut: [],
      forLanding: 0,
    });
  });

  it("counts a run that ended badly as failed, though every test passed or was left out", () => {
    expect(countTests(report(["passed", "one"], ["skipped", "two [needs xmllint]"]), ended)).toEqual({
      passed: 1,
      failed: 1,
      leftOut: ["xmllint"],
      forLanding: 0,
    });
  });

  it("counts each file that could not be collected, once and beside the tests that failed", () => {
    const { testResults, ...numbers } = report(["passed", "one"], ["failed", "two"]);
    const uncollected = { status: "failed", assertionResults: [] };
    expect(countTests({ ...numbers, testResults: [...testResults, uncollected, uncollected] }, ended)).toEqual({
      passed: 1,
      failed: 3,
      leftOut: [],
      forLanding: 0,
    });
  });

  it("tells what is kept for a landing, which fails where a landing does not run it", () => {
    const tests = [
      ["passed", "one"],
      ["skipped", "two", "a whole log", "landing"],
      ["skipped", "three [needs LibreOffice]", undefined, "landing"],
    ] as const;
    expect(countTests(report(...tests), { endedWell: true, isLanding: false })).toEqual({
      passed: 1,
      failed: 0,
      leftOut: [],
      forLanding: 2,
    });
    expect(countTests(report(...tests), landed)).toEqual({
      passed: 1,
      failed: 1,
      leftOut: ["LibreOffice"],
      forLanding: 0,
    });
  });
});
