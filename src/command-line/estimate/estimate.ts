import { type History, type Measure, measures, type Soil } from "./history.ts";

/** Under so many jobs the quartiles are single jobs rather than a spread (our choice, no source). */
export const fewestJobs = 5;

export type Baskets = Readonly<Partial<Record<Soil, number>>>;

/** What a job like those of the history would take; amounts in cents. */
export interface Expected {
  readonly measure: Measure;
  readonly jobs: number;
  readonly lower: number;
  readonly median: number;
  readonly upper: number;
}

export interface Estimate {
  readonly weightedBaskets: number;
  readonly expected: readonly Expected[];
  /** What too few jobs say, with their number. */
  readonly unsaid: readonly { readonly measure: Measure; readonly jobs: number }[];
}

/** Baskets of the job to come, times what the shop's jobs took for each, all counted by the weight of their soil. */
export function estimateOf(baskets: Baskets, { weights, spreads }: History): Estimate {
  const weightedBaskets =
    (baskets.light ?? 0) * weights.light +
    (baskets.medium ?? 0) * weights.medium +
    (baskets.heavy ?? 0) * weights.heavy;
  const expected: Expected[] = [];
  const unsaid: { measure: Measure; jobs: number }[] = [];
  for (const measure of measures) {
    const spread = spreads.get(measure);
    const jobs = spread?.jobs ?? 0;
    if (spread === undefined || jobs < fewestJobs) unsaid.push({ measure, jobs });
    else
      expected.push({
        measure,
        jobs,
        lower: spread.lower * weightedBaskets,
        median: spread.median * weightedBaskets,
        upper: spread.upper * weightedBaskets,
      });
  }
  return { weightedBaskets, expected, unsaid };
}
