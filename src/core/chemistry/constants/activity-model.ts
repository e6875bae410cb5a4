/**
 * How far the salt in the water lowers the activity of a dissolved species:
 * - "ion": extended Debye–Hückel with an ion size in ångström and a linear term in kg/mol
 *   (Truesdell & Jones, J. Res. USGS 2 (1974) 233);
 * - "davies": for ions without parameters (Davies, Ion Association, 1962);
 * - "neutral": a linear salting-out term, kg/mol.
 */
export type ActivityModel =
  | { readonly type: "ion"; readonly size: number; readonly linear: number }
  | { readonly type: "davies" }
  | { readonly type: "neutral"; readonly linear: number };

export const davies: ActivityModel = { type: "davies" };
export const ionOfSize = (size: number, linear = 0): ActivityModel => ({ type: "ion", size, linear });
/** 0.1 kg/mol is the customary figure for neutral species without one of their own. */
export const neutral = (linear = 0.1): ActivityModel => ({ type: "neutral", linear });

/** The linear term of the Davies equation, per A z². */
export const daviesLinear = 0.3;
