export const byDefinition = "By definition";

export const massBalance = "Mass balance";

/** The chemistry behind a bath's pH is the same wherever it is asked. */
export const equilibriumSource =
  "Charge and mass balance with published constants and activity coefficients after Truesdell and Jones (1974); pKw after IAPWS R11-07 (2007)";
