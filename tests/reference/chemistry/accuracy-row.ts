/** What the figures can tell: whether the chemistry is right, or only whether it is calculated right. */
export type Judge = "measurement" | "same constants";

/** How far the engine is from one set of reference figures. */
export interface AccuracyRow {
  readonly subject: string;
  readonly against: string;
  readonly judge: Judge;
  readonly unit: "pH" | "share of the opening dose" | "relative" | "log10";
  readonly rows: number;
  readonly largest: number;
  readonly rootMeanSquare: number;
  readonly goalLargest: number;
  readonly goalRootMeanSquare?: number;
}

type Question = Pick<AccuracyRow, "subject" | "against" | "judge" | "unit" | "goalLargest" | "goalRootMeanSquare">;

/** The program that worked out the baths of the tables, with our own constants where its database had none or others. */
export const program = {
  against: "PHREEQC 3.8.8, phreeqc.dat with our constants added",
  judge: "same constants",
} as const;

/** Sums up differences; a difference that is not a number counts as infinitely far off. */
export function accuracyOf(question: Question, differences: readonly number[]): AccuracyRow {
  const sizes = differences.map((difference) =>
    Number.isFinite(difference) ? Math.abs(difference) : Number.POSITIVE_INFINITY,
  );
  const squares = sizes.reduce((sum, size) => sum + size * size, 0);
  return {
    ...question,
    rows: sizes.length,
    largest: Math.max(...sizes),
    rootMeanSquare: Math.sqrt(squares / sizes.length),
  };
}
