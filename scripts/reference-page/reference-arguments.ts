import type { Argument, CellInput } from "../../functions/define-function.ts";
import { DomainError } from "../../src/core/limits/domain-error.ts";
import { text } from "./html-text.ts";

function refusalOf(argument: Argument<unknown>, cell: CellInput): string | undefined {
  try {
    argument.read(cell, { system: "US", systemNamed: false, given: new Map(), bare: new Map() });
    return undefined;
  } catch (refusal) {
    if (refusal instanceof DomainError) return refusal.message;
    throw refusal;
  }
}

/** What a blank cell and a 0 mean, asked of the argument itself, where it is not the rule told once for all. */
function blankMeans(argument: Argument<unknown>): string {
  if (argument.optional || argument.dimensionality === "matrix") return "";
  const [blank, zero] = [refusalOf(argument, null), refusalOf(argument, 0)];
  if (blank === undefined) return "Blank or 0 counts as none.";
  if (zero === undefined) return "Blank is refused; 0 is a number.";
  return zero
    .split(/(?<=\.) /)
    .slice(1)
    .join(" ");
}

function wordsOf({ choices, help }: Argument<unknown>): string {
  if (choices === undefined || choices.every((word) => help.includes(word))) return "";
  return `Words: ${choices.map((word) => `<code>"${text(word)}"</code>`).join(", ")}.`;
}

const sentence = (help: string): string =>
  help.startsWith("pH") ? `${help}.` : `${help.charAt(0).toUpperCase()}${help.slice(1)}.`;

function entry(argument: Argument<unknown>): string {
  const { name, help, optional, unit } = argument;
  const bare = unit === undefined ? "" : `Number: ${text(unit)}.`;
  const facts = [wordsOf(argument), bare, text(blankMeans(argument))].filter((fact) => fact !== "").join(" ");
  return `<div><dt><code>${text(name)}</code>${optional ? ' <span class="quiet">optional</span>' : ""}</dt>
<dd>${text(sentence(help))}${facts === "" ? "" : ` <span class="facts">${facts}</span>`}</dd></div>`;
}

/** Every argument with its meaning, allowed words, unit of a bare number, and what blank means. */
export function argumentList(listed: readonly Argument<unknown>[]): string {
  return listed.length === 0 ? "" : `<dl class="arguments">${listed.map(entry).join("\n")}</dl>`;
}
