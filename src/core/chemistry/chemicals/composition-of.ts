import { DomainError } from "../../limits/domain-error.ts";
import type { Composition, MutableComposition } from "../composition.ts";
import { componentNames, nothingDissolved } from "../composition.ts";
import type { Chemical } from "./chemicals.ts";
import { findChemical } from "./find-chemical.ts";
import { molarMass } from "./molar-mass.ts";

/** A substance by formula or name, and how much of it. */
export interface Ingredient {
  readonly chemical: string;
  readonly amount: number;
}

function add(totals: MutableComposition, chemical: Chemical, moles: number): void {
  for (const name of componentNames) totals[name] += moles * (chemical.parts[name] ?? 0);
}

function checkAmount(ingredient: Ingredient): void {
  if (Number.isFinite(ingredient.amount) && ingredient.amount >= 0) return;
  throw new DomainError(
    "invalid",
    `The amount of ${ingredient.chemical} is ${String(ingredient.amount)}; it must be 0 or more`,
  );
}

/** Totals of a solution made of substances in mol per kg of water. Throws `invalid` for an unknown one. */
export function compositionOfMoles(ingredients: readonly Ingredient[]): Composition {
  const totals: MutableComposition = { ...nothingDissolved };
  for (const ingredient of ingredients) {
    checkAmount(ingredient);
    add(totals, findChemical(ingredient.chemical), ingredient.amount);
  }
  return totals;
}

/** mol of every component in 100 g of a mixture given in percent by weight. Water counts for nothing. */
export function compositionOfWeights(ingredients: readonly Ingredient[]): Composition {
  const totals: MutableComposition = { ...nothingDissolved };
  for (const ingredient of ingredients) {
    checkAmount(ingredient);
    if (/^(water|h2o)$/i.test(ingredient.chemical.trim())) continue;
    const chemical = findChemical(ingredient.chemical);
    add(totals, chemical, ingredient.amount / molarMass(chemical.weighedAs ?? chemical.formula));
  }
  return totals;
}
