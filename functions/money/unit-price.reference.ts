import type { Reference } from "../reference/reference.ts";

export const unitPriceReference: Reference = {
  symbols: ["p = {P}/{V}"],
  where: { p: "price per volume", P: "pack_price", V: "pack_volume" },
  source: "By definition",
  cautions: [],
};
