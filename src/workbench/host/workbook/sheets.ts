import { ExcelError, invalidArgument } from "../excel-error.ts";
import type { Grid } from "./grid/grid.ts";

/** Microsoft's rule for sheet names. */
function requireSheetName(name: string): void {
  if (name === "" || name.length > 31 || /[\\/?*[\]:]/.test(name) || /^'|'$/.test(name))
    throw invalidArgument(`"${name}" cannot be a sheet's name.`);
}

/** The workbook's sheets by the grid's sheet ids. */
export class Sheets {
  private readonly grid: Grid;

  constructor(grid: Grid) {
    this.grid = grid;
  }

  ids(): readonly string[] {
    return this.grid.model.getters.getSheetIds();
  }

  nameOf(sheet: string): string {
    return this.grid.model.getters.getSheetName(sheet);
  }

  exists(sheet: string): boolean {
    return this.grid.model.getters.tryGetSheet(sheet) !== undefined;
  }

  /** Excel compares sheet names without regard to case. */
  named(name: string): string | undefined {
    return this.ids().find((sheet) => this.nameOf(sheet).toLowerCase() === name.toLowerCase());
  }

  add(name: string | undefined): string {
    const chosen = name ?? this.freeName();
    requireSheetName(chosen);
    if (this.named(chosen) !== undefined)
      throw new ExcelError("ItemAlreadyExists", `A resource with the same name already exists: sheet ${chosen}.`);
    const sheet = this.grid.model.uuidGenerator.smallUuid();
    this.grid.do("CREATE_SHEET", { sheetId: sheet, position: this.ids().length, name: chosen, rows: 100, cols: 26 });
    return sheet;
  }

  private freeName(): string {
    let count = this.ids().length + 1;
    while (this.named(`Sheet${count}`) !== undefined) count += 1;
    return `Sheet${count}`;
  }

  rename(sheet: string, name: string): void {
    const other = this.named(name);
    if (other === sheet && this.nameOf(sheet) === name) return;
    if (other !== undefined && other !== sheet)
      throw new ExcelError("ItemAlreadyExists", `A resource with the same name already exists: sheet ${name}.`);
    requireSheetName(name);
    this.grid.do("RENAME_SHEET", { sheetId: sheet, oldName: this.nameOf(sheet), newName: name });
  }
}
