import { readFileSync } from "node:fs";
import path from "node:path";

import { describe, expect, it } from "vitest";

import { catalogue } from "../../functions/catalogue.ts";
import { countInWords } from "../../scripts/catalogue/count-in-words.ts";
import { projectFolder } from "../../scripts/project.ts";
import { jobLog } from "../../src/joblog/job-log.ts";

const text = (file: string): string => readFileSync(path.join(projectFolder, file), "utf8");

describe("what the texts count", () => {
  it("is as many worksheet functions as the catalogue holds", () => {
    expect(text("README.md")).toContain(`| Worksheet functions | ${countInWords(catalogue.length)}: `);
  });

  it("is every family of functions by name, in the changelog", () => {
    const listed = /^- Worksheet functions: ([^.]+)\./m.exec(text("CHANGELOG.md"))?.[1]?.replace(/\s+/g, " ");
    const families = [...new Set(catalogue.map(({ category }) => category.toLowerCase().replace(/^ph/, "pH")))];
    expect(listed?.split(", ").toSorted()).toEqual(families.toSorted());
  });

  it("is the log's sheets by name, all of them", () => {
    const listed = /native charts: ([^.]+)\./.exec(text("README.md"))?.[1] ?? "";
    expect(listed.split(", ").sort()).toEqual(jobLog.sheets.map(({ name }) => name).sort());
  });

  it("is no real Excel that has run it", () => {
    for (const file of ["README.md", "CHANGELOG.md"]) expect(text(file)).toMatch(/No real Excel has run/);
    expect(text("DEVELOPERS.md")).toContain("No Excel was at hand when this was written.");
  });

  it("is the log's version", () => {
    const versions = [...text("CHANGELOG.md").matchAll(/Job log version (\d+)/g)].map(([, version]) => Number(version));
    expect(versions[0]).toBe(jobLog.version);
  });
});
