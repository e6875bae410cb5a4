import type { Reference } from "../reference/reference.ts";

export const stockDaysReference: Reference = {
  symbols: ["n = {H}/{median(i)}"],
  where: { n: "days left", H: "on_hand", i: "daily issues" },
  source: "By definition, at the median daily issue",
  cautions: [],
};
