import type { FormulaNode } from "../../functions/reference/formula-markup.ts";
import { formulaNodes } from "../../functions/reference/formula-markup.ts";
import type { Working } from "../../functions/reference/reference.ts";
import { text } from "./html-text.ts";

function element(node: FormulaNode): string {
  const inside = "parts" in node ? node.parts.map(element).join("") : text(node.text).replaceAll(" ", "&nbsp;");
  return `<${node.tag}>${inside}</${node.tag}>`;
}

function math(markup: string): string {
  return `<math>${formulaNodes(markup).map(element).join("")}</math>`;
}

function equation(markup: string): string {
  return `<p class="equation">${math(markup).replace("<math>", '<math displaystyle="true">')}</p>`;
}

function legend(where: Working["where"]): string {
  const meanings = Object.entries(where).map(([symbol, meaning]) => `<li>${math(symbol)} ${text(meaning)}</li>`);
  return meanings.length === 0 ? "" : `<ul class="legend">${meanings.join("")}</ul>`;
}

/** A formula in symbols with what they stand for; nothing where it has none. */
export function formulaBlock(title: string, { symbols, where }: Working): string {
  if (symbols.length === 0) return "";
  return `<div class="formula" role="group" aria-label="${text(title)}" tabindex="0">${symbols.map(equation).join("")}</div>${legend(where)}`;
}
