import { fromEnthalpy, fromFunction } from "./constant-forms.ts";

/**
 * Association of a metal ion with an anion. Two of these are choices that the buffer standards settled, since the
 * collections disagree. There is no sodium carbonate pair: the log K of 1.27 comes with enthalpies of opposite sign
 * (37.28 kJ/mol in wateq4f.dat, -20.35 in minteq.v4.dat) and misses the carbonate standard by up to 0.39 pH. And
 * NaHPO4- has 0.29, not 0.87 (Martell & Smith 1997) or 1.07 (NIST 46.3), which put the phosphate standards 0.059
 * and 0.094 low. There are no calcium and magnesium silicate pairs, which the reference page says and ranges allow for.
 */
const nordstrom = "Nordstrom et al., ACS Symp. Ser. 416 (1990) 398";
const plummer = "Plummer & Busenberg, Geochim. Cosmochim. Acta 46 (1982) 1011";
const truesdell = "Truesdell & Jones, J. Res. USGS 2 (1974) 233";
const wateq = "WATEQ4F, as copied in PHREEQC's wateq4f.dat";
const phreeqc = "PHREEQC's own fit to solubilities, in its phreeqc.dat";
const nist463 = "NIST 46.3, as copied in PHREEQC's minteq.v4.dat";
const nist462 = "NIST 46.2, as copied in PHREEQC's minteq.v4.dat";
const criticalConstants = "Critical Stability Constants 2.62, as copied in PHREEQC's minteq.v4.dat";

/** Ca+2 + H2O = CaOH+ + H+. */
export const calciumHydroxideIon = fromEnthalpy(-12.697, 64.11, nist463);
/** Mg+2 + OH- = MgOH+: MgOH+ of the copy less the water that it is formed from. */
export const magnesiumHydroxideIon = fromEnthalpy(2.6, 12, nist463);

export const calciumCarbonatePair = fromFunction([-1228.732, -0.299444, 35512.75, 485.818, 0], plummer);
export const magnesiumCarbonatePair = fromFunction([0.991, 0.00667, 0, 0, 0], wateq);

/** The next four join a metal ion and HCO3-. */
export const calciumBicarbonatePair = fromFunction([1209.12, 0.31294, -34765.05, -478.782, 0], plummer);
export const magnesiumBicarbonatePair = fromEnthalpy(1.07, 3.3, nordstrom);
export const sodiumBicarbonatePair = fromEnthalpy(-0.43, 11.4, phreeqc);
export const potassiumBicarbonatePair = fromEnthalpy(-0.35, 12, phreeqc);

export const calciumPhosphatePair = fromEnthalpy(6.46, 13, wateq);
export const magnesiumPhosphatePair = fromEnthalpy(6.59, 13, wateq);
/** The next three join a metal ion and HPO4-2; sodium and potassium alike. */
export const calciumHydrogenPhosphatePair = fromEnthalpy(2.74, 13.8, wateq);
export const magnesiumHydrogenPhosphatePair = fromEnthalpy(2.87, 13.8, wateq);
export const alkaliHydrogenPhosphatePair = fromEnthalpy(0.29, 0, truesdell);

export const calciumSulfatePair = fromEnthalpy(2.3, 6.9, nordstrom);
export const magnesiumSulfatePair = fromEnthalpy(2.37, 19, nordstrom);
export const sodiumSulfatePair = fromEnthalpy(0.94, 8.2, phreeqc);
export const potassiumSulfatePair = fromEnthalpy(1.18, 3, phreeqc);

export const calciumCitratePair = fromEnthalpy(4.87, -8.4, nist462);
export const magnesiumCitratePair = fromEnthalpy(4.89, 8.4, nist462);
export const sodiumCitratePair = fromEnthalpy(1.03, -2.8, criticalConstants);
export const potassiumCitratePair = fromEnthalpy(1.1, 5.4, nist462);

export const calciumEdtaComplex = fromEnthalpy(12.42, -25.5, nist462);
export const magnesiumEdtaComplex = fromEnthalpy(10.57, 13.8, nist462);
export const sodiumEdtaComplex = fromEnthalpy(2.7, -5.9, nist462);
export const potassiumEdtaComplex = fromEnthalpy(1.7, 0, nist462);
