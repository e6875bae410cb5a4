import { compositionOfMoles } from "../../src/core/chemistry/chemicals/composition-of.ts";
import type { Composition } from "../../src/core/chemistry/composition.ts";
import { checkComposition } from "../../src/core/chemistry/limits.ts";
import { compositionRows, naming } from "../arguments/composition-rows.ts";
import { isBlankOrZero, refuse } from "../arguments/read-cell.ts";
import { temperatureOf } from "../arguments/temperature-argument.ts";
import type { Argument } from "../define-function.ts";

const name = "composition";

/** What is dissolved: two columns, component and mol per kg of water. */
export const composition: Argument<Composition, "composition"> = {
  name,
  help: "two columns: component by formula or name, such as NaOH, Na2CO3, Na2SiO3, citric acid, CaCl2; and its amount",
  unit: "mol per kg of water",
  excelType: "any",
  dimensionality: "matrix",
  optional: false,
  read: (input) => {
    const rows = Array.isArray(input) ? input : [[input ?? null]];
    if (rows.every((row) => row.every(isBlankOrZero))) refuse(name, "is blank.");
    const ingredients = compositionRows(name, rows, "mol per kg of water");
    return naming(name, "Strong base is NaOH, strong acid HCl.", () => {
      const totals = compositionOfMoles(ingredients);
      checkComposition(totals);
      return totals;
    });
  },
};

export const solutionTemperature = temperatureOf("the solution, 0 to 80 °C", true);

/** What both functions of this folder leave out. */
export const solutionNotes: readonly string[] = [
  "Closed to air: carbon dioxide neither comes nor goes. Nothing precipitates; a positive index says that scale may.",
  "Calcium and magnesium silicate pairs are left out: a weak silicate bath in water of 18 gpg may read up to 0.13 lower. Potassium counts as sodium: at 25 °C the pH of its hydroxide is 0.02 too low at 0.1 mol/kg, 0.09 at 0.5.",
  "Surfactants, amine soaps, silicate polymers and the solids of silicate and phosphate are left out. Above an ionic strength of 0.5 mol/kg the figures have no footing.",
];
