import { unitBySymbol } from "./find-unit.ts";
import type { QuantityKind } from "./quantity.ts";
import type { UnitDefinition } from "./unit-definition.ts";
import type { UnitSystem } from "./unit-system.ts";

/** Laboratory quantities keep one unit in every system. */
const symbols: Readonly<Record<QuantityKind, string | Readonly<Record<UnitSystem, string>>>> = {
  length: { US: "in", metric: "cm", imperial: "in" },
  area: { US: "ft²", metric: "m²", imperial: "ft²" },
  volume: { US: "US gal", metric: "L", imperial: "imperial gal" },
  mass: { US: "lb", metric: "kg", imperial: "kg" },
  temperature: { US: "°F", metric: "°C", imperial: "°C" },
  "temperature difference": { US: "Δ°F", metric: "Δ°C", imperial: "Δ°C" },
  hardness: "mg/L CaCO3",
  alkalinity: "mg/L CaCO3",
  "amount per volume": "g/L",
  strength: "fraction",
  energy: "kWh",
  power: "kW",
  "price per volume": { US: "/US gal", metric: "/L", imperial: "/imperial gal" },
  conductivity: "µS/cm",
};

/** The unit of a bare number, and of a result, in a system. */
export function defaultUnit(kind: QuantityKind, system: UnitSystem): UnitDefinition {
  const symbol = symbols[kind];
  return unitBySymbol(typeof symbol === "string" ? symbol : symbol[system], kind);
}
