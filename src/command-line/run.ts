import { nearestWord } from "../core/text/nearest-word.ts";
import type { Command, Surroundings } from "./command.ts";
import { calc } from "./commands/calc.ts";
import { estimate } from "./commands/estimate.ts";
import { listFunctions } from "./commands/list-functions.ts";
import { log } from "./commands/log.ts";
import { read } from "./commands/read.ts";
import { rollup } from "./commands/rollup.ts";
import { CommandFailure, type ExitCode, exitCodes, WrongUsage } from "./failure.ts";
import { helpOption, readOptions } from "./options.ts";

const commands: readonly Command[] = [calc, listFunctions, log, read, rollup, estimate];

const codes =
  "Exit codes: 0 done; 1 refused, or an answer that is an error; 2 the command is not written as its help has it; 3 a fault of Bathsheet; 130 cancelled.";

function columns(lines: readonly (readonly [string, string])[]): readonly string[] {
  const width = Math.max(...lines.map(([left]) => left.length));
  return lines.map(([left, right]) => `  ${left.padEnd(width)}  ${right}`);
}

function generalHelp(): string {
  return `${[
    "bathsheet COMMAND …",
    "",
    ...columns(commands.map(({ name, summary }) => [name, summary] as const)),
    "",
    "bathsheet COMMAND --help says more of one; bathsheet --version says which this is.",
    codes,
  ].join("\n")}\n`;
}

function helpOf({ name, usage, summary, options, examples }: Command): string {
  const listed = [...options, helpOption].map((option) => {
    const short = option.short !== undefined ? `-${option.short}, ` : "";
    const value = option.value !== undefined ? ` ${option.value}` : "";
    return [`${short}--${option.name}${value}`, option.help] as const;
  });
  return `${[
    `bathsheet ${name} ${usage}`,
    summary,
    "",
    ...columns(listed),
    "",
    ...examples.map((example) => `  ${example}`),
    "",
    codes,
  ].join("\n")}\n`;
}

function commandOf(name: string): Command {
  const command = commands.find((one) => one.name === name);
  if (command !== undefined) return command;
  const nearest = nearestWord(
    name,
    commands.map((one) => one.name),
  );
  throw new WrongUsage(
    `There is no command "${name}"; ${nearest === undefined ? "bathsheet --help lists those that there are" : `"${nearest}" is the nearest`}.`,
  );
}

async function runCommand(args: readonly string[], version: string, around: Surroundings): Promise<ExitCode> {
  const [name, ...rest] = args;
  if (name === undefined) throw new WrongUsage("A command is missing; bathsheet --help lists them.");
  if (name === "--help" || name === "-h" || (name === "help" && rest.length === 0)) {
    around.out(generalHelp());
    return exitCodes.done;
  }
  if (name === "--version") {
    around.out(`${version}\n`);
    return exitCodes.done;
  }
  const command = commandOf(name === "help" ? (rest[0] ?? "") : name);
  const given = name === "help" ? undefined : readOptions(command, rest);
  if (given === undefined || given.switches.has(helpOption.name)) {
    around.out(helpOf(command));
    return exitCodes.done;
  }
  return command.run(given, around);
}

/** Runs a command line and gives its exit code; whatever goes wrong is said in a sentence. */
export async function run(args: readonly string[], version: string, around: Surroundings): Promise<ExitCode> {
  try {
    return await runCommand(args, version, around);
  } catch (error) {
    if (error instanceof CommandFailure) {
      around.say(error.message);
      return error.exitCode;
    }
    around.say(
      `This is a fault of Bathsheet; please report it with the command and the file: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}`,
    );
    return exitCodes.broken;
  }
}
