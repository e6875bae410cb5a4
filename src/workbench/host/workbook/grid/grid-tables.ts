import type { OSpreadsheet } from "../../library.ts";

/** What the grid's own handling of tables does that is private to it by its types. */
interface TablesOfTheGrid {
  dispatch: (type: string, payload?: { readonly target?: readonly unknown[] }) => unknown;
  isPivotFormula: (content: string, sheetId: string) => boolean;
}

const prepared = new WeakSet<object>();

function isUnmergingNothing(type: string, target: readonly unknown[] | undefined): boolean {
  return type === "REMOVE_MERGE" && target?.length === 0;
}

/**
 * Spares the grid two needless works at every table write. A table that is resized has the merged cells under it
 * taken apart, and that command has every formula of the workbook calculated anew, also where nothing is merged. And a
 * formula is compiled once for each table of its sheet to see whether it is a pivot table's. Safe to repeat.
 */
export function spareNeedlessTableWork(library: OSpreadsheet): void {
  const plugins = library.registries.corePluginRegistry;
  const Tables = plugins.get("tables");
  if (prepared.has(Tables)) return;
  class SparingTables extends Tables {
    constructor(config: ConstructorParameters<typeof Tables>[0]) {
      super(config);
      const tables = this as unknown as TablesOfTheGrid;
      const { dispatch } = tables;
      const isPivotFormula = tables.isPivotFormula.bind(this);
      tables.dispatch = (type, payload) =>
        isUnmergingNothing(type, payload?.target) ? library.DispatchResult.Success : dispatch(type, payload);
      tables.isPivotFormula = (content, sheetId) => /pivot/i.test(content) && isPivotFormula(content, sheetId);
    }
  }
  prepared.add(SparingTables);
  plugins.replace("tables", SparingTables);
}
