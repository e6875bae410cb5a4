import { achievedAccuracy } from "../tests/reference/chemistry/achieved-accuracy.ts";
import { catalogue } from "../functions/catalogue.ts";
import { text } from "./html-text.ts";
import { referenceStyle } from "./reference-style.ts";
import { trustSection } from "./trust-section.ts";
import type { Argument, CellMatrix, CellValue, FunctionExample, WorksheetFunction } from "../functions/define-function.ts";

/** Where a function's help stands on the page. */
export function helpAnchor(fn: WorksheetFunction): string {
  return fn.id.toLowerCase();
}

function signature(fn: WorksheetFunction): string {
  const names = fn.arguments.map(({ name, optional }) => (optional ? `[${name}]` : name));
  return `BATH.${fn.id}(${names.join(", ")})`;
}

function argumentRow({ name, optional, help, unit }: Argument<unknown>): string {
  const need = optional ? "optional" : "required";
  return `<tr><th scope="row"><code>${text(name)}</code></th><td>${need}</td><td>${text(help)}</td><td>${text(unit ?? "")}</td></tr>`;
}

function argumentTable(fn: WorksheetFunction): string {
  return `<div class="wide"><table>
<thead><tr><th scope="col">Argument</th><th scope="col">Needed</th><th scope="col">Meaning</th><th scope="col">Unit of a bare number</th></tr></thead>
<tbody>${fn.arguments.map(argumentRow).join("\n")}</tbody>
</table></div>`;
}

function cellText(cell: CellValue): string {
  return text(cell === null ? "" : typeof cell === "number" ? String(Number(cell.toPrecision(6))) : String(cell));
}

function resultText(result: CellValue | CellMatrix): string {
  if (!Array.isArray(result)) return `<code>${cellText(result)}</code>`;
  const rows = result.map((row) => `<tr>${row.map((cell) => `<td>${cellText(cell)}</td>`).join("")}</tr>`);
  return `<div class="wide"><table class="spill"><tbody>${rows.join("")}</tbody></table></div>`;
}

function example({ formula, result, tolerance, source }: FunctionExample): string {
  const accuracy = tolerance !== undefined && tolerance >= 1e-4 ? ` <span class="quiet">(± ${String(tolerance)})</span>` : "";
  return `<li><code>${text(formula)}</code> gives ${resultText(result)}${accuracy}<br><span class="quiet">Checked against: ${text(source)}.</span></li>`;
}

function resultLine({ result }: WorksheetFunction): string {
  return result.unit === undefined ? text(result.help) : `${text(result.help)}. Unit: ${text(result.unit)}`;
}

function section(fn: WorksheetFunction): string {
  return `<section aria-labelledby="${helpAnchor(fn)}">
<h3 id="${helpAnchor(fn)}">${text(fn.id)}</h3>
<p>${text(fn.summary)}</p>
<p class="signature"><code>=${text(signature(fn))}</code></p>
${argumentTable(fn)}
<p><strong>Result:</strong> ${resultLine(fn)}.</p>
<p><strong>How:</strong> ${text(fn.source)}</p>
<h4>Example</h4>
<ul>${fn.examples.map(example).join("\n")}</ul>
<h4>What it does not know</h4>
<ul>${fn.notes.map((note) => `<li>${text(note)}</li>`).join("\n")}</ul>
</section>`;
}

function categories(): readonly string[] {
  return [...new Set(catalogue.map(({ category }) => category))];
}

function anchorOf(category: string): string {
  return category.toLowerCase().replaceAll(" ", "-");
}

function contents(): string {
  const groups = categories().map((category) => {
    const links = catalogue
      .filter((fn) => fn.category === category)
      .map((fn) => `<a href="#${helpAnchor(fn)}">${fn.id}</a>`);
    return `<li><a class="category" href="#${anchorOf(category)}">${text(category)}</a> ${links.join(" ")}</li>`;
  });
  return `<nav aria-label="Functions"><ul>${groups.join("\n")}
<li><a class="category" href="#trust">How far to trust this</a></li></ul></nav>`;
}

function chapters(): string {
  return categories()
    .map((category) => {
      const sections = catalogue.filter((fn) => fn.category === category).map(section);
      return `<h2 id="${anchorOf(category)}">${text(category)}</h2>\n${sections.join("\n")}`;
    })
    .join("\n");
}

/** The help that Excel opens for a function: one page, no script, derived from the catalogue. */
export function referencePage(): string {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<link rel="icon" href="assets/icon-32.png">
<meta name="color-scheme" content="light dark">
<title>Bathsheet functions</title>
<style>${referenceStyle}</style>
</head>
<body>
<header>
<h1>Bathsheet functions</h1>
<p class="caution"><strong>Arithmetic aid. The label, SDS and permit win.</strong></p>
</header>
${contents()}
<main>
<h2 id="conventions">How to write things</h2>
<ul>
<li>A number is in the unit of the chosen system; text with a unit wins: <code>"60 gal"</code>, <code>"227 L"</code>, <code>"18 gpg"</code>, <code>"131 °F"</code>. <code>"1,500"</code> is refused because it could be 1.5 or 1500.</li>
<li><code>"US"</code> (default): US gallons, inches, °F. <code>"metric"</code>: liters, centimeters, °C. <code>"imperial"</code>: imperial gallons, inches, °C. Hardness and alkalinity are mg/L as CaCO3 in all of them.</li>
<li>Blank and 0 always mean the same, since Excel may hand a blank cell over as 0: both are refused where 0 makes no sense, and both stand for the default in an optional argument. A true zero of hardness or alkalinity is written <code>"0 mg/L"</code>.</li>
<li><code>#VALUE!</code> means that an input is outside its range, <code>#N/A</code> that no answer exists; rest the pointer on the cell's error mark to read why.</li>
<li>Use these functions in cells only, not in conditional formats, validation or names, and without IFERROR around them.</li>
</ul>
${chapters()}
${trustSection(achievedAccuracy())}
</main>
</body>
</html>
`;
}
