/** A made-up log of a version 0: today's without some of its sheets, tables, columns, named cells and charts. */
import { releasedShapeOf, shapeOf } from "../../../../scripts/log/log-shape.ts";
import type { Value } from "../../../../src/joblog/formula/expression.ts";
import type { TableId } from "../../../../src/joblog/formula/log-types.ts";
import { jobLog } from "../../../../src/joblog/job-log.ts";
import type {
  ColumnDefinition,
  FieldDefinition,
  LogContent,
  LogDefinition,
  ReleasedShape,
  TableDefinition,
} from "../../../../src/joblog/model/definition.ts";

/** What the made-up version did not have yet. */
export interface Later {
  readonly sheets: readonly string[];
  readonly tables: readonly TableId[];
  readonly columns: Readonly<Partial<Record<TableId, readonly string[]>>>;
  readonly fields: readonly string[];
  readonly charts: readonly string[];
}

const laterColumns: Later["columns"] = {
  tanks: ["dragOut"],
  concentrates: ["lot", "sdsOnFile"],
  baths: [
    "dropAllowed",
    "dropUsed",
    "baselineAsRead",
    "loads",
    "degassed",
    "foilTest",
    "drained",
    "hardnessNow",
    "bicarbonateBrought",
    "ratioFirst",
    "ratioLast",
    "ageSignal",
  ],
  readings: [
    "phCorrected",
    "verdictAsRead",
    "flag",
    "alkalinityRatio",
    "checkRow",
    "checkBefore",
    "checkAfter",
    "errorBefore",
    "errorAfter",
    "countedBelowAsRead",
  ],
  additions: [
    "levelBefore",
    "levelAfter",
    "evaporated",
    "carriedOut",
    "concentrateDue",
    "waterBefore",
    "levelLoss",
    "dragOut",
    "loadsSince",
    "drainedSince",
    "strength",
  ],
  shares: ["unitsUsed", "check", "entered", "firstLoad", "lastLoad", "separation"],
};

const laterSheets = ["loads", "items", "meter", "care", "stock", "monthEnd", "release", "statement", "whatIf", "notes"];

/** Lacks something of every kind, on sheets that it has and by whole sheets. */
export const muchLater: Later = {
  sheets: laterSheets,
  tables: ["people", "ledger", "keepOutWords"],
  columns: laterColumns,
  fields: ["topUpLimit", "costToShop", "costNotPlaced", "loadAstray", "meterCheckDays", "permit"],
  charts: ["Bathsheet.Shares"],
};

/** Lacks nothing that a shape would have to tell from a loss: sheets and columns alone. */
export const sheetsAndColumnsLater: Later = {
  sheets: laterSheets,
  tables: [],
  columns: laterColumns,
  fields: [],
  charts: [],
};

/** A formula that reads what was not there yet gave nothing then: a table that is not there fails by TypeError, a column by RangeError. */
function ofThen<Names extends readonly unknown[]>(formula: (...names: Names) => Value): (...names: Names) => Value {
  return (...names) => {
    try {
      return formula(...names);
    } catch (error) {
      if (error instanceof RangeError || error instanceof TypeError) return "";
      throw error;
    }
  };
}

function columnOfThen(column: ColumnDefinition): ColumnDefinition {
  return column.role === "computed" ? { ...column, formula: ofThen(column.formula) } : column;
}

function fieldOfThen(field: FieldDefinition): FieldDefinition {
  return field.formula === undefined ? field : { ...field, formula: ofThen(field.formula) };
}

function tableOfThen(table: TableDefinition, { columns }: Later): TableDefinition {
  const gone = columns[table.id] ?? [];
  return {
    ...table,
    columns: table.columns.filter(({ id }) => !gone.includes(id)).map(columnOfThen),
    signals: (table.signals ?? []).filter(({ column }) => !gone.includes(column)),
  };
}

/** Today's log as it was before `later` came. */
export function earlierLog(later: Later): LogDefinition {
  const sheets = jobLog.sheets
    .filter(({ id }) => !later.sheets.includes(id))
    .map((sheet) => ({
      ...sheet,
      fields: sheet.fields.filter(({ id }) => !later.fields.includes(id)).map(fieldOfThen),
      tables: sheet.tables.filter(({ id }) => !later.tables.includes(id)).map((table) => tableOfThen(table, later)),
      charts: (sheet.charts ?? []).filter(({ id }) => !later.charts.includes(id)),
    }));
  return { version: 0, released: {}, sheets };
}

/** What an upgrade would know of it. */
export function shapeOfThen(log: LogDefinition): ReleasedShape {
  return releasedShapeOf(shapeOf(log, true));
}

/** The same content without what a log has no column or field for. */
export function contentOfThen(log: LogDefinition, content: LogContent): LogContent {
  const columns = new Map(
    log.sheets
      .flatMap((sheet) => sheet.tables)
      .map((table) => [table.id as string, new Set(table.columns.map(({ id }) => id))]),
  );
  const fields = new Set(log.sheets.flatMap((sheet) => sheet.fields).map(({ id }) => id));
  const rows = Object.entries(content.rows).flatMap(([table, all]) => {
    const known = columns.get(table);
    return known === undefined
      ? []
      : [[table, all.map((row) => Object.fromEntries(Object.entries(row).filter(([id]) => known.has(id))))] as const];
  });
  return {
    fields: Object.fromEntries(Object.entries(content.fields).filter(([id]) => fields.has(id))),
    rows: Object.fromEntries(rows),
  };
}
