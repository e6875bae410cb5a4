import type { Reference } from "../reference/reference.ts";

export const softenerLifeReference: Reference = {
  symbols: ["V = {G}/{H + k · Fe}"],
  where: { V: "volume between regenerations", G: "capacity", H: "hardness", k: "iron factor", Fe: "iron" },
  source: "Mass balance; the iron factor is a convention of the trade",
  cautions: [],
};
