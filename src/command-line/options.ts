import { parseArgs } from "node:util";

import { nearestWord } from "../core/text/nearest-word.ts";
import type { Command, Given, OptionHelp } from "./command.ts";
import { WrongUsage } from "./failure.ts";

/** Every command has it. */
export const helpOption: OptionHelp = { name: "help", short: "h", help: "this help" };

function refuseWords({ name, usage, words }: Command, count: number): void {
  if (count < words.least)
    throw new WrongUsage(`Something is missing after "${name}"; write bathsheet ${name} ${usage}.`);
  if (count > words.most)
    throw new WrongUsage(
      `There is a word too many after "${name}", perhaps for want of quotes around one that holds blanks; write bathsheet ${name} ${usage}.`,
    );
}

/** What stands after a command's name. Throws WrongUsage where it is not as the command's help has it. */
export function readOptions(command: Command, args: readonly string[]): Given {
  const options = [...command.options, helpOption];
  const { tokens } = parseArgs({
    args: [...args],
    options: Object.fromEntries(
      options.map((one) => [
        one.name,
        {
          type: one.value !== undefined ? ("string" as const) : ("boolean" as const),
          ...(one.short !== undefined ? { short: one.short } : {}),
        },
      ]),
    ),
    strict: false,
    tokens: true,
  });
  const words: string[] = [];
  const values: Record<string, string> = {};
  const switches = new Set<string>();
  for (const token of tokens) {
    if (token.kind === "positional") words.push(token.value);
    if (token.kind !== "option") continue;
    const option = options.find(({ name }) => name === token.name);
    if (option === undefined) {
      const nearest = nearestWord(
        token.name,
        options.map(({ name }) => name),
      );
      throw new WrongUsage(
        `bathsheet ${command.name} has no option ${token.rawName}${nearest === undefined ? "; bathsheet " + command.name + " --help lists them" : `; --${nearest} is the nearest`}.`,
      );
    }
    if (option.value !== undefined) {
      const isGiven = token.inlineValue || !(token.value ?? "-").startsWith("-");
      if (!isGiven || token.value === undefined || token.value === "")
        throw new WrongUsage(`${option.value} is missing after ${token.rawName}.`);
      if (values[option.name] !== undefined) throw new WrongUsage(`${token.rawName} is given twice.`);
      values[option.name] = token.value;
    } else {
      if (token.value !== undefined) throw new WrongUsage(`${token.rawName} takes nothing after it.`);
      switches.add(option.name);
    }
  }
  if (!switches.has(helpOption.name)) refuseWords(command, words.length);
  return { words, values, switches };
}
