import type { WorksheetFunction } from "../../functions/define-function.ts";
import { referenceOf } from "../../functions/reference-of.ts";
import { modelNotes } from "../../functions/top-up/model-notes.ts";
import { text } from "./html-text.ts";
import { modelAnchor } from "./model-section.ts";
import { argumentList } from "./reference-arguments.ts";
import { examples } from "./reference-example.ts";
import { formulaBlock } from "./reference-formula.ts";

/** Where a function's help stands on the page. */
export function helpAnchor(fn: WorksheetFunction): string {
  return fn.id.toLowerCase();
}

function signature(fn: WorksheetFunction): string {
  const names = fn.arguments.map(({ name, optional }) => (optional ? `[${name}]` : name));
  return `=BATH.${fn.id}(${names.join(", ")})`;
}

const ended = (words: string): string => (/[.:!?]$/.test(words) ? words : `${words}.`);

function cautionBox(fn: WorksheetFunction): string {
  const cautions = referenceOf(fn.id).cautions.map(
    (caution) => `<li>${text(caution.text)} <span class="source">${text(caution.source)}.</span></li>`,
  );
  return cautions.length === 0 ? "" : `<div class="caution"><h4>Caution</h4><ul>${cautions.join("\n")}</ul></div>`;
}

function resultLine({ result }: WorksheetFunction): string {
  const unit = result.unit === undefined ? "" : ` <span class="facts">Unit: ${text(result.unit)}.</span>`;
  return `<p><strong>Gives</strong> ${text(ended(result.help))}${unit}</p>`;
}

function how(fn: WorksheetFunction): string {
  const reference = referenceOf(fn.id);
  return `<h4>Formula</h4>
<p>${text(ended(fn.source))}</p>
${formulaBlock(`Formula of ${fn.id}`, reference)}
<p class="source">Source: ${text(ended(reference.source))}</p>`;
}

/** What a function leaves to the reader; what holds for every function that asks the chemistry of a bath stands once. */
function limits({ notes }: WorksheetFunction): string {
  const own = notes.filter((note) => !modelNotes.includes(note)).map((note) => `<li>${text(note)}</li>`);
  const shared =
    own.length === notes.length ? [] : [`<li>What is taken for <a href="#${modelAnchor}">builder and water</a>.</li>`];
  return `<h4>Limits</h4>
<ul>${[...own, ...shared].join("\n")}</ul>`;
}

/** One function: what for, arguments, result, cautions, formula, examples, limits. */
export function functionSection(fn: WorksheetFunction): string {
  const anchor = helpAnchor(fn);
  return `<section class="function" aria-labelledby="${anchor}">
<h3 id="${anchor}"><a href="#${anchor}">${text(fn.id)}</a></h3>
<p>${text(fn.summary)}</p>
<p class="signature"><code>${text(signature(fn))}</code></p>
${argumentList(fn.arguments)}
${resultLine(fn)}
${cautionBox(fn)}
${how(fn)}
<h4>Worked example</h4>
${examples(fn)}
${limits(fn)}
</section>`;
}
