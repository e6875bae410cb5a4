import type { Formula } from "./formula.ts";

const massBalance = "Mass balance";

export const formulasOfWater: Readonly<Record<string, Formula>> = {
  HARDNESS: {
    symbols: ["H = 100.0869 · ({Ca}/{40.078} + {Mg}/{24.305})"],
    where: { H: "total hardness, mg/L as CaCO3", Ca: "calcium, mg/L", Mg: "magnesium, mg/L" },
    source: "Standard Methods 2340 B, as reprinted; atomic weights of IUPAC, from memory",
  },
  HARDNESSCLASS: { symbols: [], where: {}, source: "US Geological Survey; Water Quality Association" },
  ALKALINITY: {
    symbols: ["A = {V_t · N}/{V_s} · 50 043"],
    where: {
      A: "alkalinity, mg/L as CaCO3",
      V_t: "titrant to the end point",
      N: "strength of the acid, eq/L",
      V_s: "sample, in the unit of the titrant",
      "50 043": "mg of CaCO3 to the equivalent",
    },
    source: "Standard Methods 2320 B",
  },
  ALKALINITYSPLIT: {
    symbols: ["h = max(0, 2 · P − T)", "c = 2 · min(P, T − P)", "b = max(0, T − 2 · P)"],
    where: { h: "hydroxide", c: "carbonate", b: "bicarbonate", P: "alkalinity to pH 8.3", T: "total, to pH 4.5" },
    source: "Standard Methods 2320 B, table of relationships, its five lines in one",
  },
  BLEND: {
    symbols: ["c = {Σ c_i · V_i}/{Σ V_i}"],
    where: { c: "value of the blend", c_i: "value of each water", V_i: "its volume" },
    source: massBalance,
  },
  BLENDSHARE: {
    symbols: ["x = {a − t}/{a − b}"],
    where: { x: "share of water b", a: "value of water a", b: "value of water b", t: "target" },
    source: massBalance,
  },
  SOFTENERLIFE: {
    symbols: ["V = {G}/{H + k · Fe}"],
    where: { V: "volume between regenerations", G: "capacity", H: "hardness", k: "iron factor", Fe: "iron" },
    source: "Mass balance; the iron factor is a convention of the trade",
  },
  ROSPLIT: {
    symbols: ["c_p = c_f · (1 − R)", "c_r = {c_f − Y · c_p}/{1 − Y}", "q = {1}/{Y}"],
    where: {
      c_p: "value of the permeate",
      c_f: "value of the feed",
      R: "rejection",
      c_r: "value of the reject water",
      Y: "recovery",
      q: "feed volume per permeate volume",
    },
    source: massBalance,
  },
  LSI: {
    symbols: [
      "LSI = pH − pH_s",
      "pH_s = (9.3 + A + B) − (C + D)",
      "A = {log_10(S) − 1}/{10}",
      "B = 34.55 − 13.12 · log_10(t + 273.15)",
      "C = log_10(H) − 0.4",
      "D = log_10(M)",
    ],
    where: {
      pH_s: "pH of the same water when saturated",
      S: "total dissolved solids, mg/L",
      t: "temperature, °C",
      H: "calcium hardness, mg/L as CaCO3",
      M: "total alkalinity, mg/L as CaCO3",
    },
    source: "Carrier form of Langelier's index as widely reprinted; method family of Standard Methods 2330",
  },
};
