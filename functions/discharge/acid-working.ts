import type { Working } from "../reference/reference.ts";

/** From equivalents of acid to what is weighed or measured out. */
export const acidWorking: Working = {
  symbols: ["m = {n · E}/{p}", 'v = {m}/{ρ} "   liquid acids"'],
  where: {
    m: "mass of acid as sold",
    E: "grams to the equivalent",
    p: "purity by weight",
    v: "volume of acid",
    ρ: "its density at that strength, 20 °C",
  },
};
