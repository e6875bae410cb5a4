/** Limits of US federal law that results are held to. Permits and local codes are stricter; a shop writes its own. */

/** Nothing lower to a sewer, except to works that were designed for it: 40 CFR 403.5(b)(2). */
export const sewerFloor = 5;

/** At these and beyond, an aqueous waste is corrosive hazardous waste, D002: 40 CFR 261.22(a)(1). */
export const corrosiveAcid = 2;
export const corrosiveAlkali = 12.5;

/** Nearer to a limit than this no meter decides; common practice, no source. */
export const meterDoubt = 0.1;
