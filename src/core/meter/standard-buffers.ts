/** A buffer solution and its pH at temperatures in °C: a primary standard's pH(S), or what bottles of its kind print. */
export interface StandardBuffer {
  readonly name: string;
  readonly formula: string;
  /** What its bottle calls it at 25 °C. */
  readonly nominal: readonly number[];
  readonly points: readonly (readonly [celsius: number, pH: number])[];
}

/**
 * pH(S) of the primary standards, 0 to 60 °C: Buck et al., Pure Appl. Chem. 74 (2002) 2169 (IUPAC), and
 * the NIST certificates for 60 °C. Phthalate at 60 °C is the older value; Hetzer et al. 1977 have 4.087. Carbonate at 25 °C as in J. Res. NBS 73A (1969),
 * lime as in J. Res. NBS 56 (1956). Temperatures that a standard was not certified for are left out.
 *
 * The bottle of 7.00 is no primary standard: its table is the one that US technical buffers carry, values from memory.
 * From 0 to 50 °C it runs within 0.005 beside the certified phosphate, moved to 7.000 at 25 °C. The bottles of 4.00
 * (4.01) and of 10.00 (10.01) are taken for phthalate and carbonate, which theirs follow within 0.03 (from memory).
 */
export const standardBuffers: readonly StandardBuffer[] = [
  {
    name: "phthalate",
    formula: "KH phthalate 0.05 mol/kg",
    nominal: [4, 4.005, 4.01],
    points: [
      [0, 4.0],
      [5, 3.998],
      [10, 3.997],
      [15, 3.998],
      [20, 4.0],
      [25, 4.005],
      [30, 4.011],
      [35, 4.018],
      [40, 4.027],
      [50, 4.05],
      [60, 4.08],
    ],
  },
  {
    name: "phosphate",
    formula: "KH2PO4 0.025 + Na2HPO4 0.025 mol/kg",
    nominal: [6.86, 6.865, 6.87],
    points: [
      [0, 6.984],
      [5, 6.951],
      [10, 6.923],
      [15, 6.9],
      [20, 6.881],
      [25, 6.865],
      [30, 6.853],
      [35, 6.844],
      [40, 6.838],
      [50, 6.833],
      [60, 6.836],
    ],
  },
  {
    name: "technical 7",
    formula: "phosphates, by the maker's recipe",
    nominal: [7],
    points: [
      [0, 7.118],
      [5, 7.087],
      [10, 7.059],
      [15, 7.036],
      [20, 7.016],
      [25, 7.0],
      [30, 6.987],
      [35, 6.977],
      [40, 6.97],
      [50, 6.964],
    ],
  },
  {
    name: "phosphate 7.4",
    formula: "KH2PO4 0.008695 + Na2HPO4 0.03043 mol/kg",
    nominal: [7.4, 7.41, 7.413],
    points: [
      [0, 7.534],
      [5, 7.5],
      [10, 7.472],
      [15, 7.448],
      [20, 7.429],
      [25, 7.413],
      [30, 7.4],
      [35, 7.389],
      [40, 7.38],
      [50, 7.367],
    ],
  },
  {
    name: "borax",
    formula: "Na2B4O7 0.01 mol/kg",
    nominal: [9.18],
    points: [
      [0, 9.464],
      [5, 9.395],
      [10, 9.332],
      [15, 9.276],
      [20, 9.225],
      [25, 9.18],
      [30, 9.139],
      [35, 9.102],
      [40, 9.068],
      [50, 9.011],
      [60, 8.962],
    ],
  },
  {
    name: "carbonate",
    formula: "NaHCO3 0.025 + Na2CO3 0.025 mol/kg",
    nominal: [10.01, 10, 10.012],
    points: [
      [0, 10.317],
      [5, 10.245],
      [10, 10.179],
      [15, 10.118],
      [20, 10.062],
      [25, 10.012],
      [30, 9.966],
      [35, 9.926],
      [40, 9.889],
      [50, 9.828],
    ],
  },
  {
    name: "lime",
    formula: "Ca(OH)2 saturated at 25 °C",
    nominal: [12.45, 12.454],
    points: [
      [0, 13.423],
      [5, 13.207],
      [10, 13.003],
      [15, 12.81],
      [20, 12.627],
      [25, 12.454],
      [30, 12.289],
      [35, 12.133],
      [40, 11.984],
      [50, 11.705],
      [60, 11.449],
    ],
  },
];
