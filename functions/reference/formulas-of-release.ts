import type { Formula } from "./formula.ts";
import { equilibriumSource } from "./formulas-of-charge.ts";

const acidMass = ["m = {n · E}/{p}", 'v = {m}/{ρ} "   liquid acids"'];
const acidSymbols = {
  m: "mass of acid as sold",
  E: "grams to the equivalent",
  p: "purity by weight",
  v: "volume of acid",
  ρ: "its density at that strength, 20 °C",
};

export const formulasOfRelease: Readonly<Record<string, Formula>> = {
  ACIDFOR: {
    symbols: ["n = V · A", ...acidMass],
    where: { n: "equivalents", V: "volume", A: "alkalinity, eq/L", ...acidSymbols },
    source: "Stoichiometry; densities of the CRC and Perry's handbooks, from memory",
  },
  ACIDTO: {
    symbols: ['f(s, 0) = pH_1,  f(s, n) = pH_2 "   per volume"', ...acidMass],
    where: {
      f: "pH of bath and acid at equilibrium",
      s: "builder in the bath",
      pH_1: "pH now",
      pH_2: "target",
      n: "equivalents of acid",
      ...acidSymbols,
    },
    source: equilibriumSource,
  },
  ACIDSTAGES: {
    symbols: ["a_1 = 0.6 · a", "a_2 = 0.3 · a", "a_3 = a − a_1 − a_2"],
    where: { a: "amount", "a_1, a_2, a_3": "stages" },
    source: "Common practice, no source",
  },
  DISCHARGECHECK: {
    symbols: ["p_1 ≤ pH ≤ p_2"],
    where: { p_1: "low", p_2: "high: the shop's own limits" },
    source: "Limits of the permit; the federal floor of pH 5.0 is 40 CFR 403.5(b)(2)",
  },
  CORROSIVE: {
    symbols: ['pH ≤ 2 "  or  " pH ≥ 12.5'],
    where: {},
    source: "40 CFR 261.22(a)(1)",
  },
  HEATENERGY: {
    symbols: ["Q = V · ρ · c · (t_2 − t_1)"],
    where: { Q: "energy", V: "volume", ρ: "density of water", c: "its specific heat", t_1: "from", t_2: "to" },
    source: "Heat balance of water without losses; 3600 kJ to the kWh by definition",
  },
  HEATTIME: {
    symbols: ["h = {Q}/{P · η}"],
    where: { h: "hours", Q: "energy, as HEATENERGY gives it", P: "kilowatts", η: "efficiency" },
    source: "Heat balance of water",
  },
  UNITPRICE: {
    symbols: ["p = {P}/{V}"],
    where: { p: "price per volume", P: "pack_price", V: "pack_volume" },
    source: "By definition",
  },
  SHARE: {
    symbols: ["q_i = {T · w_i}/{Σ w}", 's_i = q_i "rounded down to the cent"'],
    where: {
      q_i: "quota",
      T: "total",
      w_i: "each weight",
      s_i: "share; cents left over go to the largest remainders, ties to the first",
    },
    source: "Largest remainder (Hamilton's method of apportionment, from memory)",
  },
  REORDERPOINT: {
    symbols: ["R = u · L + S"],
    where: { R: "stock at which to order", u: "daily_use", L: "lead_days", S: "safety" },
    source: "Stock-keeping textbooks: use during the lead time and a safety stock",
  },
  STOCKDAYS: {
    symbols: ["n = {H}/{median(i)}"],
    where: { n: "days left", H: "on_hand", i: "daily issues" },
    source: "By definition, at the median daily issue",
  },
};
