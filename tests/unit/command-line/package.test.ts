/** @module-tag landing */
import { execFile } from "node:child_process";
import { mkdtemp, readdir, readFile, realpath, rm, symlink, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { promisify } from "node:util";

import { afterAll, beforeAll, describe, expect, it } from "vitest";
import * as z from "zod";

import { jobSchemaFile, jobSchemaText } from "../../../scripts/describe-job.ts";
import { rowSchemaFile, rowSchemaText } from "../../../scripts/describe-rows.ts";
import { projectFolder } from "../../../scripts/project.ts";
import { figures } from "../../../src/command-line/rollup/figures.ts";
import { hasDuckDb } from "./duckdb.ts";

const start = promisify(execFile);

const docs = await readFile(path.join(projectFolder, "docs", "command-line.md"), "utf8");

const blocksOf = (language: string): readonly string[] =>
  [...docs.matchAll(/^```(\w+)\n([^]*?)^```$/gm)].flatMap(([, kind, text = ""]) => (kind === language ? [text] : []));

interface Example {
  readonly command: string;
  readonly shows: string;
}

const examples = blocksOf("console").flatMap((block) =>
  block
    .split(/^\$ /m)
    .slice(1)
    .map((part): Example => {
      const [command = "", ...lines] = part.split("\n");
      return { command, shows: lines.join("\n") };
    }),
);

/** Commands of the page that work figures out, for which the database has to be there. */
const wantsDuckDb = ({ command }: Example): boolean => /^bathsheet (?:rollup .*-o |estimate )/.test(command);

const packedFiles = z.array(z.object({ filename: z.string(), files: z.array(z.object({ path: z.string() })) }));

let folder = "";
let packedNames: readonly string[] = [];

/** As in a shell of the folder in which the package is installed; what goes to either stream, as a terminal shows it. */
async function atTerminal(command: string): Promise<string> {
  const bin = path.join(folder, "node_modules", ".bin");
  const { stdout } = await start("sh", ["-c", `${command} 2>&1 || true`], {
    cwd: folder,
    env: { PATH: `${bin}${path.delimiter}${process.env["PATH"] ?? ""}` },
  });
  return stdout;
}

beforeAll(async () => {
  folder = await realpath(await mkdtemp(path.join(tmpdir(), "bathsheet-package-")));
  const { stdout } = await start("npm", ["pack", "--json", "--pack-destination", folder], { cwd: projectFolder });
  // The build before it says what it bundled.
  const [packed] = packedFiles.parse(JSON.parse(stdout.slice(stdout.search(/^\[\s*\{/m))));
  if (packed === undefined) throw new Error("npm packed nothing.");
  packedNames = packed.files.map((file) => file.path);
  await writeFile(path.join(folder, "package.json"), '{ "private": true }');
  const install = ["install", "--offline", "--omit=optional", "--no-audit", "--no-fund", `./${packed.filename}`];
  await start("npm", install, { cwd: folder });
});

afterAll(async () => {
  await rm(folder, { recursive: true, force: true });
});

describe("the package, installed without a network into an empty folder", () => {
  it("holds the program, its papers and licenses, and nothing else", () => {
    const queries = [...figures.map(({ query }) => query), "amounts", "jobs", "quartiles"]
      .map((name) => `${name}.sql`)
      .sort();
    expect([...packedNames].sort()).toEqual([
      "CHANGELOG.md",
      "LICENSE",
      "README.md",
      "bin/LICENSES.txt",
      "bin/bathsheet.js",
      ...queries.map((name) => `bin/figures/${name}`),
      "docs/command-line.md",
      "docs/job-schema.json",
      "docs/row-schema.md",
      "package.json",
    ]);
  });

  it("needs no other package", async () => {
    const installed = await readdir(path.join(folder, "node_modules"));
    expect(installed.filter((name) => !name.startsWith("."))).toEqual(["bathsheet"]);
  });

  it("brings the license of every package in it", async () => {
    const licenses = await readFile(path.join(folder, "node_modules", "bathsheet", "bin", "LICENSES.txt"), "utf8");
    for (const name of [
      "@cj-tech-master/excelts",
      "fflate",
      "hyparquet",
      "hyparquet-writer",
      "saxes",
      "xmlchars",
      "zod",
    ])
      expect(licenses).toMatch(new RegExp(`^${name} \\d+\\.\\d+\\.\\d+ \\(\\w+\\)$`, "m"));
    expect(licenses.match(/WITHOUT WARRANTY|DISCLAIMS ALL WARRANTIES/g)?.length).toBeGreaterThanOrEqual(5);
  });

  it("says its version", async () => {
    const { version } = z
      .object({ version: z.string() })
      .parse(JSON.parse(await readFile(path.join(projectFolder, "package.json"), "utf8")));
    expect(await atTerminal("bathsheet --version")).toBe(`${version}\n`);
  });

  it("does what the page about it shows, in its order", async () => {
    const [job = ""] = blocksOf("json");
    await writeFile(path.join(folder, "job.json"), job);
    expect(examples.length).toBeGreaterThan(8);
    for (const example of examples)
      if (!wantsDuckDb(example)) expect(await atTerminal(example.command), example.command).toBe(example.shows);
    const file = (name: string): Promise<Buffer> => readFile(path.join(folder, name));
    expect((await file("again.xlsx")).equals(await file("job.xlsx"))).toBe(true);
  });

  it("says in a sentence where the database is missing, and writes nothing", async () => {
    for (const { command } of examples.filter(wantsDuckDb))
      expect(await atTerminal(command), command).toMatch(
        /^bathsheet: The figures are worked out by DuckDB, which is not installed; npm install @duckdb\/node-api .*\.\n$/,
      );
    expect(await readdir(folder)).not.toContain("group.xlsx");
  });

  it.skipIf(!hasDuckDb)("works figures out where the database is there, as the page shows [needs DuckDB]", async () => {
    const modules = path.join(folder, "node_modules", "@duckdb");
    await symlink(path.join(projectFolder, "node_modules", "@duckdb"), modules, "junction");
    expect(examples.filter(wantsDuckDb).length).toBeGreaterThan(1);
    for (const { command, shows } of examples.filter(wantsDuckDb))
      expect(await atTerminal(command), command).toBe(shows);
    expect(await readdir(folder)).toContain("group.xlsx");
  });

  it("leaves no part of a file behind, and a file that is there as it is", async () => {
    await writeFile(path.join(folder, "there.xlsx"), "mine");
    expect(await atTerminal("bathsheet log job.json -o there.xlsx")).toContain("it is there already");
    expect(await readFile(path.join(folder, "there.xlsx"), "utf8")).toBe("mine");
    expect(await atTerminal("bathsheet log job.json -o nowhere/job.xlsx")).toBe(
      "bathsheet: nowhere/job.xlsx: there is no such file or folder.\n",
    );
    expect(await atTerminal("bathsheet read nothing.xlsx")).toBe(
      "bathsheet: nothing.xlsx: there is no such file or folder.\n",
    );
    expect(await atTerminal("bathsheet read .")).toBe("bathsheet: .: it is a folder.\n");
    expect((await readdir(folder)).filter((name) => name.endsWith(".part"))).toEqual([]);
    await atTerminal("bathsheet log job.json -o there.xlsx --replace");
    expect(
      (await readFile(path.join(folder, "there.xlsx"))).equals(await readFile(path.join(folder, "job.xlsx"))),
    ).toBe(true);
  });

  it("gives its exit code to the shell", async () => {
    for (const [command, code] of [
      ["bathsheet calc =1", 0],
      ["bathsheet calc =1/0", 1],
      ["bathsheet cacl", 2],
    ] as const)
      expect(await atTerminal(`{ ${command}; } >/dev/null 2>&1; echo $?`)).toBe(`${String(code)}\n`);
  });
});

describe("the schema of a job", () => {
  it("is that of today's log (run npm run describe-job if not)", async () => {
    expect(await readFile(jobSchemaFile, "utf8")).toBe(jobSchemaText());
  });
});

describe("the rows of a roll-up", () => {
  it("are described as they are today (run npm run describe-rows if not)", async () => {
    expect(await readFile(rowSchemaFile, "utf8")).toBe(await rowSchemaText());
  });
});
