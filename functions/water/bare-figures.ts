/** Lab figures that make sense in two units, and what is done with a bare one; one wording for all that take them. */
export const bareHardnessNotes: readonly string[] = [
  "A bare hardness is in mg/L as CaCO3, and one from 1 to 50 is refused: it may be grains or degrees, 17 times as much. Write 18 gpg or 18 mg/L.",
];

export const bareAlkalinityNotes: readonly string[] = [
  "A bare alkalinity is in mg/L as CaCO3, and one up to 20 is refused: it may be meq/L, 50 times as much. Write 4.8 meq/L or 4.8 mg/L.",
];
