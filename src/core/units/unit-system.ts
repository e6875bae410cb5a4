/** The three systems of units a shop may work in. */
export const unitSystems = ["US", "metric", "imperial"] as const;

export type UnitSystem = (typeof unitSystems)[number];
