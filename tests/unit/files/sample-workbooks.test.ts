import { describe, it } from "vitest";

import { emptySample } from "../../../scripts/build-samples.ts";
import { jobLog } from "../../../src/joblog/job-log.ts";
import { layOut } from "../../../src/joblog/layout/lay-out.ts";
import { hasOpenXmlValidator } from "./open-xml-validator.ts";
import { expectNoErrors, expectTodaysFormulas, expectValid } from "./sample-checks.ts";

const plan = layOut(jobLog, { system: "US" }, { fields: {}, rows: {} });

describe("the sample of an empty log", () => {
  it.skipIf(!hasOpenXmlValidator)("passes the Open XML validator [needs the Open XML validator]", () =>
    expectValid(emptySample),
  );

  it("holds today's formulas, each with a value (run npm run samples if not)", () =>
    expectTodaysFormulas(emptySample, plan));

  it("shows no error but #N/A in the chart's helpers", () => expectNoErrors(emptySample, plan));
});
