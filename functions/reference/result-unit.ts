import { type UnitSystem, unitSystems } from "../../src/core/units/unit-system.ts";
import type { CellInput, WorksheetFunction } from "../define-function.ts";

/** "in (US), cm (metric), in (imperial)" by system; nothing where a unit depends on something else. */
export function unitsBySystem(unit: string | undefined): ReadonlyMap<string, string> {
  const [, US, metric, imperial] =
    /^([^();]+) \(US\), ([^();]+) \(metric\), ([^();]+) \(imperial\)$/.exec(unit ?? "") ?? [];
  return US === undefined || metric === undefined || imperial === undefined
    ? new Map()
    : new Map(Object.entries({ US, metric, imperial }));
}

/** The system of units that a call names, or else the usual one. */
export function systemIn(fn: WorksheetFunction, cells: readonly CellInput[]): UnitSystem {
  const given = cells[fn.arguments.findIndex(({ name }) => name === "system")];
  return unitSystems.find((system) => system === given) ?? "US";
}

/** The unit of a function's result in a system; "" where it has none or none that can be told beforehand. */
export function resultUnit({ result: { unit = "" } }: WorksheetFunction, system: UnitSystem): string {
  return unitsBySystem(unit).get(system) ?? (unit.includes("(US)") ? "" : unit);
}
