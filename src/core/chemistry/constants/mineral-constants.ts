import { fromEnthalpy, fromFunction } from "./constant-forms.ts";

/** CaCO3 = Ca+2 + CO3-2. */
export const calcite = fromFunction(
  [-171.9065, -0.077993, 2839.319, 71.595, 0],
  "Plummer & Busenberg, Geochim. Cosmochim. Acta 46 (1982) 1011",
);

/** Mg(OH)2 + 2 H+ = Mg+2 + 2 H2O. */
export const brucite = fromEnthalpy(16.84, -113.4, "Nordstrom et al., ACS Symp. Ser. 416 (1990) 398");
