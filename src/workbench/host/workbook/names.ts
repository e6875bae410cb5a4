import type { NameState } from "../../../state/workbook-state.ts";
import type { Area } from "../address.ts";
import { ExcelError, invalidArgument, itemNotFound } from "../excel-error.ts";
import { areaOf, type Grid, zoneOf } from "./grid/grid.ts";

/** Defined names over the grid's named ranges; comments are kept beside them. */
export class Names {
  private readonly grid: Grid;
  readonly comments = new Map<string, string>();
  /** Names that stand for no cells, or count in one sheet only: the grid knows none, so they are only handed on. */
  beyondGrid: readonly NameState[] = [];

  constructor(grid: Grid) {
    this.grid = grid;
  }

  list(): readonly string[] {
    return this.grid.model.getters.getNamedRanges().map(({ name }) => name);
  }

  /** The cells that a name stands for, or undefined where there is no such name. */
  find(name: string): Area | undefined {
    const found = this.grid.model.getters.getNamedRange(name);
    return found === undefined ? undefined : areaOf(found.range.sheetId, found.range.zone);
  }

  /** The name as it was defined, found without regard to case. */
  spelling(name: string): string | undefined {
    return this.grid.model.getters.getNamedRange(name)?.name;
  }

  add(name: string, area: Area): void {
    if (this.find(name) !== undefined)
      throw new ExcelError("ItemAlreadyExists", `A resource with the same name already exists: ${name}.`);
    this.grid.makeRoom(area);
    const range = this.grid.model.getters.getRangeDataFromZone(area.sheet, zoneOf(area));
    if (!this.grid.model.canDispatch("CREATE_NAMED_RANGE", { name, ranges: [range] }).isSuccessful)
      throw invalidArgument(`"${name}" cannot be a name.`);
    this.grid.do("CREATE_NAMED_RANGE", { name, ranges: [range] });
  }

  remove(name: string): void {
    if (this.find(name) === undefined) throw itemNotFound(`There is no name ${name}.`);
    this.grid.do("DELETE_NAMED_RANGE", { name });
    this.comments.delete(name.toLowerCase());
  }
}
