import { createHash } from "node:crypto";

import { catalogue } from "../../functions/catalogue.ts";
import { arithmeticAid } from "../../src/core/safety/cautions.ts";
import { achievedAccuracy } from "../../tests/reference/chemistry/achieved-accuracy.ts";
import { text } from "./html-text.ts";
import { modelAnchor, modelSection } from "./model-section.ts";
import { functionSection, helpAnchor } from "./reference-function.ts";
import { referenceSearch } from "./reference-search.ts";
import { referenceStyle } from "./reference-style.ts";
import { safetySection } from "./safety-section.ts";
import { trustSection } from "./trust-section.ts";

const categories = [...new Set(catalogue.map(({ category }) => category))];

function anchorOf(category: string): string {
  return category.toLowerCase().replaceAll(" ", "-");
}

function linksOf(category: string): string {
  const links = catalogue
    .filter((fn) => fn.category === category)
    .map((fn) => `<li><a href="#${helpAnchor(fn)}">${fn.id}</a></li>`);
  return `<ul class="names">${links.join("")}</ul>`;
}

function contents(): string {
  const chapters = categories.map(
    (category) =>
      `<li class="category"><a href="#${anchorOf(category)}">${text(category)}</a>${linksOf(category)}</li>`,
  );
  return `<nav aria-label="Functions"><ul>
<li class="category"><a href="#conventions">How to write things</a></li>
<li class="category"><a href="#${modelAnchor}">Builder and water</a></li>
${chapters.join("\n")}
<li class="category"><a href="#safety">Safety, step by step</a></li>
<li class="category"><a href="#trust">How far to trust this</a></li>
</ul></nav>`;
}

function chapter(category: string): string {
  const sections = catalogue.filter((fn) => fn.category === category).map(functionSection);
  return `<section class="chapter" aria-labelledby="${anchorOf(category)}">
<h2 id="${anchorOf(category)}">${text(category)}</h2>
${sections.join("\n")}
</section>`;
}

const conventions = `<section class="about" aria-labelledby="conventions">
<h2 id="conventions">How to write things</h2>
<ul>
<li>A number is in the unit of the chosen system; text with a unit wins: <code>"60 gal"</code>, <code>"1 1/2 gal"</code>, <code>"227 L"</code>, <code>"18 gpg"</code>, <code>"131 °F"</code>. <code>"1,500"</code> is refused because it could be 1.5 or 1500.</li>
<li><code>"US"</code> (default): US gallons, inches, °F. <code>"metric"</code>: liters, centimeters, °C. <code>"imperial"</code>: imperial gallons, inches, and °C, since where gallons are imperial, thermometers read °C. Hardness and alkalinity are mg/L as CaCO3 in all of them.</li>
<li>A strength is <code>"1+40"</code> (1 part and 40 parts of water; so is <code>"1:40"</code>), <code>"1 in 40"</code>, <code>"2.5%"</code>, <code>"3 fl oz/gal"</code> of finished bath, <code>"3 fl oz to 1 gal"</code> of water, <code>"25 mL/L"</code>, or a share such as 0.025.</li>
<li>Blank and 0 always mean the same, since Excel may hand a blank cell over as 0: an argument refuses both, and an optional one takes both as left out. Only what differs from that is said with an argument. A true zero of hardness or alkalinity is written <code>"0 mg/L"</code>.</li>
<li><code>#VALUE!</code> means that an input is outside its range, <code>#N/A</code> that no answer exists; rest the pointer on the cell's error mark to read why.</li>
<li>A charge is what you do: fill an empty tank with water and concentrate. The opening dose is how much concentrate goes in with it. A top-up is concentrate that you add later; to make up to the line is to replace water.</li>
<li>P and T are the two end points of an alkalinity titration: P (free) to pH 8.3, T (total) to pH 4.5.</li>
<li>Use these functions in cells only, not in conditional formats, validation or names, and without IFERROR around them.</li>
</ul>
</section>`;

function hash(inline: string): string {
  return `'sha256-${createHash("sha256").update(inline).digest("base64")}'`;
}

/** Nothing but this page's own style and script runs, and nothing is fetched but its icon. */
const policy = `default-src 'none'; style-src ${hash(referenceStyle)}; script-src ${hash(referenceSearch)}; img-src 'self'; base-uri 'none'; form-action 'none'`;

/** The help that Excel opens for a function: one page, derived from the catalogue. */
export function referencePage(): string {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<link rel="icon" href="assets/icon-32.png">
<meta name="color-scheme" content="light dark">
<title>Bathsheet functions</title>
<style>${referenceStyle}</style>
</head>
<body>
<header>
<h1>Bathsheet functions</h1>
<p class="motto">${arithmeticAid}</p>
<form role="search" hidden>
<label for="query">Search the functions</label>
<input id="query" type="search" autocomplete="off" spellcheck="false">
<p id="found" role="status"></p>
</form>
</header>
${contents()}
<main>
${conventions}
${modelSection}
${categories.map(chapter).join("\n")}
${safetySection}
${trustSection(achievedAccuracy())}
</main>
<script type="module">${referenceSearch}</script>
</body>
</html>
`;
}
