/**
 * Quantities in SI units. A number that carries a unit has that unit in its type; conversion happens
 * at the edge only.
 */
export const quantityKinds = [
  "length",
  "area",
  "volume",
  "mass",
  "temperature",
  "temperature difference",
  "hardness",
  "alkalinity",
  "amount per volume",
  "strength",
  "energy",
  "power",
  "price per volume",
  "conductivity",
] as const;

export type QuantityKind = (typeof quantityKinds)[number];

declare const kindOf: unique symbol;

type Branded<Kind extends string> = number & { readonly [kindOf]: Kind };

/** A number in the SI unit of its kind. */
export type Quantity<Kind extends QuantityKind> = Branded<Kind>;

export type Meters = Quantity<"length">;
export type Kilograms = Quantity<"mass">;
export type CubicMeters = Quantity<"volume">;
export type Kelvin = Quantity<"temperature">;
/** Calcium and magnesium together, mol per cubic meter. */
export type Hardness = Quantity<"hardness">;
/** Equivalents of alkali per cubic meter. */
export type Alkalinity = Quantity<"alkalinity">;
export type KilogramsPerCubicMeter = Quantity<"amount per volume">;
/** Volume of concentrate per volume of finished bath. */
export type VolumeFraction = Quantity<"strength">;
export type Joules = Quantity<"energy">;
export type Watts = Quantity<"power">;
/** Price per cubic meter, in whatever currency the price was given in. */
export type PricePerCubicMeter = Quantity<"price per volume">;
/** Minus the decimal logarithm of hydrogen-ion activity. */
export type PH = Branded<"pH">;
/** Amount dissolved in one kilogram of water, mol/kg. */
export type MolesPerKilogram = Branded<"molality">;
/** Equivalents of acid or base per kilogram of water, eq/kg. */
export type EquivalentsPerKilogram = Branded<"equivalents">;

export const meters = (value: number): Meters => value as Meters;
export const kilograms = (value: number): Kilograms => value as Kilograms;
export const cubicMeters = (value: number): CubicMeters => value as CubicMeters;
export const kelvin = (value: number): Kelvin => value as Kelvin;
export const hardness = (molesPerCubicMeter: number): Hardness => molesPerCubicMeter as Hardness;
export const alkalinity = (equivalentsPerCubicMeter: number): Alkalinity => equivalentsPerCubicMeter as Alkalinity;
export const kilogramsPerCubicMeter = (value: number): KilogramsPerCubicMeter => value as KilogramsPerCubicMeter;
export const volumeFraction = (value: number): VolumeFraction => value as VolumeFraction;
export const joules = (value: number): Joules => value as Joules;
export const watts = (value: number): Watts => value as Watts;
export const pricePerCubicMeter = (value: number): PricePerCubicMeter => value as PricePerCubicMeter;
export const ph = (value: number): PH => value as PH;
export const molesPerKilogram = (value: number): MolesPerKilogram => value as MolesPerKilogram;
export const equivalentsPerKilogram = (value: number): EquivalentsPerKilogram => value as EquivalentsPerKilogram;
