import { defaultUnit } from "../../core/units/default-unit.ts";
import { unitBySymbol } from "../../core/units/find-unit.ts";
import type { QuantityKind } from "../../core/units/quantity.ts";
import type { UnclearNumber } from "../../core/units/unclear-number.ts";
import { unclearNumber } from "../../core/units/unclear-number.ts";
import type { UnitDefinition } from "../../core/units/unit-definition.ts";
import type { UnitSystem } from "../../core/units/unit-system.ts";
import type { UnitOf } from "../../joblog/model/definition.ts";
import {
  conductivity,
  depth,
  hardness,
  mass,
  temperature,
  volume,
  waterAlkalinity,
} from "../../joblog/model/units-of.ts";

/** The kinds of quantity that a form lets a person type in another unit. */
const kinds: readonly (readonly [UnitOf, QuantityKind])[] = [
  [temperature, "temperature"],
  [volume, "volume"],
  [depth, "length"],
  [mass, "mass"],
  [hardness, "hardness"],
  [waterAlkalinity, "alkalinity"],
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

/** The two readings of a lab figure typed without its unit, where it makes sense in both. Temperatures are asked about by the forms that know the bath. */
export function unclearFigure(unit: UnitOf | undefined, value: number, system: UnitSystem): UnclearNumber | undefined {
  const kind = columnUnit(unit, system)?.kind;
  return kind === "hardness" || kind === "alkalinity" ? unclearNumber(kind, value, system) : undefined;
}
