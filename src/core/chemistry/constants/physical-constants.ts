/** Exact, 2019 SI: Avogadro times Boltzmann constant. */
export const gasConstant = 8.31446261815324; // J/(mol K)

/** 25 °C, where published equilibrium constants are stated. */
export const referenceTemperature = 298.15; // K

/** Zero of the Celsius scale. */
export const celsiusZero = 273.15; // K

/** IAPWS R11-07 states its molality conversion with this molar mass of water. */
export const molarMassWater = 18.015268; // g/mol
