import type { QuantityKind } from "./quantity.ts";

/** How a number in the unit becomes the SI value of its kind. */
type Scale =
  /** SI value = number × factor. */
  | { readonly type: "proportional"; readonly factor: number }
  /** SI value = (number + offset) × factor. */
  | { readonly type: "shifted"; readonly factor: number; readonly offset: number }
  /** Parts of water to one part of concentrate: fraction = 1 / (1 + number). */
  | { readonly type: "parts" };

export interface UnitDefinition {
  /** The spelling used in results and messages. */
  readonly symbol: string;
  /** Everything else that is read as this unit; case and spaces do not matter. */
  readonly spellings: readonly string[];
  readonly name: string;
  readonly kind: QuantityKind;
  readonly scale: Scale;
  /** Where the factor comes from. */
  readonly definition: string;
}

/** A unit that is a plain multiple of SI. */
export function proportionalUnit(
  kind: QuantityKind,
  symbol: string,
  name: string,
  factor: number,
  definition: string,
  spellings: readonly string[] = [],
): UnitDefinition {
  return { symbol, spellings, name, kind, scale: { type: "proportional", factor }, definition };
}
