import type { Cells, LogDefinition } from "../../joblog/model/definition.ts";
import { findField } from "../../joblog/model/references.ts";
import { cellValue } from "../cell-text.ts";
import { systemOf } from "../table-columns.ts";
import { cellsOfRow, loadAppendTarget, refuseIfReadOnly } from "./append-target.ts";
import { type AnyChange, loadChanges, planChanges } from "./cell-changes.ts";
import { type CellLeft, clearLeftovers, type TableLeft } from "./clear-leftovers.ts";
import type { LogEdit } from "./log-edit.ts";
import { type PlannedTable, planTable } from "./plan-rows.ts";
import type { FilledCells, Receipt, WrittenRow } from "./receipt.ts";
import { rowPlaces } from "./row-places.ts";
import { type CellWrite, type Planner, type WritePlan, writeSurely } from "./sure-write.ts";

function cellWrites({ target, lines, fills }: PlannedTable): readonly CellWrite[] {
  const { table, body } = target;
  return [
    ...fills.map(({ position, at, value }) => ({
      range: () => cellsOfRow(table, position, at, 1),
      write: (range: Excel.Range) => {
        range.values = [[cellValue(value)]];
      },
    })),
    ...lines.map(({ position, line }) => ({
      range: () => cellsOfRow(table, position, 0, body.columnCount),
      write: (range: Excel.Range) => {
        range.formulas = [[...line]];
      },
    })),
  ];
}

function filledCells({ target, fills }: PlannedTable): readonly FilledCells[] {
  const table = target.definition.id;
  const byPosition = new Map<number, FilledCells>();
  for (const { position, key, column, value } of fills) {
    const cells: Cells = {
      ...byPosition.get(position)?.cells,
      [column]: value,
    };
    byPosition.set(position, { table, position, key, cells });
  }
  return [...byPosition.values()];
}

function receiptFor(planned: readonly PlannedTable[], changes: readonly AnyChange[]): Receipt {
  return {
    rows: planned.flatMap(({ target, lines }) =>
      lines.map(({ position, row }): WrittenRow => ({
        table: target.definition.id,
        position,
        cells: row,
        grown: position >= target.body.rowCount,
      })),
    ),
    fills: planned.flatMap(filledCells),
    changes,
  };
}

/** Typed cells alone: what a failed batch left of formulas is what their columns hold anyway. */
function leftIn({ target, extra, lines, fills, positions }: PlannedTable): TableLeft {
  const { id, name } = target.definition;
  const inLines = lines.flatMap(({ position, row }) =>
    [...positions].flatMap(([column, at]): readonly CellLeft[] => {
      const value = column.role === "input" ? row[column.id] : undefined;
      return value === undefined ? [] : [{ position, at, was: undefined, written: value }];
    }),
  );
  const filled = fills.map(({ position, at, value }) => ({ position, at, was: undefined, written: value }));
  return { id, name, cells: [...inLines, ...filled], rowCount: target.body.rowCount, extra };
}

interface EditPlan extends WritePlan {
  readonly planned: readonly PlannedTable[];
}

/** Asks for all that an edit touches; the plan stands once that has come. */
function editPlanner(
  log: LogDefinition,
  { rows = [], fills = [], changes = [], fields = {}, idsAsGiven = false }: LogEdit,
): Planner<EditPlan> {
  const places = rowPlaces<AnyChange>();
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
    return () => {
      refuseIfReadOnly(context.workbook);
      const system = systemOf(unitCell.values[0]?.[0]);
      const changed = planChanges(loaded, log, system, places);
      const planned = targets.map((target) => planTable(target, log, system, idsAsGiven));
      const tables = planned.map(({ target, lines, fills: filled }) => {
        const { definition, body, headers } = target;
        return [definition.id, body.rowCount, body.columnCount, headers.values, lines, filled];
      });
      return {
        planned,
        signature: JSON.stringify([tables, changed.map(({ signature }) => signature)]),
        sizes: planned
          .filter(({ extra }) => extra > 0)
          .map(({ target: { table, body }, extra }) => ({ table, extra, wanted: body.rowCount + extra })),
        cells: [...planned.flatMap(cellWrites), ...changed],
      };
    };
  };
}

/**
 * Writes an edit to one or more tables: one read trip, one write trip as a rule. What is read grows with the log by
 * the keys of its rows alone, and by the columns that a fill looks at. Everything that can be checked is checked before
 * the first cell is written, and again in the batch that writes. A row goes beneath
 * the last one that holds something typed; calculated columns get their formulas. Nothing that is
 * written already is overwritten but the cells of `changes`; of these the receipt speaks of rows, not of named cells.
 */
export async function writeEdit(context: Excel.RequestContext, log: LogDefinition, edit: LogEdit): Promise<Receipt> {
  const { planned } = await writeSurely(context, editPlanner(log, edit), (fresh, plan) =>
    clearLeftovers(fresh, plan.planned.map(leftIn)),
  );
  return receiptFor(planned, edit.changes ?? []);
}
