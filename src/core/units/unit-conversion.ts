import type { Domain } from "../limits/domain.ts";
import { checkWithin } from "../limits/domain.ts";
import { bathStrength } from "../limits/domains.ts";
import { fromSi, toSi } from "./convert.ts";
import { unitsNamed } from "./find-unit.ts";
import type { QuantityKind } from "./quantity.ts";
import type { UnitDefinition } from "./unit-definition.ts";

/** Nothing is colder than absolute zero. */
const anyTemperature: Domain = { measure: "temperature", low: 0, high: Infinity };

/** Parts of water to one part of concentrate. */
const partsOfWater: Domain = { measure: "number", low: 0, high: Infinity };

/** The converted value, or why the two words cannot be converted into one another. */
export type Conversion =
  | { readonly converted: "value"; readonly value: number }
  | { readonly converted: "unknown"; readonly word: string }
  | { readonly converted: "different kinds"; readonly from: QuantityKind; readonly to: QuantityKind };

/** All units that a word may mean, whatever their kind; a bare gallon is a US one. */
export function unitsMeant(word: string): readonly UnitDefinition[] {
  return unitsNamed(word, "US");
}

function converted(value: number, from: UnitDefinition, to: UnitDefinition): number {
  const si = toSi(value, from);
  if (from.kind === "temperature") checkWithin("value", si, anyTemperature);
  if (from.scale.type === "parts") checkWithin("value", value, partsOfWater);
  else if (to.scale.type === "parts") checkWithin("value", si, bathStrength);
  return from === to ? value : fromSi(si, to);
}

/**
 * Converts within one kind; a word that several kinds share takes the kind of its partner. A bare
 * gallon is a US one.
 *
 * @throws OutOfRange for a temperature below absolute zero, and for a strength that no 1+N has
 */
export function convert(value: number, from: string, to: string): Conversion {
  const sources = unitsMeant(from);
  const targets = unitsMeant(to);
  for (const source of sources) {
    for (const target of targets) {
      if (target.kind === source.kind) return { converted: "value", value: converted(value, source, target) };
    }
  }
  const [source] = sources;
  const [target] = targets;
  if (source === undefined) return { converted: "unknown", word: from };
  if (target === undefined) return { converted: "unknown", word: to };
  return { converted: "different kinds", from: source.kind, to: target.kind };
}
