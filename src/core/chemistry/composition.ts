/**
 * What is dissolved, as totals of components in mol per kg of water. Strong base is a metal total
 * without an anion, strong acid is chloride without a metal, dissolved carbon dioxide is carbonate
 * alone: the solver finds the hydrogen ions that close the charge balance.
 */
export const componentNames = [
  "sodium",
  "potassium",
  "calcium",
  "magnesium",
  "chloride",
  "sulfate",
  "carbonate",
  "silicate",
  "phosphate",
  "borate",
  "citrate",
  "edta",
  "monoethanolamine",
  "acetate",
] as const;

export type ComponentName = (typeof componentNames)[number];

/** mol per kg of water of every component. */
export type Composition = Readonly<Record<ComponentName, number>>;

export type MutableComposition = Record<ComponentName, number>;

/** Pure water. */
export const nothingDissolved: Composition = {
  sodium: 0,
  potassium: 0,
  calcium: 0,
  magnesium: 0,
  chloride: 0,
  sulfate: 0,
  carbonate: 0,
  silicate: 0,
  phosphate: 0,
  borate: 0,
  citrate: 0,
  edta: 0,
  monoethanolamine: 0,
  acetate: 0,
};

/** A composition from the components that are present. */
export function composition(present: Readonly<Partial<Record<ComponentName, number>>>): Composition {
  return { ...nothingDissolved, ...present };
}

/** Writes share·first + otherShare·second into a composition that the caller owns. */
export function combineInto(
  target: MutableComposition,
  share: number,
  first: Composition,
  otherShare: number,
  second: Composition,
): void {
  target.sodium = share * first.sodium + otherShare * second.sodium;
  target.potassium = share * first.potassium + otherShare * second.potassium;
  target.calcium = share * first.calcium + otherShare * second.calcium;
  target.magnesium = share * first.magnesium + otherShare * second.magnesium;
  target.chloride = share * first.chloride + otherShare * second.chloride;
  target.sulfate = share * first.sulfate + otherShare * second.sulfate;
  target.carbonate = share * first.carbonate + otherShare * second.carbonate;
  target.silicate = share * first.silicate + otherShare * second.silicate;
  target.phosphate = share * first.phosphate + otherShare * second.phosphate;
  target.borate = share * first.borate + otherShare * second.borate;
  target.citrate = share * first.citrate + otherShare * second.citrate;
  target.edta = share * first.edta + otherShare * second.edta;
  target.monoethanolamine = share * first.monoethanolamine + otherShare * second.monoethanolamine;
  target.acetate = share * first.acetate + otherShare * second.acetate;
}

/** share·first + otherShare·second as a composition of its own. */
export function combine(share: number, first: Composition, otherShare: number, second: Composition): Composition {
  const result: MutableComposition = { ...nothingDissolved };
  combineInto(result, share, first, otherShare, second);
  return result;
}
