import { describe, expect, it } from "vitest";

import { countTests, sayLeftOut, type TestReport } from "../../scripts/tests/test-counts.ts";

function report(...tests: readonly (readonly [status: string, title: string, within?: string])[]): TestReport {
  const count = (wanted: string): number => tests.filter(([status]) => status === wanted).length;
  return {
    numPassedTests: count("passed"),
    numFailedTests: count("failed"),
    testResults: [
      {
        status: count("failed") > 0 ? "failed" : "passed",
        assertionResults: tests.map(([status, title, within]) => ({
          status,
          title,
          ancestorTitles: within === undefined ? [] : [within],
        })),
      },
    ],
  };
}

describe("the count of the tests", () => {
  it("leaves out what was skipped for want of a program that it names, and says so", () => {
    const counts = countTests(
      report(
        ["passed", "one"],
        ["skipped", "two [needs LibreOffice]"],
        ["skipped", "three", "a manifest [needs xmllint]"],
        ["skipped", "four [needs xmllint]"],
      ),
      true,
    );
    expect(counts).toEqual({ passed: 1, failed: 0, leftOut: ["LibreOffice", "xmllint", "xmllint"] });
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
    expect(countTests(report(["passed", "one"], ...tests), true)).toEqual({ passed: 1, failed: 1, leftOut: [] });
  });

  it("counts a run that ended badly as failed, though every test passed or was left out", () => {
    expect(countTests(report(["passed", "one"], ["skipped", "two [needs xmllint]"]), false)).toEqual({
      passed: 1,
      failed: 1,
      leftOut: ["xmllint"],
    });
  });

  it("counts each file that could not be collected, once and beside the tests that failed", () => {
    const { testResults, ...numbers } = report(["passed", "one"], ["failed", "two"]);
    const uncollected = { status: "failed", assertionResults: [] };
    expect(countTests({ ...numbers, testResults: [...testResults, uncollected, uncollected] }, false)).toEqual({
      passed: 1,
      failed: 3,
      leftOut: [],
    });
  });
});
