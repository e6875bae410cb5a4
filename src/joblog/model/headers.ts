import type { UnitSystem } from "../../core/units/unit-system.ts";
import type { UnitOf } from "./definition.ts";

interface Labelled {
  readonly label: string;
  readonly unit?: UnitOf;
}

/** The header a person reads: the label and, after a comma, the unit of the log's system. */
export function headerOf(column: Labelled, system: UnitSystem): string {
  return column.unit === undefined ? column.label : `${column.label}, ${column.unit[system]}`;
}
