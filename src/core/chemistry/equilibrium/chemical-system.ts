import type { CationName, LigandName, SpeciesDefinition } from "./species-definition.ts";

/** One species at work: constants of the present temperature and ionic strength. */
export interface Species {
  readonly definition: SpeciesDefinition;
  readonly hydrogen: number;
  readonly water: number;
  readonly chargeSquared: number;
  /** Share in ionic strength of one mol/kg. */
  readonly halfChargeSquared: number;
  /** Natural logarithm of the thermodynamic formation constant. */
  logFormation: number;
  /** ln activity coefficient = linear·I − slope·√I/(1 + sizeFactor·√I). */
  slope: number;
  sizeFactor: number;
  linear: number;
  /** Natural logarithm of the formation constant per molality at this ionic strength. */
  logShift: number;
  /** Slope of logShift against ionic strength. */
  shiftSlope: number;
}

/** A metal ion: the logarithm of its activity is an unknown of the solver. */
export interface Cation {
  readonly component: CationName;
  readonly valence: number;
  /** Its row in the gradient and the curvature; row 0 is the hydrogen ion. */
  readonly row: number;
  readonly species: readonly Species[];
  total: number;
  /** Change of the total per unit of an amount that is sought; used by that search alone. */
  totalSlope: number;
  logActivity: number;
}

/** The species of a ligand that hold the same metal, or none. */
export interface Group {
  readonly cation: Cation | undefined;
  readonly species: readonly Species[];
  /** Sums over the species of relative amounts, and of these times hydrogen, half charge squared, shift slope. */
  sum: number;
  hydrogenSum: number;
  chargeSum: number;
  slopeSum: number;
}

/** Sums of products over a whole ligand. */
export interface SquareSums {
  hydrogenSquares: number;
  hydrogenCharge: number;
  hydrogenSlope: number;
  chargeSlope: number;
}

/** An anion or base, eliminated in closed form. */
export interface Ligand {
  readonly component: LigandName;
  readonly basisCharge: number;
  readonly groups: readonly Group[];
  readonly squares: SquareSums;
  total: number;
  totalSlope: number;
  /** Natural logarithm of the basis ion's activity over the total, or over saturation the activity itself. */
  logActivity: number;
}

/** A solid that may be held at saturation. */
export interface Solid {
  /** Natural logarithm of the solubility product of calcite, or of brucite's constant with H+. */
  logSolubility: number;
  present: boolean;
  /** mol per kg of water; meaningful while present. */
  amount: number;
}

/** What the hydrogen balance and the ionic strength lack, and their slopes, at a given pH. */
export interface Border {
  hydrogen: number;
  hydrogenPerStrength: number;
  hydrogenPerAmount: number;
  strength: number;
  strengthPerStrength: number;
  strengthPerAmount: number;
}

/** Everything one solve works on. Built once for a set of components, then reused without allocation. */
export interface ChemicalSystem {
  readonly hydrogenIon: Species;
  readonly hydroxide: Species;
  readonly cations: readonly Cation[];
  readonly ligands: readonly Ligand[];
  /** Every species above in one list. */
  readonly species: readonly Species[];
  readonly calcium: Cation | undefined;
  readonly magnesium: Cation | undefined;
  readonly carbonate: Ligand | undefined;
  readonly calcite: Solid;
  readonly brucite: Solid;
  /** Number of unknowns: the hydrogen ion and the metals. */
  readonly rows: number;
  /** The balances, by row: what the present activities hold less what there is, mol/kg. */
  readonly gradient: Float64Array;
  /** Slopes of the balances, upper triangle by rows. */
  readonly curvature: Float64Array;
  /** Slopes of the balances against ionic strength. */
  readonly drift: Float64Array;
  /** Slopes of the measured ionic strength, by row and against ionic strength. */
  readonly strengthSlopes: Float64Array;
  strengthDrift: number;
  /** Ionic strength of the present amounts, mol/kg. */
  measuredStrength: number;
  /** Sum of all dissolved species, mol/kg. */
  solutes: number;
  /** Newton step at constant ionic strength, and its change per unit of ionic strength. */
  readonly step: Float64Array;
  readonly stepDrift: Float64Array;
  /** Slopes of the balances, and of the Newton step, against an amount that is sought. */
  readonly amountDrift: Float64Array;
  readonly stepPerAmount: Float64Array;
  /** Slopes of the hydrogen balance against the metals, by row, kept for the search of an amount. */
  readonly hydrogenSlopes: Float64Array;
  readonly border: Border;
  readonly work: Float64Array;
  /** Chloride keeps to itself, mol/kg. */
  chloride: number;
  /** What the hydrogen balance must add up to: minus the charge of the basis ions. */
  hydrogenTotal: number;
  temperature: number;
  /** Natural logarithm of hydrogen-ion activity. */
  logHydrogen: number;
  /** When set, logHydrogen is given and strong acid or base closes the charge balance. */
  hydrogenIsGiven: boolean;
  /** Strong acid that the given pH calls for, eq/kg; negative for strong base; 0 when the pH is free. */
  acidToClose: number;
  ionicStrength: number;
  logWaterActivity: number;
}
