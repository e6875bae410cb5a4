import type { UnitSystem } from "../../../../src/core/units/unit-system.ts";
import { layOut } from "../../../../src/joblog/layout/lay-out.ts";
import type { LogDefinition } from "../../../../src/joblog/model/definition.ts";
import type { WorkbookPlan } from "../../../../src/joblog/model/plan.ts";

/** A table's column or a named cell, as a formula names it. */
export interface Mention {
  readonly table: string;
  readonly area: string;
  readonly header: string;
}

const structured = /(\w+)\[\[(#[A-Z][A-Za-z ]+)\],\[((?:'.|[^\]'])*)\](?::\[((?:'.|[^\]'])*)\])?\]/g;

/** Every structured reference of a formula; `'` before a special character of the header is taken off. */
export function mentionsIn(formula: string): readonly Mention[] {
  return [...formula.matchAll(structured)].flatMap(([, table = "", area = "", from = "", to = from]) =>
    [...new Set([from, to])].map((header) => ({ table, area, header: header.replaceAll(/'(['#[\]])/g, "$1") })),
  );
}

/** The formula without texts and structured references: function names, names and operators are left. */
export function bareCode(formula: string): string {
  return formula.replaceAll(/"(?:[^"]|"")*"/g, '""').replaceAll(structured, "ref");
}

/** Names of the functions that a formula calls. */
export function callsIn(formula: string): readonly string[] {
  return [...bareCode(formula).matchAll(/([A-Z][A-Z0-9.]*)\(/g)].map(([, name = ""]) => name);
}

/** Every formula of a plan with a word on where it stands. */
export function formulasOf(plan: WorkbookPlan): readonly { readonly place: string; readonly formula: string }[] {
  return plan.sheets.flatMap((sheet) =>
    sheet.cells.flatMap((cell) =>
      cell.kind === "formula"
        ? [{ place: `${sheet.name} ${String(cell.row)},${String(cell.column)}`, formula: cell.formula }]
        : [],
    ),
  );
}

/** Every formula by "Table[Header]" of its computed column or by the name of its computed field. */
export function formulasByCell(plan: WorkbookPlan): ReadonlyMap<string, string> {
  const ofColumns = plan.sheets.flatMap((sheet) =>
    sheet.tables.flatMap((table) =>
      table.columns.flatMap((column) =>
        column.formula === undefined ? [] : [[`${table.name}[${column.header}]`, column.formula] as const],
      ),
    ),
  );
  const ofFields = plan.names.flatMap((name) => {
    const cell = plan.sheets
      .find((sheet) => sheet.name === name.sheet)
      ?.cells.find((one) => one.row === name.row && one.column === name.column);
    return cell?.kind === "formula" ? [[name.name, cell.formula] as const] : [];
  });
  return new Map([...ofColumns, ...ofFields]);
}

/** The computed columns and named cells that each formula reads, by the names of `formulasByCell`. */
export function dependencies(plan: WorkbookPlan): ReadonlyMap<string, readonly string[]> {
  const names = plan.names.map((name) => name.name);
  return new Map(
    [...formulasByCell(plan)].map(([cell, formula]) => {
      const columns = mentionsIn(formula)
        .filter(({ area }) => area !== "#Headers")
        .map(({ table, header }) => `${table}[${header}]`);
      const words = new Set(bareCode(formula).match(/[A-Za-z]+\.[A-Za-z]+/g) ?? []);
      return [cell, [...columns, ...names.filter((name) => words.has(name))]] as const;
    }),
  );
}

/** The empty log in a system. */
export function emptyPlan(log: LogDefinition, system: UnitSystem): WorkbookPlan {
  return layOut(log, { system }, { fields: {}, rows: {} });
}
