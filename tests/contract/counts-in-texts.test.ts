import { readFileSync } from "node:fs";
import path from "node:path";

import { describe, expect, it } from "vitest";

import { catalogue } from "../../functions/catalogue.ts";
import { projectFolder } from "../../scripts/project.ts";
import { jobLog } from "../../src/joblog/job-log.ts";

const text = (file: string): string => readFileSync(path.join(projectFolder, file), "utf8");

const small = ["", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"];
const tens = ["", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"];

/** A number from 20 to 99 as a sentence begins with it. */
function atTheStart(count: number): string {
  const [ten, one] = [tens[Math.floor(count / 10)], small[count % 10]];
  if (ten === undefined || ten === "" || one === undefined) throw new RangeError(`${count} has no words here`);
  const words = one === "" ? ten : `${ten}-${one}`;
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
}

describe("what the texts count", () => {
  it("is as many worksheet functions as the catalogue holds", () => {
    const count = atTheStart(catalogue.length);
    expect(text("README.md")).toContain(`| Worksheet functions | ${count}: `);
    expect(text("CHANGELOG.md")).toContain(`- ${count} worksheet functions:`);
  });

  it("is the log's sheets by name, all of them", () => {
    const listed = /native charts: ([^.]+)\./.exec(text("README.md"))?.[1] ?? "";
    expect(listed.split(", ").sort()).toEqual(jobLog.sheets.map(({ name }) => name).sort());
  });

  it("is the log's version", () => {
    const versions = [...text("CHANGELOG.md").matchAll(/Job log version (\d+)/g)].map(([, version]) => Number(version));
    expect(versions[0]).toBe(jobLog.version);
  });
});
