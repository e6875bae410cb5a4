/** What every function says that asks the bath model; one wording for all of them. */
export const bandNotes: readonly string[] = [
  "With builder “hydroxide” the answer is exact for plain hydroxide in pure water. With any other builder, or an unknown one, it is a band, not an equilibrium calculation for your product.",
  "The band encloses about forty baths of three recipes (silicate, carbonate with citrate, phosphate) in purified, softened and hard water, computed with the equilibrium program PHREEQC and a published database.",
];
