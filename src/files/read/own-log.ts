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

/** The cells of a workbook as far as names lead to them. */
export interface NamedCells {
  readonly names: readonly { readonly name: string; readonly refersTo: string }[];
  readonly valueAt: (sheet: string | undefined, row: number, column: number) => StateValue | undefined;
}

/** What is typed in the one cell that a name stands for. */
function namedValue({ names, valueAt }: NamedCells, field: string): StateValue | undefined {
  const { name } = findField(jobLog, field);
  const found = names.find((one) => one.name.toLowerCase() === name.toLowerCase());
  if (found === undefined) return undefined;
  const { sheet, local } = splitSheet(found.refersTo);
  const area = readArea(local);
  return area === undefined ? undefined : valueAt(sheet, area.row, area.column);
}

/** The job log that these cells are of; undefined for any other. A table's name alone can be the shop's own: the named cells are the log's mark. */
export function ownLogIn(cells: NamedCells): OwnLog | undefined {
  const version = namedValue(cells, "logVersion");
  const unit = namedValue(cells, "unitSystem");
  const system = unitSystems.find((one) => one === unit);
  return typeof version === "number" && system !== undefined ? { version, system } : undefined;
}

/** The job log that a workbook is. */
export function ownLogOf(state: WorkbookState): OwnLog | undefined {
  return ownLogIn({
    names: state.book.names,
    valueAt: (sheet, row, column) =>
      typedAt(
        state.sheets.find((one) => one.name === sheet),
        row,
        column,
      ),
  });
}
