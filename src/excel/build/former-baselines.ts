/** Baselines of a log from before they were written down: there a formula worked them out, and its value is what somebody would have written. */
import type { RowValue } from "../../joblog/model/definition.ts";
import type { TablePlan, WorkbookPlan } from "../../joblog/model/plan.ts";
import { cellText } from "../cell-text.ts";
import type { FormerColumn } from "./former-columns.ts";
import type { LogGaps } from "./log-gaps.ts";
import type { Survey, SurveyedTable } from "./survey-workbook.ts";

/** Columns of Baths that held the formulas. */
const computedThen = ["baseline", "baselineTemperature", "baselineAsRead"] as const;

type ComputedThen = (typeof computedThen)[number];

/** Columns that a baseline fills now. */
type Filled = ComputedThen | "baselineSetAt" | "baselineSetBy" | "baselineFrom";

type Line = Readonly<Partial<Record<Filled, RowValue>>>;

export interface FormerBaselines {
  /** As they stood, to bring them back. */
  readonly former: readonly FormerColumn[];
  /** Cells to write, by heading; one a row. */
  readonly columns: readonly { readonly header: string; readonly values: readonly RowValue[] }[];
}

interface Found {
  readonly plan: TablePlan;
  readonly found: SurveyedTable;
}

function tableNamed(id: string, plan: WorkbookPlan, survey: Survey): Found | undefined {
  const table = plan.sheets.flatMap(({ tables }) => tables).find((one) => one.id === id);
  const found = survey.tables.find(({ name }) => name === table?.name);
  return table === undefined || found === undefined ? undefined : { plan: table, found };
}

const headerOf = ({ plan }: Found, id: string): string => plan.columns.find((column) => column.id === id)?.header ?? "";

/** The cells of a column that the workbook has, as formulas and as what they show. */
function loadColumn(context: Excel.RequestContext, table: Found, id: string): Excel.Range | undefined {
  const header = headerOf(table, id);
  if (!table.found.headers.includes(header)) return undefined;
  const { columns } = context.workbook.tables.getItem(table.found.name);
  return columns.getItem(header).getDataBodyRange().load("values,formulas");
}

const cellsOf = (range: Excel.Range | undefined, of: "values" | "formulas"): readonly unknown[] =>
  (range?.[of] ?? []).map(([cell]): unknown => cell);

/** The readings that counted for each bath, by its name: their ids, and when the last of them was read. */
function countedBy(columns: Readonly<Record<"id" | "bath" | "when" | "counted", readonly unknown[]>>) {
  const counted = new Map<string, { readonly ids: readonly string[]; readonly last: number }>();
  for (const [index, bath] of columns.bath.entries()) {
    if (columns.counted[index] !== 1) continue;
    const { ids = [], last = 0 } = counted.get(String(bath)) ?? {};
    const when = Number(columns.when[index]);
    counted.set(String(bath), { ids: [...ids, String(columns.id[index])], last: Math.max(last, when) });
  }
  return counted;
}

/** Undefined for a log that has its baselines written down, and for one that has none. */
export async function readFormerBaselines(
  context: Excel.RequestContext,
  plan: WorkbookPlan,
  survey: Survey,
  { narrow }: LogGaps,
): Promise<FormerBaselines | undefined> {
  const lacks = narrow.find((table) => table.plan.id === "baths")?.missing ?? [];
  const [baths, readings] = [tableNamed("baths", plan, survey), tableNamed("readings", plan, survey)];
  if (baths === undefined || readings === undefined || !lacks.some(({ id }) => id === "baselineSetAt"))
    return undefined;
  const names = loadColumn(context, baths, "bath");
  const then = computedThen.map((id) => ({ id, header: headerOf(baths, id), range: loadColumn(context, baths, id) }));
  const [id, bath, when, counted] = ["id", "bath", "when", "counted"].map((one) => loadColumn(context, readings, one));
  await context.sync();
  const byBath = countedBy({
    id: cellsOf(id, "values"),
    bath: cellsOf(bath, "values"),
    when: cellsOf(when, "values"),
    counted: cellsOf(counted, "values"),
  });
  const held = new Map(
    then.map(({ id: column, range }) => [
      column,
      { formulas: cellsOf(range, "formulas"), values: cellsOf(range, "values") },
    ]),
  );
  const isFormula = (column: ComputedThen, row: number): boolean =>
    String(held.get(column)?.formulas[row]).startsWith("=");
  const rows = cellsOf(names, "values");
  // Where nobody's formula stands, the log only lost a column: what was typed is left alone.
  if (!rows.some((_, row) => isFormula("baseline", row))) return undefined;
  const lines = rows.map((name, row): Line => {
    const kept = (column: ComputedThen): RowValue => {
      const value = held.get(column)?.values[row];
      if (typeof value === "number") return value;
      return typeof value !== "string" || isFormula(column, row) ? "" : cellText(value);
    };
    const { ids = [], last } = byBath.get(String(name)) ?? {};
    const written =
      isFormula("baseline", row) && typeof kept("baseline") === "number"
        ? { baselineSetAt: last ?? "", baselineSetBy: "the log", baselineFrom: ids.join(", ") }
        : {};
    return { ...Object.fromEntries(computedThen.map((column) => [column, kept(column)])), ...written };
  });
  const missing = (["baselineSetAt", "baselineSetBy", "baselineFrom"] as const).filter((column) =>
    lacks.some((one) => one.id === column),
  );
  const filled: readonly Filled[] = [...computedThen, ...missing];
  return {
    former: then.flatMap(({ header, range }) =>
      range === undefined
        ? []
        : [{ table: baths.found.name, header, cells: cellsOf(range, "formulas"), keys: cellsOf(names, "values") }],
    ),
    columns: filled.map((column) => ({
      header: headerOf(baths, column),
      values: lines.map((line) => line[column] ?? ""),
    })),
  };
}

/** Writes them into the columns, which the table has by now. */
export function writeBaselines(context: Excel.RequestContext, plan: WorkbookPlan, { columns }: FormerBaselines): void {
  const table = plan.sheets.flatMap(({ tables }) => tables).find(({ id }) => id === "baths");
  if (table === undefined) return;
  for (const { header, values } of columns)
    context.workbook.tables.getItem(table.name).columns.getItem(header).getDataBodyRange().values = values.map(
      (value) => [value],
    );
}
