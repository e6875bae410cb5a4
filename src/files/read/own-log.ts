import { type UnitSystem, unitSystems } from "../../core/units/unit-system.ts";
import { jobLog } from "../../joblog/job-log.ts";
import { findField } from "../../joblog/model/references.ts";
import type { SheetState, StateValue, WorkbookState } from "../../state/workbook-state.ts";
import { readArea, splitSheet } from "./read-address.ts";

/** What tells a job log, and which it is. */
export interface OwnLog {
  readonly version: number;
  readonly system: UnitSystem;
}

function typedAt(sheet: SheetState | undefined, row: number, column: number): StateValue | undefined {
  return sheet?.typed.find(([atRow, atColumn]) => atRow === row && atColumn === column)?.[3];
}

/** What is typed in the one cell that a name stands for. */
function namedValue(state: WorkbookState, field: string): StateValue | undefined {
  const { name } = findField(jobLog, field);
  const found = state.book.names.find((one) => one.name.toLowerCase() === name.toLowerCase());
  if (found === undefined) return undefined;
  const { sheet, local } = splitSheet(found.refersTo);
  const area = readArea(local);
  const on = state.sheets.find((one) => one.name === sheet);
  return area === undefined ? undefined : typedAt(on, area.row, area.column);
}

/** The job log that a workbook is; undefined for any other. A table's name alone can be the shop's own: the named cells are the log's mark. */
export function ownLogOf(state: WorkbookState): OwnLog | undefined {
  const version = namedValue(state, "logVersion");
  const unit = namedValue(state, "unitSystem");
  const system = unitSystems.find((one) => one === unit);
  return typeof version === "number" && system !== undefined ? { version, system } : undefined;
}
