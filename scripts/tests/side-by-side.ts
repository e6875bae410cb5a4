import { spawn } from "node:child_process";
import { availableParallelism } from "node:os";

import { projectFolder } from "../project.ts";

export interface Program {
  readonly title: string;
  /** The program, from this project's packages, and what it is told. */
  readonly command: readonly [name: string, ...rest: string[]];
}

export interface Ended {
  readonly title: string;
  readonly passed: boolean;
  readonly output: string;
  readonly minutes: number;
}

/** The minutes since a moment of performance.now(). */
export function minutesSince(start: number): number {
  return (performance.now() - start) / 60_000;
}

function run({ title, command }: Program): Promise<Ended> {
  const start = performance.now();
  return new Promise((resolve) => {
    const child = spawn("npx", ["--no-install", ...command], {
      cwd: projectFolder,
      stdio: ["ignore", "pipe", "pipe"],
      shell: process.platform === "win32",
    });
    const output: Buffer[] = [];
    const end = (passed: boolean): void => {
      resolve({ title, passed, output: Buffer.concat(output).toString(), minutes: minutesSince(start) });
    };
    child.stdout.on("data", (part: Buffer) => output.push(part));
    child.stderr.on("data", (part: Buffer) => output.push(part));
    child.on("error", (error) => {
      output.push(Buffer.from(`${error.message}\n`));
      end(false);
    });
    child.on("close", (status) => {
      end(status === 0);
    });
  });
}

/** Runs programs beside each other, one for each processor, at least two. What each says is shown whole and in the order of the list. */
export async function runSideBySide(programs: readonly Program[]): Promise<readonly Ended[]> {
  const waiting = [...programs];
  const ended = new Map<Program, Ended>();
  const shown: Ended[] = [];
  function show(): void {
    for (const program of programs.slice(shown.length)) {
      const end = ended.get(program);
      if (end === undefined) return;
      console.log(`\n== ${end.title}\n${end.output.trimEnd()}\n${end.passed ? "ok" : "FAILED"}: ${end.title}`);
      shown.push(end);
    }
  }
  async function lane(): Promise<void> {
    for (let next = waiting.shift(); next !== undefined; next = waiting.shift()) {
      ended.set(next, await run(next));
      show();
    }
  }
  await Promise.all(Array.from({ length: Math.max(2, availableParallelism()) }, lane));
  return shown;
}
