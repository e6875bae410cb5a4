import type { AccuracyRow, Judge } from "../../tests/reference/chemistry/accuracy-row.ts";
import type { AchievedAccuracy } from "../../tests/reference/chemistry/achieved-accuracy.ts";
import { text } from "./html-text.ts";
import { accuracyTable, databaseTable, percent } from "./trust-tables.ts";

const leftOut = [
  "Surfactants, solvents, amine soaps and silicate polymers.",
  "Ion pairs of calcium and magnesium with silicate: most collections have none, and no standard tells who is right. With the constants of sit.dat and CEMDATA18, a fresh silicate bath in water of 18 gpg would read lower at 25 °C by 0.03 at 1 in 40, 0.08 at 1 in 100 and 0.13 at 1 in 200. The range of a top-up allows for it; SOLUTION, SOLUTIONPH and the other figures do not.",
  "Solids of silicate and phosphate with calcium and magnesium, which real hard water forms. Calcite and brucite are known, but a worksheet function does not let them form.",
  "Air: a bath takes up carbon dioxide or gives it off. The range of a top-up allows for it; no other figure does.",
  "Soil beyond its acid. pH alone cannot tell acid soil from dilution, and the same reading can mean all detergent left or a quarter of it. One titration can tell.",
  "The meter. At pH 11 and 45 °C it is seldom better than 0.1, which is more than most errors above.",
  "What your product is made of, unless you give its list. Its maker's data, the label, the SDS and the permit win.",
];

function listOf(lines: readonly string[]): string {
  return `<ul>${lines.map((line) => `<li>${text(line)}</li>`).join("\n")}</ul>`;
}

const judgedBy = (figures: readonly AccuracyRow[], wanted: Judge): readonly AccuracyRow[] =>
  figures.filter(({ judge }) => judge === wanted);

function potassiumLimit({ potassiumHydroxide }: AchievedAccuracy): string {
  const limits = potassiumHydroxide.map(
    ({ molality, error }) => `${Math.abs(error).toFixed(3)} at ${String(molality)} mol/kg`,
  );
  return `<p>Where a concentrate's alkali is potassium hydroxide, the pH is too low, at 25 °C by ${limits.join(", ")}: the model takes potassium for sodium. A concentrate of 4 mol/L makes 0.1 mol/L at 1 in 40.</p>`;
}

function constantsText({ constants: { constants, byStatus, confirmedBy } }: AchievedAccuracy): string {
  return `<h3 id="trust-constants">Where the constants come from</h3>
<p>They are published ones, and none was adjusted to the figures above. Where collections disagree, the value that meets the buffer standards was taken: that settled the pair of sodium and hydrogen phosphate (log K 0.29, where others have 0.87 or 1.07) and that there is no pair of sodium and carbonate.</p>
<p>“From memory” means that the publication was not opened. All ${String(constants)} constants were first written down so. ${String(byStatus.confirmed)} now agree with a public copy (three ion pairs, CaOH+, MgOH+ and CaHCO3+, were corrected by theirs), ${String(byStatus.differs)} differ from theirs (densities of acetic acid, by at most 0.2 %), and ${String(byStatus["from memory"])} have no copy that could be opened: sizes of some ions, densities of strong acids, and what is common practice or our own choice. The confirmed ones by whose copy it was:</p>
${listOf(confirmedBy.map(([collection, count]) => `${collection}: ${String(count)}`))}`;
}

/** How far the chemistry is from published and independently computed figures, as measured now. */
export function trustSection(achieved: AchievedAccuracy): string {
  const { figures, coverage, databases } = achieved;
  const { rows, contained, smallestWidth, largestWidth, largestMiss } = coverage;
  return `<section class="about" aria-labelledby="trust">
<h2 id="trust">How far to trust this</h2>
<p>No row of these tables is a real wash bath. All of them were measured when this page was made. No real Excel has run Bathsheet yet: it was tested in a spreadsheet in the browser that stands in for Excel. Bathsheet sends nothing anywhere; its pages load Microsoft's script office.js from Microsoft, and Excel keeps a workbook where you keep it, in a cloud folder too.</p>
<h3 id="trust-measured">Against measurements</h3>
${accuracyTable("Against measurements", judgedBy(figures, "measurement"))}
${potassiumLimit(achieved)}
<h3 id="trust-calculated">Against a program with the same constants</h3>
<p>These baths are invented, and were computed with the equilibrium program PHREEQC of the US Geological Survey. It was given our constants for citrate, EDTA, ethanolamine, phosphate, borate, CaOH+ and brucite, and has the same equation for activities. So these rows check the calculation rather than the constants.</p>
${accuracyTable("Against a program with the same constants", judgedBy(figures, "same constants"))}
<h3 id="trust-databases">Against databases as they are published</h3>
<p>pH by the same program with six of its databases, none of our constants in them. R1 is sodium hydroxide 0.6, metasilicate 0.5 and carbonate 0.3 mol/L; R2 potassium hydroxide 0.1, metasilicate 0.6 and carbonate 0.8; R3 sodium hydroxide 0.5 and trisodium phosphate 0.4; all at 1 in 40.</p>
${databaseTable("Against databases as they are published", databases)}
${constantsText(achieved)}
<h3 id="trust-range">When nobody knows what is in the concentrate</h3>
<p>With builder “unknown” and the water's alkalinity given, the range of a half-point top-up held the needed amount in ${String(contained)} of ${String(rows)} baths: three invented recipes in three waters, worn down in four ways and computed as above. The range was ${percent(smallestWidth)} to ${percent(largestWidth)} of the opening dose wide; the best figure was off by ${percent(largestMiss)} of the opening dose at most. So add a third, mix, read, and let the bath's own answer decide.</p>
<h3 id="trust-left-out">What the model leaves out</h3>
${listOf(leftOut)}
</section>`;
}
