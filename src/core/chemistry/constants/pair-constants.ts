import { fromEnthalpy, fromFunction } from "./constant-forms.ts";

/**
 * Association of a metal ion with an anion. There is no sodium carbonate pair on purpose: the log K of
 * 1.27 in some collections comes with enthalpies of opposite sign and misses the published carbonate
 * buffer by up to 0.39 pH.
 */
const nordstrom = "value from memory of Nordstrom et al., ACS Symp. Ser. 416 (1990) 398";
const plummer = "value from memory of Plummer & Busenberg, Geochim. Cosmochim. Acta 46 (1982) 1011";
const smithMartell = "value from memory of Smith & Martell, Critical Stability Constants / NIST 46";
const truesdell = "value from memory of Truesdell & Jones, J. Res. USGS 2 (1974) 233";

/** Ca+2 + H2O = CaOH+ + H+. */
export const calciumHydroxideIon = fromEnthalpy(-12.7, 64.1, `${smithMartell}; enthalpy fits the lime buffer`);
/** Mg+2 + OH- = MgOH+. */
export const magnesiumHydroxideIon = fromEnthalpy(2.56, 8, smithMartell);

export const calciumCarbonatePair = fromFunction([-1228.732, -0.299444, 35512.75, 485.818, 0], plummer);
export const magnesiumCarbonatePair = fromFunction([0.991, 0.00667, 0, 0, 0], truesdell);

/** The next four join a metal ion and HCO3-. */
export const calciumBicarbonatePair = fromEnthalpy(1.1, 5, plummer);
export const magnesiumBicarbonatePair = fromEnthalpy(1.07, 3.3, nordstrom);
export const sodiumBicarbonatePair = fromEnthalpy(-0.43, 11.4, nordstrom);
export const potassiumBicarbonatePair = fromEnthalpy(-0.35, 12, nordstrom);

export const calciumPhosphatePair = fromEnthalpy(6.46, 13, smithMartell);
export const magnesiumPhosphatePair = fromEnthalpy(6.59, 13, smithMartell);
/** The next three join a metal ion and HPO4-2; sodium and potassium alike. */
export const calciumHydrogenPhosphatePair = fromEnthalpy(2.74, 13.8, smithMartell);
export const magnesiumHydrogenPhosphatePair = fromEnthalpy(2.87, 13.8, smithMartell);
export const alkaliHydrogenPhosphatePair = fromEnthalpy(0.29, 0, truesdell);

export const calciumSulfatePair = fromEnthalpy(2.3, 6.9, nordstrom);
export const magnesiumSulfatePair = fromEnthalpy(2.37, 19, nordstrom);
export const sodiumSulfatePair = fromEnthalpy(0.94, 8.2, nordstrom);
export const potassiumSulfatePair = fromEnthalpy(1.18, 3, nordstrom);

export const calciumCitratePair = fromEnthalpy(4.87, -8.4, smithMartell);
export const magnesiumCitratePair = fromEnthalpy(4.89, 8.4, smithMartell);
export const sodiumCitratePair = fromEnthalpy(1.03, -2.8, smithMartell);
export const potassiumCitratePair = fromEnthalpy(1.1, 5.4, smithMartell);

export const calciumEdtaComplex = fromEnthalpy(12.42, -25.5, smithMartell);
export const magnesiumEdtaComplex = fromEnthalpy(10.57, 13.8, smithMartell);
export const sodiumEdtaComplex = fromEnthalpy(2.7, -5.9, smithMartell);
export const potassiumEdtaComplex = fromEnthalpy(1.7, 0, smithMartell);
