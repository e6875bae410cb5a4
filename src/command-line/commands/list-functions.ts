import { catalogue } from "../../../functions/catalogue.ts";
import type { Argument, WorksheetFunction } from "../../../functions/define-function.ts";
import { findFunction } from "../../../functions/find-function.ts";
import { referenceOf } from "../../../functions/reference-of.ts";
import { nearestWord } from "../../core/text/nearest-word.ts";
import type { Command } from "../command.ts";
import { CommandFailure, exitCodes } from "../failure.ts";

function listed(): string {
  const categories = [...new Set(catalogue.map(({ category }) => category))];
  const width = Math.max(...catalogue.map(({ id }) => id.length));
  return categories
    .map((category) => {
      const lines = catalogue
        .filter((fn) => fn.category === category)
        .map(({ id, summary }) => `  BATH.${id.padEnd(width)}  ${summary}`);
      return `${category}\n${lines.join("\n")}\n`;
    })
    .join("\n");
}

const callOf = ({ id, arguments: args }: WorksheetFunction): string =>
  `=BATH.${id}(${args.map(({ name, optional }) => (optional ? `[${name}]` : name)).join(", ")})`;

function argumentLine({ name, help, unit }: Argument<unknown>): string {
  return `  ${name}: ${help}${unit === undefined ? "" : `; unit: ${unit}`}`;
}

function helpOf(fn: WorksheetFunction): string {
  const { summary, result, examples, notes, id } = fn;
  const { cautions, source } = referenceOf(id);
  const part = (title: string, lines: readonly string[]): readonly string[] =>
    lines.length === 0 ? [] : ["", title, ...lines];
  return `${[
    callOf(fn),
    summary,
    ...part("Arguments", fn.arguments.map(argumentLine)),
    ...part("Result", [`  ${result.help}${result.unit === undefined ? "" : `; unit: ${result.unit}`}`]),
    ...part(
      "Examples",
      examples.map(({ formula }) => `  ${formula}`),
    ),
    ...part(
      "Limits",
      notes.map((note) => `  ${note}`),
    ),
    ...part(
      "Cautions",
      cautions.map(({ text }) => `  ${text}`),
    ),
    ...part("Source", [`  ${source}`]),
  ].join("\n")}\n`;
}

const described = ({ id, category, summary, arguments: args, result, notes }: WorksheetFunction): object => ({
  name: `BATH.${id}`,
  category,
  summary,
  arguments: args.map(({ name, help, unit, optional, choices }) => ({ name, help, optional, unit, choices })),
  result: { help: result.help, unit: result.unit, severalCells: result.dimensionality === "matrix" },
  notes,
});

function found(name: string): WorksheetFunction {
  const id = name.toUpperCase().replace(/^=?BATH\./, "");
  const fn = findFunction(id);
  if (fn !== undefined) return fn;
  const nearest = nearestWord(
    id,
    catalogue.map((one) => one.id),
  );
  throw new CommandFailure(
    `There is no function ${name}${nearest === undefined ? "; without a name the command lists them all" : `; BATH.${nearest} is the nearest`}.`,
  );
}

export const listFunctions: Command = {
  name: "functions",
  usage: "[NAME] [--json]",
  summary: "Lists the BATH functions, or says what one of them takes and gives.",
  options: [{ name: "json", help: "the same as JSON" }],
  examples: ["bathsheet functions", "bathsheet functions TOPUP"],
  words: { least: 0, most: 1 },
  run: ({ words: [name], switches }, { out }) => {
    const fn = name === undefined ? undefined : found(name);
    if (switches.has("json")) out(`${JSON.stringify(fn === undefined ? catalogue.map(described) : described(fn))}\n`);
    else out(fn === undefined ? listed() : helpOf(fn));
    return Promise.resolve(exitCodes.done);
  },
};
