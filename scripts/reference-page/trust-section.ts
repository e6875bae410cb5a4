import type { AccuracyRow } from "../../tests/reference/chemistry/accuracy-row.ts";
import type { AchievedAccuracy } from "../../tests/reference/chemistry/achieved-accuracy.ts";
import { text } from "./html-text.ts";
import { scrollable } from "./scrollable.ts";

/** Two figures: an error is not known any better. */
const percent = (value: number): string => `${String(Number((100 * value).toPrecision(2)))} %`;

const figureIn: Readonly<Record<AccuracyRow["unit"], (value: number) => string>> = {
  pH: (value) => `${value.toFixed(3)} pH`,
  relative: percent,
  "share of the opening dose": (value) => `${percent(value)} of the opening dose`,
  log10: (value) => `${value.toFixed(2)} log units`,
};

const headers = ["What", "Against", "Rows", "Largest error", "Mean error (root mean square)", "Goal"];

function row({
  subject,
  against,
  unit,
  rows,
  largest,
  rootMeanSquare,
  goalLargest,
  goalRootMeanSquare,
}: AccuracyRow): string {
  const figure = figureIn[unit];
  const goal =
    goalRootMeanSquare === undefined
      ? figure(goalLargest)
      : `${figure(goalLargest)}; mean ${figure(goalRootMeanSquare)}`;
  const cells = [text(against), String(rows), figure(largest), figure(rootMeanSquare), goal];
  const labelled = cells.map((cell, index) => `<td data-label="${headers[index + 1] ?? ""}">${cell}</td>`);
  return `<tr><th scope="row">${text(subject)}</th>${labelled.join("")}</tr>`;
}

function table(figures: readonly AccuracyRow[]): string {
  return scrollable(
    "Measured accuracy",
    `<table class="stacks">
<thead><tr>${headers.map((header) => `<th scope="col">${header}</th>`).join("")}</tr></thead>
<tbody>${figures.map(row).join("\n")}</tbody>
</table>`,
  );
}

const leftOut = [
  "Surfactants, solvents, amine soaps and silicate polymers.",
  "Solids of silicate and phosphate with calcium and magnesium, which real hard water forms. Calcite and brucite are known, but a worksheet function does not let them form.",
  "Air: a bath takes up carbon dioxide or gives it off. The range of a top-up allows for it; no other figure does.",
  "Soil beyond its acid. pH alone cannot tell acid soil from dilution, and the same reading can mean all detergent left or a quarter of it. One titration can tell.",
  "The meter. At pH 11 and 45 °C it is seldom better than 0.1, which is more than most errors above.",
  "What your product is made of, unless you give its list. Its maker's data, the label, the SDS and the permit win.",
];

/** How far the chemistry is from published and independently computed figures, as measured now. */
export function trustSection({ figures, coverage }: AchievedAccuracy): string {
  const { rows, contained, medianWidth, largestWidth, largestMiss } = coverage;
  return `<section class="about" aria-labelledby="trust">
<h2 id="trust">How far to trust this</h2>
<p>The chemistry was measured against the figures below when this page was made. They are published values, or baths computed with the equilibrium program PHREEQC of the US Geological Survey. None of the constants was adjusted to them.</p>
${table(figures)}
<h3 id="trust-range">When nobody knows what is in the concentrate</h3>
<p>With builder “unknown” and the water's alkalinity given, the range of a half-point top-up held the needed amount in ${contained} of ${rows} baths. The range was ${percent(medianWidth)} of the opening dose wide in the middle case and ${percent(largestWidth)} at most; the best figure was off by ${percent(largestMiss)} of the opening dose at most. So add a third, mix, read, and let the bath's own answer decide.</p>
<h3 id="trust-left-out">What the model leaves out</h3>
<ul>${leftOut.map((line) => `<li>${text(line)}</li>`).join("\n")}</ul>
</section>`;
}
