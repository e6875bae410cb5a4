import type { Builder } from "../../../src/core/bath/model/builder.ts";
import { builderFromComposition } from "../../../src/core/bath/model/builder.ts";
import type { Ingredient } from "../../../src/core/chemistry/chemicals/composition-of.ts";
import { compositionOfMoles } from "../../../src/core/chemistry/chemicals/composition-of.ts";
import { findChemical } from "../../../src/core/chemistry/chemicals/find-chemical.ts";
import { molarMass } from "../../../src/core/chemistry/chemicals/molar-mass.ts";

const of = (chemical: string, amount: number): Ingredient => ({ chemical, amount });

/** The concentrates of the tables, mol per liter. */
const recipes: Readonly<Record<string, readonly Ingredient[]>> = {
  R1: [of("NaOH", 0.6), of("Na2SiO3", 0.5), of("Na2CO3", 0.3)],
  R2: [of("KOH", 0.1), of("Na2SiO3", 0.6), of("Na2CO3", 0.8), of("trisodium citrate", 0.15)],
  R3: [of("NaOH", 0.5), of("Na3PO4", 0.4), of("Na4EDTA", 0.1)],
  N: [of("NaOH", 1)],
};

function recipeNamed(recipe: string): readonly Ingredient[] {
  const ingredients = recipes[recipe];
  if (ingredients === undefined) throw new Error(`No recipe ${recipe}`);
  return ingredients;
}

export function builderNamed(recipe: string): Builder {
  return builderFromComposition(compositionOfMoles(recipeNamed(recipe)));
}

/** The recipe as a safety data sheet would list it, in grams per liter. */
export function sheetOf(recipe: string): (string | number)[][] {
  return recipeNamed(recipe).map(({ chemical, amount }) => {
    const found = findChemical(chemical);
    return [chemical, amount * molarMass(found.weighedAs ?? found.formula)];
  });
}
