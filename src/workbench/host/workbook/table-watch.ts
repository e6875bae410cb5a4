import { type Area, type Cell, contains } from "../address.ts";
import type { TableShape } from "../formulas/translate.ts";
import type { CoreTable } from "../library.ts";
import { areaOf, type Grid } from "./grid/grid.ts";
import type { TableChange, TableRecord } from "./table-record.ts";

function sameShape(a: TableShape, b: TableShape): boolean {
  return zoneKey(a.area) === zoneKey(b.area) && a.headers.join("\n") === b.headers.join("\n");
}

function zoneKey({ sheet, row, column, rows, columns }: Area): string {
  return [sheet, row, column, rows, columns].join("|");
}

/** Knows the grid's tables as Excel sees them, and what has become of them since it was last asked. */
export class TableWatch {
  protected readonly grid: Grid;
  private readonly headerText: (cell: Cell) => string;
  private readonly records = new Map<string, TableRecord>();
  private stale = true;
  protected changes: TableChange[] = [];

  constructor(grid: Grid, headerText: (cell: Cell) => string) {
    this.grid = grid;
    this.headerText = headerText;
  }

  /** Call whenever a table of the grid or a header may have changed. */
  markStale(): void {
    this.stale = true;
  }

  /** Call for every cell that gets contents: a header may be renamed, or the grid may have stretched a table over the cell. */
  noticeWrite({ sheet, row, column }: Cell): void {
    for (const core of this.grid.model.getters.getCoreTables(sheet)) {
      const { zone } = core.range;
      const known = this.records.get(`${sheet}|${core.id}`);
      const moved = known === undefined || zoneKey(known.area) !== zoneKey(areaOf(sheet, zone));
      if (moved || (row === zone.top && column >= zone.left && column <= zone.right)) this.stale = true;
    }
  }

  /** All tables in order of sheets, up to date. */
  list(): readonly TableRecord[] {
    if (this.stale) this.look();
    return [...this.records.values()];
  }

  named(name: string): TableRecord | undefined {
    return this.list().find((table) => table.name.toLowerCase() === name.toLowerCase());
  }

  at(cell: Cell): TableRecord | undefined {
    return this.list().find(({ area }) => contains(area, cell));
  }

  hasChanges(): boolean {
    this.list();
    return this.changes.length > 0;
  }

  /** The changes since the last call, oldest first. */
  takeChanges(): readonly TableChange[] {
    this.list();
    const changes = this.changes;
    this.changes = [];
    return changes;
  }

  private look(): void {
    this.stale = false;
    const { getters } = this.grid.model;
    const seen = new Set<string>();
    for (const sheet of getters.getSheetIds()) {
      for (const core of getters.getCoreTables(sheet)) {
        const key = `${sheet}|${core.id}`;
        seen.add(key);
        this.lookAt(key, sheet, core);
      }
    }
    for (const key of [...this.records.keys()]) if (!seen.has(key)) this.records.delete(key);
  }

  private lookAt(key: string, sheet: string, core: CoreTable): void {
    const area = areaOf(sheet, core.range.zone);
    const headers = Array.from({ length: area.columns }, (_, index) =>
      this.headerText({ sheet, row: area.row, column: area.column + index }),
    );
    const known = this.records.get(key);
    if (known === undefined) {
      const table: TableRecord = {
        key,
        name: this.freeName(),
        area,
        headers,
        style: "TableStyleMedium2",
        calculated: new Map(),
      };
      this.records.set(key, table);
      this.changes.push({ table, before: undefined });
      return;
    }
    const before: TableShape = { name: known.name, area: known.area, headers: known.headers };
    if (sameShape(before, { name: known.name, area, headers })) return;
    known.area = area;
    known.headers = headers;
    this.changes.push({ table: known, before });
  }

  private freeName(): string {
    const taken = new Set([...this.records.values()].map(({ name }) => name.toLowerCase()));
    let count = 1;
    while (taken.has(`table${count}`)) count += 1;
    return `Table${count}`;
  }
}
