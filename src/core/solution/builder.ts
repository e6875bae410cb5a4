/**
 * What makes a concentrate alkaline, as far as the bath model tells the cases apart. "mixed" comes
 * from a list of components that holds more than hydroxide.
 */
export const builderWords = ["unknown", "hydroxide", "silicate", "carbonate", "phosphate"] as const;

export type BuilderWord = (typeof builderWords)[number];

/** One line of a safety data sheet's list; only proportions matter. */
export interface BuilderComponent {
  readonly name: string;
  readonly percentByWeight: number;
}

export type Builder =
  | { readonly known: "word"; readonly word: BuilderWord }
  | { readonly known: "components"; readonly components: readonly BuilderComponent[] };

const hydroxides = ["naoh", "sodium hydroxide", "caustic soda", "koh", "potassium hydroxide", "caustic potash"];

/** Carries no alkali and no buffer. */
const inert = ["water", "h2o", "nacl", "sodium chloride", "kcl", "potassium chloride", "na2so4", "sodium sulfate"];

/** True where plain hydroxide is the only alkali: the one case without a buffer. */
export function isPlainHydroxide(builder: Builder): boolean {
  if (builder.known === "word") return builder.word === "hydroxide";
  const names = builder.components.map(({ name }) => name.trim().toLowerCase());
  return names.some((name) => hydroxides.includes(name)) && names.every((name) => hydroxides.includes(name) || inert.includes(name));
}
