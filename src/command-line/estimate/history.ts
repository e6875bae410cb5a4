import * as z from "zod";

import type { Database } from "../rollup/database.ts";

export const measures = ["baths", "concentrate", "water", "hours", "cost"] as const;

export type Measure = (typeof measures)[number];

const soils = ["light", "medium", "heavy"] as const;

export type Soil = (typeof soils)[number];

/** What jobs took for each basket, counted by the weight of its soil. */
interface Spread {
  readonly jobs: number;
  readonly lower: number;
  readonly median: number;
  readonly upper: number;
}

/** What a shop's logs say of jobs that are done. */
export interface History {
  readonly shop: string;
  readonly currency: string;
  readonly weights: Readonly<Record<Soil, number>>;
  readonly jobs: number;
  /** How many logs say nothing, by the reason. */
  readonly leftOut: ReadonlyMap<string, number>;
  readonly spreads: ReadonlyMap<Measure, Spread>;
}

const jobsSchema = z.array(
  z.object({
    shop: z.string(),
    currency: z.string(),
    weight_light: z.number().nullable(),
    weight_medium: z.number().nullable(),
    weight_heavy: z.number().nullable(),
    left_out: z.string(),
  }),
);

const quartilesSchema = z.array(
  z.object({
    shop: z.string(),
    currency: z.string(),
    measure: z.enum(measures),
    jobs: z.bigint().transform(Number),
    lower_quartile: z.number(),
    median: z.number(),
    upper_quartile: z.number(),
  }),
);

type Job = z.output<typeof jobsSchema>[number];
type Quartiles = z.output<typeof quartilesSchema>[number];

function historyOf(shop: string, currency: string, jobs: readonly Job[], quartiles: readonly Quartiles[]): History {
  const leftOut = new Map<string, number>();
  for (const { left_out: why } of jobs) if (why !== "") leftOut.set(why, (leftOut.get(why) ?? 0) + 1);
  const [first] = jobs;
  return {
    shop,
    currency,
    weights: {
      light: first?.weight_light ?? 1,
      medium: first?.weight_medium ?? 1,
      heavy: first?.weight_heavy ?? 1,
    },
    jobs: jobs.filter((job) => job.left_out === "").length,
    leftOut,
    spreads: new Map(
      quartiles.map(({ measure, jobs: count, lower_quartile: lower, median, upper_quartile: upper }) => [
        measure,
        { jobs: count, lower, median, upper },
      ]),
    ),
  };
}

/** What the logs of each shop say, one history for each currency; in the order of the shops' names. */
export async function historiesIn(
  database: Database,
  queryText: (name: string) => Promise<string>,
): Promise<readonly History[]> {
  const jobs = jobsSchema.parse(await database.read("SELECT * FROM jobs ORDER BY shop, currency, file"));
  const quartiles = quartilesSchema.parse(await database.read(await queryText("quartiles")));
  const owners = new Map(jobs.map(({ shop, currency }) => [JSON.stringify([shop, currency]), { shop, currency }]));
  return [...owners.values()].map(({ shop, currency }) => {
    const isOwn = (one: { readonly shop: string; readonly currency: string }): boolean =>
      one.shop === shop && one.currency === currency;
    return historyOf(shop, currency, jobs.filter(isOwn), quartiles.filter(isOwn));
  });
}
