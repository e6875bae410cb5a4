declare const kindOf: unique symbol;

type Branded<Kind extends string> = number & { readonly [kindOf]: Kind };

export type Kelvin = Branded<"temperature">;
/** Minus the decimal logarithm of hydrogen-ion activity. */
export type PH = Branded<"pH">;
/** Amount dissolved in one kilogram of water, mol/kg. */
export type MolesPerKilogram = Branded<"molality">;
/** Equivalents of acid or base per kilogram of water, eq/kg. */
export type EquivalentsPerKilogram = Branded<"equivalents">;

export const kelvin = (value: number): Kelvin => value as Kelvin;
export const ph = (value: number): PH => value as PH;
export const molesPerKilogram = (value: number): MolesPerKilogram => value as MolesPerKilogram;
export const equivalentsPerKilogram = (value: number): EquivalentsPerKilogram => value as EquivalentsPerKilogram;
