import { readdir, readFile } from "node:fs/promises";
import path from "node:path";

import { describe, expect, it } from "vitest";
import * as z from "zod";

import { projectFolder } from "../../scripts/project.ts";

const docs = (await readdir(path.join(projectFolder, "docs"))).filter((file) => file.endsWith(".md"));
const papers = ["README.md", "DEVELOPERS.md", "CHANGELOG.md", ...docs.map((file) => `docs/${file}`)];
const textOf = (paper: string): Promise<string> => readFile(path.join(projectFolder, paper), "utf8");

const { scripts } = z
  .object({ scripts: z.record(z.string(), z.string()) })
  .parse(JSON.parse(await textOf("package.json")));

describe("the papers", () => {
  it("have a README that can be read in one go", async () => {
    expect((await textOf("README.md")).split("\n").length).toBeLessThanOrEqual(150);
  });

  it.each(papers)("%s links to files that there are", async (paper) => {
    const links = [...(await textOf(paper)).matchAll(/\]\((?!https?:|#)([^)#]+)[^)]*\)/g)].map((link) => link[1] ?? "");
    const missing = await Promise.all(
      links.map(async (link) => {
        const file = path.join(projectFolder, path.dirname(paper), link);
        const names: readonly string[] = await readdir(path.dirname(file)).catch(() => []);
        return names.includes(path.basename(file)) ? [] : [link];
      }),
    );
    expect(missing.flat()).toEqual([]);
  });

  it.each(papers)("%s names commands that there are", async (paper) => {
    const named = [...(await textOf(paper)).matchAll(/npm run ([\w:-]+)/g)].map((command) => command[1] ?? "");
    expect(named.filter((name) => !(name in scripts))).toEqual([]);
  });

  it("tell a reader of README each command that a newcomer needs", async () => {
    const readme = await textOf("README.md");
    for (const command of ["npm ci && npm start", "npm ci && npm test"]) expect(readme).toContain(command);
    for (const file of ["install.md", "excel-check.md"]) expect(readme).toContain(`(docs/${file})`);
  });
});
