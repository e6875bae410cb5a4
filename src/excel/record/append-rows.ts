import type { LogDefinition } from "../../joblog/model/definition.ts";
import { findField } from "../../joblog/model/references.ts";
import { systemOf } from "../table-columns.ts";
import { loadAppendTarget, refuseIfReadOnly } from "./append-target.ts";
import { type AnyChange, loadChanges, planChanges } from "./cell-changes.ts";
import type { LogEdit } from "./log-edit.ts";
import { type PlannedTable, planTable } from "./plan-rows.ts";
import type { WritePlan } from "./planned-write.ts";
import type { Receipt } from "./receipt.ts";
import { rowPlaces } from "./row-places.ts";
import { loadSettling, planSettling, type SettledRow } from "./settled-cells.ts";
import { type Planner, writeSurely } from "./sure-write.ts";

interface EditPlan extends WritePlan {
  readonly tables: readonly PlannedTable[];
}

/** Asks for all that an edit touches; the plan stands once that has come. */
function editPlanner(
  log: LogDefinition,
  { rows = [], fills = [], changes = [], fields = {}, settling, idsAsGiven = false }: LogEdit,
): Planner<EditPlan> {
  const places = rowPlaces<AnyChange>();
  const settledPlaces = rowPlaces<SettledRow>();
  return (context) => {
    const unitCell = context.workbook.names.getItem(findField(log, "unitSystem").name).getRange().load("values");
    context.workbook.load("readOnly");
    const targets = [...new Set([...rows, ...fills].map(({ table }) => table))].map((table) =>
      loadAppendTarget(
        context,
        log,
        table,
        rows.filter((one) => one.table === table).map(({ row }) => row),
        fills.filter((one) => one.table === table),
      ),
    );
    const loaded = loadChanges(context, log, { fields, rows: changes }, places);
    const toSettle = settling === undefined ? [] : loadSettling(context, log, settling, settledPlaces);
    return () => {
      refuseIfReadOnly(context.workbook);
      const system = systemOf(unitCell.values[0]?.[0]);
      const changed = planChanges(loaded, system, places);
      const settled = planSettling(toSettle, log, system, settledPlaces, settling?.become ?? "value");
      const tables = targets.map((target) => planTable(target, log, system, idsAsGiven));
      return {
        tables,
        sizes: tables.flatMap(({ sizes }) => sizes),
        writes: [...tables.flatMap(({ writes }) => writes), ...changed, ...settled],
        copies: tables.flatMap(({ copies }) => copies),
      };
    };
  };
}

/**
 * Writes an edit to one or more tables: one read trip, one write trip; more only where Excel did not grow a table as
 * told, left its new rows without rules and looks, or somebody else wrote as well. What is read grows with the log by
 * the keys of its rows alone, and by the columns that a fill looks at. Everything that can be checked is checked before
 * the first cell is written, and again in the batch that writes. A row goes beneath the last one that holds something
 * typed; calculated columns get their formulas. Nothing that is written already is overwritten but the cells of
 * `changes`, and computed cells of `settling`; of the former the receipt speaks of rows, not of named cells, of the
 * latter not at all.
 */
export async function writeEdit(context: Excel.RequestContext, log: LogDefinition, edit: LogEdit): Promise<Receipt> {
  const { tables } = await writeSurely(context, editPlanner(log, edit));
  return {
    rows: tables.flatMap(({ rows }) => rows),
    fills: tables.flatMap(({ fills }) => fills),
    changes: edit.changes ?? [],
  };
}
