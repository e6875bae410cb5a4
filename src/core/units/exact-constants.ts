/** Definitions of the customary units; exact unless a comment says otherwise. */

/** International inch, 1959 yard and pound agreement. */
export const inch = 0.0254; // m

/** International avoirdupois pound, 1959 yard and pound agreement. */
export const pound = 0.45359237; // kg

/** A pound is 7000 grains. */
export const grain = pound / 7000; // kg

/** A US gallon is 231 cubic inches. */
export const usGallon = 231 * inch ** 3; // m3

/** UK Weights and Measures Act 1985. */
export const imperialGallon = 0.00454609; // m3

/** International Table British thermal unit: the heat of 1 pound by 1 degree Fahrenheit at 2326 J/kg. */
export const britishThermalUnit = 2326 * pound; // J

/** Thermochemical calorie. */
export const calorie = 4.184; // J

/** Zero of the Celsius scale. */
export const celsiusZero = 273.15; // K

/** The customary 100.0869 g/mol, of the atomic weights of 2005; those below add up to 100.086, 9 parts in a million less. */
export const molarMassCalciumCarbonate = 0.1000869; // kg/mol

/** From the IUPAC 2013 abridged atomic weights: Ca 40.078, O 15.999. */
export const molarMassCalciumOxide = 0.056077; // kg/mol

/** IUPAC 2013 abridged atomic weight. */
export const molarMassCalcium = 0.040078; // kg/mol

/** IUPAC 2013 abridged atomic weight. */
export const molarMassMagnesium = 0.024305; // kg/mol
