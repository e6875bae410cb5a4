import type { Formula } from "./formula.ts";

const byDefinition = "By definition";
const massBalance = "Mass balance";

/** The chemistry behind a bath's pH is the same wherever it is asked. */
export const equilibriumSource =
  "Charge and mass balance with published constants and activity coefficients after Truesdell and Jones (1974); pKw after IAPWS R11-07";

export const formulasOfCharge: Readonly<Record<string, Formula>> = {
  UNITCONVERT: {
    symbols: ["y = {(x + o_1) · f_1}/{f_2} − o_2"],
    where: {
      y: "converted number",
      x: "value",
      f_1: "SI factor of the unit in from",
      f_2: "SI factor of the unit in to",
      "o_1, o_2": "zero points of temperature scales; 0 for all other units",
    },
    source:
      "Exact definitions: inch 25.4 mm, pound 0.45359237 kg, grain 64.79891 mg, US gallon 231 in³, imperial gallon 4.54609 L",
  },
  UNITS: { symbols: [], where: {}, source: "Exact definitions, named in the last column of the table" },
  STRENGTH: {
    symbols: [
      'x = {1}/{N + 1} "   for 1+N"',
      'x = {1}/{N} "   for 1 in N"',
      'x = {q}/{g} "   for q per g of finished bath"',
      'x = {q}/{g + q} "   for q added to g of water"',
    ],
    where: {
      x: "share of concentrate in the finished bath",
      N: "number on the label",
      q: "concentrate",
      g: "bath or water, in the unit of q",
    },
    source: byDefinition,
  },
  TANKVOLUME: {
    symbols: ["V = L · W · d − V_d"],
    where: { V: "volume of liquid", L: "length", W: "width", d: "depth", V_d: "displacement" },
    source: "Geometry; 231 cubic inches to the US gallon by definition",
  },
  ROUNDTANKVOLUME: {
    symbols: ["V = {π}/{4} · D^2 · d − V_d"],
    where: { V: "volume of liquid", D: "inside diameter", d: "depth", V_d: "displacement" },
    source: "Geometry; 231 cubic inches to the US gallon by definition",
  },
  DOSE: {
    symbols: ["v = V · x"],
    where: { v: "concentrate", V: "finished bath", x: "strength, as STRENGTH gives it" },
    source: byDefinition,
  },
  STRENGTHOF: {
    symbols: ["x = {v}/{V}", 'N = {1}/{x} − 1 "   as parts"'],
    where: { x: "strength as a fraction", v: "dose", V: "finished bath", N: "parts of water in 1+N" },
    source: byDefinition,
  },
  HARDNESSDOSE: {
    symbols: ["v = {V · (H − H_0)}/{k}"],
    where: {
      v: "extra concentrate",
      V: "volume",
      H: "hardness",
      H_0: "hardness that the label allows for",
      k: "capacity, CaCO3 per volume of concentrate",
    },
    source: massBalance,
  },
  ALKALINITYDOSE: {
    symbols: ["v = {V · A}/{S}"],
    where: { v: "extra concentrate", V: "volume", A: "alkalinity, eq/L", S: "strength of the concentrate, eq/L" },
    source: "HCO3⁻ + OH⁻ → CO3²⁻ + H2O: one equivalent takes one",
  },
  JARDOSE: {
    symbols: ["v = V · x · {d}/{d_0}"],
    where: {
      v: "concentrate",
      V: "finished bath",
      x: "label's strength",
      d: "dose that passes in this water",
      d_0: "dose that passes in the reference water",
    },
    source: "Proportion; the jar test itself is common practice, no source",
  },
  PHATDOSE: {
    symbols: [
      "pH_2 = f(s · {v_2}/{v_1})",
      'f(s) = pH_1 "   fixes s"',
      'pH_2 ≈ pH_1 + log_10({v_2}/{v_1}) "   for plain hydroxide"',
    ],
    where: {
      f: "pH of builder and water at equilibrium",
      s: "strength of the bath",
      v_1: "known dose",
      v_2: "new dose",
      pH_1: "known pH",
    },
    source: equilibriumSource,
  },
  DOSEATPH: {
    symbols: ["v_2 = v_1 · {s_2}/{s_1}", "f(s_1) = pH_1,  f(s_2) = pH_2"],
    where: {
      v_1: "known dose",
      v_2: "dose for the target",
      f: "pH of builder and water at equilibrium",
      s_1: "strength at the known pH",
      s_2: "strength at the target",
    },
    source: equilibriumSource,
  },
  DOSETABLE: {
    symbols: ["v_{ij} = V_i · x_j"],
    where: { "v_{ij}": "concentrate in row i, column j", V_i: "volume of the row", x_j: "strength of the column" },
    source: byDefinition,
  },
};
