/** Parameters of a salt of two single-charged ions, kg/mol and kg2/mol2. */
interface PairParameters {
  readonly beta0: number;
  readonly beta1: number;
  readonly cPhi: number;
}

/** Pitzer & Mayorga, J. Phys. Chem. 77 (1973) 2300, at 25 °C, as PHREEQC's pitzer.dat copies them. */
const potassiumHydroxide: PairParameters = { beta0: 0.1298, beta1: 0.32, cPhi: 0.0041 };
const potassiumChloride: PairParameters = { beta0: 0.04835, beta1: 0.2122, cPhi: -0.00084 };
/** Of chloride with hydroxide, and of both with potassium, in the same file. */
const chlorideHydroxide = -0.05;
const chlorideHydroxidePotassium = -0.006;

const slope = 0.3915;
const closeness = 1.2;
const alpha = 2;
const waterKilogramsPerMole = 0.0180153;

/** The two terms of Debye and Hückel that every ion shares, and the salt's own change with ionic strength. */
function shared(molality: number, { beta1 }: PairParameters): number {
  const root = Math.sqrt(molality);
  const x = alpha * root;
  const change = (-2 * beta1 * (1 - (1 + x + x ** 2 / 2) * Math.exp(-x))) / x ** 2 / molality;
  const limit = root / (1 + closeness * root) + (2 / closeness) * Math.log(1 + closeness * root);
  return -slope * limit + molality ** 2 * change;
}

/** Twice the second virial coefficient of a salt and its third, as they act on one of its ions. */
function withCounterIon(molality: number, { beta0, beta1, cPhi }: PairParameters): number {
  const x = alpha * Math.sqrt(molality);
  const second = beta0 + (2 * beta1 * (1 - (1 + x) * Math.exp(-x))) / x ** 2;
  return molality * (2 * second + molality * cPhi);
}

function lnWaterActivity(molality: number, { beta0, beta1, cPhi }: PairParameters): number {
  const root = Math.sqrt(molality);
  const second = beta0 + beta1 * Math.exp(-alpha * root);
  const limit = (-slope * molality ** 1.5) / (1 + closeness * root);
  const osmotic = 1 + (limit + molality ** 2 * (second + molality * cPhi)) / molality;
  return -osmotic * 2 * molality * waterKilogramsPerMole;
}

/**
 * pH of potassium hydroxide at 25 °C by Pitzer's equation, whose parameters were fitted to measured activities, with single
 * ions on the scale of MacInnes, as PHREEQC reports it.
 *
 * @param ionization minus the decimal logarithm of water's ionization constant
 */
export function potassiumHydroxidePH(molality: number, ionization: number): number {
  const own = shared(molality, potassiumHydroxide);
  const third = (molality ** 2 * potassiumHydroxide.cPhi) / 2;
  const lnHydroxide = own + withCounterIon(molality, potassiumHydroxide) + third;
  const mixing = molality * (2 * chlorideHydroxide + molality * chlorideHydroxidePotassium);
  const lnChloride = own + withCounterIon(molality, potassiumChloride) + third + mixing;
  const lnChlorideInItsSalt =
    shared(molality, potassiumChloride) +
    withCounterIon(molality, potassiumChloride) +
    (molality ** 2 * potassiumChloride.cPhi) / 2;
  const ln = lnHydroxide + lnChlorideInItsSalt - lnChloride - lnWaterActivity(molality, potassiumHydroxide);
  return ionization + Math.log10(molality) + ln / Math.LN10;
}
