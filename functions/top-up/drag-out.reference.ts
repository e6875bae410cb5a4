import type { Reference } from "../reference/reference.ts";

export const dragOutReference: Reference = {
  symbols: ["x = (1 − {w}/{V})^n"],
  where: {
    x: "fraction of strength left",
    w: "solution carried out per load",
    V: "volume, kept constant with water",
    n: "loads",
  },
  source: "Mass balance of a bath refilled after each load",
  cautions: [],
};
