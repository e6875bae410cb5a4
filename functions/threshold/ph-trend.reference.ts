import type { Reference } from "../reference/reference.ts";

export const phTrendReference: Reference = {
  symbols: ["m = median({y_j − y_i}/{t_j − t_i}),  t_j > t_i"],
  where: { m: "slope per unit of time", y: "readings", t: "times" },
  source:
    "Helsel et al., Statistical Methods in Water Resources, USGS TM4-A3, chapter 10; after Theil (1950) and Sen, J. Am. Stat. Assoc. 63 (1968) 1379, from memory",
  cautions: [],
};
