import type { Ingredient } from "../../chemistry/chemicals/composition-of.ts";
import { compositionOfMoles, compositionOfWeights } from "../../chemistry/chemicals/composition-of.ts";
import type { Composition } from "../../chemistry/composition.ts";
import { DomainError } from "../../limits/domain-error.ts";

export const builderWords = ["hydroxide", "silicate", "carbonate", "phosphate"] as const;

type BuilderWord = (typeof builderWords)[number];

/**
 * What makes a concentrate alkaline, up to its strength: the compositions it may have. One where it is
 * known; the four words' where it is not. Two builders with the same `id` are the same.
 */
export interface Builder {
  readonly id: string;
  readonly candidates: readonly Composition[];
}

/** Proportions in mol of typical concentrates of each kind (own choice; common practice, no source). */
const proportions: Readonly<Record<BuilderWord, readonly Ingredient[]>> = {
  hydroxide: [{ chemical: "NaOH", amount: 1 }],
  silicate: [
    { chemical: "NaOH", amount: 1 },
    { chemical: "Na2SiO3", amount: 1 },
  ],
  carbonate: [
    { chemical: "Na2CO3", amount: 4 },
    { chemical: "Na2SiO3", amount: 2 },
    { chemical: "NaOH", amount: 1 },
  ],
  phosphate: [
    { chemical: "NaOH", amount: 1 },
    { chemical: "Na3PO4", amount: 1 },
  ],
};

/** Brings a composition to one equivalent of metal ions, so that strengths compare. */
function perEquivalent(parts: Composition): Composition {
  const equivalents = parts.sodium + parts.potassium + 2 * (parts.calcium + parts.magnesium) + parts.monoethanolamine;
  if (!(equivalents > 0)) {
    throw new DomainError(
      "invalid",
      "The builder's composition holds nothing alkaline, such as sodium hydroxide or sodium carbonate",
    );
  }
  const scaled = { ...parts };
  for (const name of Object.keys(scaled) as (keyof Composition)[]) scaled[name] /= equivalents;
  return scaled;
}

function fromWord(word: BuilderWord): Builder {
  return { id: word, candidates: [perEquivalent(compositionOfMoles(proportions[word]))] };
}

const known: Readonly<Record<BuilderWord, Builder>> = {
  hydroxide: fromWord("hydroxide"),
  silicate: fromWord("silicate"),
  carbonate: fromWord("carbonate"),
  phosphate: fromWord("phosphate"),
};

export const unknownBuilder: Builder = {
  id: "unknown",
  candidates: builderWords.flatMap((word) => known[word].candidates),
};

/** The builder that a word stands for; throws `invalid` for any other word. */
export function builderFromWord(word: string): Builder {
  const wanted = word.trim().toLowerCase();
  if (wanted === "unknown") return unknownBuilder;
  const found = builderWords.find((one) => one === wanted);
  if (found !== undefined) return known[found];
  throw new DomainError(
    "invalid",
    `Builder is "${word}"; allowed is ${builderWords.join(", ")}, unknown, or a list of components`,
  );
}

/** A builder of a known composition; only proportions matter. */
export function builderFromComposition(parts: Composition): Builder {
  const scaled = perEquivalent(parts);
  return { id: JSON.stringify(scaled), candidates: [scaled] };
}

/** A builder from the components of a safety data sheet in percent by weight. */
export function builderFromWeights(ingredients: readonly Ingredient[]): Builder {
  return builderFromComposition(compositionOfWeights(ingredients));
}
