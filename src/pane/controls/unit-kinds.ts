import { defaultUnit } from "../../core/units/default-unit.ts";
import { unitBySymbol } from "../../core/units/find-unit.ts";
import type { QuantityKind } from "../../core/units/quantity.ts";
import type { UnitDefinition } from "../../core/units/unit-definition.ts";
import type { UnitSystem } from "../../core/units/unit-system.ts";
import type { UnitOf } from "../../joblog/model/definition.ts";
import { conductivity, depth, hardness, mass, temperature, volume } from "../../joblog/model/units-of.ts";

/** The kinds of quantity that a form lets a person type in another unit. */
const kinds: readonly (readonly [UnitOf, QuantityKind])[] = [
  [temperature, "temperature"],
  [volume, "volume"],
  [depth, "length"],
  [mass, "mass"],
  [hardness, "hardness"],
  [conductivity, "conductivity"],
];

export interface ColumnUnit {
  readonly kind: QuantityKind;
  /** The unit that the log's numbers are in. */
  readonly unit: UnitDefinition;
}

/** The quantity behind a column's unit words; undefined where only a bare number makes sense. */
export function columnUnit(unit: UnitOf | undefined, system: UnitSystem): ColumnUnit | undefined {
  const kind = kinds.find(([words]) => words === unit)?.[1];
  if (kind === undefined) return undefined;
  return { kind, unit: kind === "conductivity" ? unitBySymbol("mS/cm", kind) : defaultUnit(kind, system) };
}
