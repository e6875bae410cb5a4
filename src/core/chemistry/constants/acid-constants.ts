import { fromDissociation, fromEnthalpy, fromFunction } from "./constant-forms.ts";
import type { EquilibriumConstant } from "./equilibrium-constant.ts";

/**
 * Each constant is for the formation of the acid from its anion and one H+, unless it says otherwise. The papers
 * were not opened: `constants.csv` beside the reference figures of the tests holds each figure to a public copy.
 */
const goldberg = "Goldberg, Kishore & Lennen, J. Phys. Chem. Ref. Data 31 (2002) 231";
const plummer = "Plummer & Busenberg, Geochim. Cosmochim. Acta 46 (1982) 1011";
const nordstrom = "Nordstrom et al., ACS Symp. Ser. 416 (1990) 398";
/** The copy does not state the ionic strength of these. */
const nist46 = "NIST 46.2, as copied in PHREEQC's minteq.v4.dat";

export const waterItself: EquilibriumConstant = { type: "water", source: "IAPWS R11-07 (2007)" };

export const bicarbonate = fromFunction([107.8871, 0.03252849, -5151.79, -38.92561, 563713.9], plummer);
export const carbonicAcid = fromFunction([356.3094, 0.06091964, -21834.37, -126.8339, 1684915], plummer);

export const hydrogenPhosphate = fromDissociation(12.35, 16.0, -242, goldberg);
export const dihydrogenPhosphate = fromDissociation(7.198, 3.6, -230, goldberg);
export const phosphoricAcid = fromDissociation(2.148, -8.0, -141, goldberg);

export const boricAcid = fromDissociation(9.237, 13.8, -240, goldberg);

export const hydrogenCitrate = fromDissociation(6.396, -3.38, -254, goldberg);
export const dihydrogenCitrate = fromDissociation(4.761, 2.23, -178, goldberg);
export const citricAcid = fromDissociation(3.128, 4.07, -131, goldberg);

export const ethanolammonium = fromDissociation(9.498, 50.52, 26, goldberg);
export const aceticAcid = fromDissociation(4.756, -0.41, -142, goldberg);

/**
 * H2SiO4-2 + H+ = H3SiO4-: the published function of the first dissociation less that of both. The second
 * step is uncertain by 0.3.
 */
export const hydrogenSilicate = fromFunction(
  [-302.3724 + 294.0184, -0.050698 + 0.07265, 15669.69 - 11204.49, 0, 0],
  nordstrom,
);
/** H2SiO4-2 + 2 H+ = H4SiO4, the reverse of both dissociations. */
export const silicicAcid = fromFunction([294.0184, 0.07265, -11204.49, -108.18466, 1119669], nordstrom);

/** Hummel et al. 2005 give 11.24 for the last proton. */
export const hydrogenEdta = fromDissociation(10.95, 23.4, 0, nist46);
export const dihydrogenEdta = fromDissociation(6.27, 17.6, 0, nist46);
export const trihydrogenEdta = fromDissociation(3.12, -5.4, 0, nist46);
export const tetrahydrogenEdta = fromDissociation(2.16, -1.3, 0, nist46);

export const hydrogenSulfate = fromEnthalpy(1.988, 16.1, nordstrom);
