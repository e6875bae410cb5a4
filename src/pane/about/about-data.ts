import * as z from "zod";

/** What a build says of itself, in about.json beside the pane. */
export const aboutData = z.object({
  version: z.string(),
  /** The packages of which parts were bundled or copied, by name. */
  packages: z.array(z.object({ name: z.string(), version: z.string(), license: z.string() })),
  /** Constants of the chemistry: how many there are, and how many a public copy of each collection confirms. */
  constants: z.object({
    count: z.number(),
    confirmed: z.number(),
    confirmedBy: z.array(z.tuple([z.string(), z.number()])),
  }),
});

export type AboutData = z.infer<typeof aboutData>;
