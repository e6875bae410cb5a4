import { describe, expect, it } from "vitest";

import { jobLog } from "../../../../src/joblog/job-log.ts";
import { escapeHeader, findTable, referencesFor } from "../../../../src/joblog/model/references.ts";

describe("structured references", () => {
  it("escape the characters that mean something between the brackets", () => {
    // Microsoft Support, "Using structured references with Excel tables": [ ] # ' take an apostrophe.
    expect(escapeHeader("Lot #")).toBe("Lot '#");
    expect(escapeHeader("a[b]c")).toBe("a'[b']c");
    expect(escapeHeader("shop's")).toBe("shop''s");
    expect(escapeHeader("Amount, gal")).toBe("Amount, gal");
  });

  it("name this row, a whole column, a header and a cell in full form", () => {
    const references = referencesFor(jobLog, findTable(jobLog, "readings"), "US");
    expect(references.here("temperature")).toBe("Readings[[#This Row],[Sample temp, °F]]");
    expect(references.hereTo("ph", "temperature")).toBe("Readings[[#This Row],[pH as read]:[Sample temp, °F]]");
    expect(references.all("additions", "amount")).toBe("Additions[[#Data],[Amount, gal]]");
    expect(references.header("shares", "claim")).toBe("Shares[[#Headers],[Claim]]");
    expect(references.named("unitSystem")).toBe("Unit.System");
  });

  it("refuse an id that the log does not know", () => {
    const references = referencesFor(jobLog, findTable(jobLog, "readings"), "US");
    expect(() => references.here("hardness")).toThrow('Table Readings has no column "hardness"');
    expect(() => references.named("colour")).toThrow('no field "colour"');
    expect(() => referencesFor(jobLog, undefined, "US").here("ph")).toThrow("has no row");
  });
});
