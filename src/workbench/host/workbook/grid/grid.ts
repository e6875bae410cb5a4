import type { Area, Cell } from "../../address.ts";
import type { CellPosition, DispatchResult, Model, Style, Zone } from "../../library.ts";
import { batchCommand, type BatchSlot } from "./batch-command.ts";

/** Refusals that change nothing because nothing had to change. */
const harmless = ["NoChanges", "ValuesNotChanged", "UnchangedSheetName"];

/** A command of the grid that was refused; `reasons` are the grid's own words. */
export class GridRefusal extends Error {
  readonly reasons: readonly string[];

  constructor(command: string, reasons: readonly string[]) {
    super(`The grid refused ${command}: ${reasons.join(", ")}`);
    this.reasons = reasons;
  }
}

export function zoneOf(area: Omit<Area, "sheet">): Zone {
  return { top: area.row, left: area.column, bottom: area.row + area.rows - 1, right: area.column + area.columns - 1 };
}

export function areaOf(sheet: string, zone: Zone): Area {
  return {
    sheet,
    row: zone.top,
    column: zone.left,
    rows: zone.bottom - zone.top + 1,
    columns: zone.right - zone.left + 1,
  };
}

export function positionOf({ sheet, row, column }: Cell): CellPosition {
  return { sheetId: sheet, row, col: column };
}

interface PendingLook {
  readonly area: Area;
  readonly style: Style;
}

/** The part of the grid's session that its types keep private. */
interface SessionOfTheGrid {
  readonly commandSquisher: Record<"squish" | "unsquish", (commands: readonly object[]) => readonly object[]>;
}

/** The grid packs what was done for other people's screens and unpacks it again, also where there is nobody else. */
function sendUnpacked(model: Model): void {
  const { session } = model as unknown as { readonly session: SessionOfTheGrid };
  const same = (commands: readonly object[]): readonly object[] => commands;
  Object.assign(session.commandSquisher, { squish: same, unsquish: same });
}

/** Thin layer over the grid's model: batches, refusals as exceptions, room for every write. */
export class Grid {
  readonly model: Model;
  private readonly slot: BatchSlot;
  private inBatch = false;
  private looks: PendingLook[] = [];

  constructor(model: Model, slot: BatchSlot) {
    this.model = model;
    this.slot = slot;
    sendUnpacked(model);
  }

  /** Runs `work` inside one command; what it throws is thrown after the command is complete. */
  batch(work: () => void): void {
    if (this.inBatch) {
      work();
      return;
    }
    let failure: { readonly error: unknown } | undefined;
    this.slot.work = () => {
      try {
        work();
      } catch (error) {
        failure = { error };
      }
      this.flushLooks();
    };
    this.inBatch = true;
    try {
      const { reasons } = this.dispatch(batchCommand);
      if (reasons.length > 0) throw new GridRefusal(batchCommand, reasons);
    } finally {
      this.inBatch = false;
      this.slot.work = undefined;
    }
    if (failure !== undefined) throw failure.error;
  }

  /** Dispatches one command of the grid; throws a GridRefusal unless it was done or needless. */
  readonly do: Model["dispatch"] = (type: string, payload?: object) => {
    const result = this.dispatch(type, payload);
    const reasons = result.reasons.filter((reason) => !harmless.includes(reason));
    if (reasons.length > 0) throw new GridRefusal(type, reasons);
    return result;
  };

  /** The library's types know its own commands only, and one at a time. */
  private dispatch(type: string, payload?: object): DispatchResult {
    const dispatch: unknown = this.model.dispatch;
    return (dispatch as (type: string, payload?: object) => DispatchResult)(type, payload);
  }

  /** Gives a look to an area; looks of one area are collected and applied together at the end of the batch. */
  look(area: Area, style: Style): void {
    const last = this.looks.at(-1);
    if (last !== undefined && sameArea(last.area, area))
      this.looks[this.looks.length - 1] = { area, style: { ...last.style, ...style } };
    else this.looks.push({ area, style });
    if (!this.inBatch) this.batch(() => undefined);
  }

  private flushLooks(): void {
    const looks = this.looks;
    this.looks = [];
    for (const { area, style } of looks) {
      this.makeRoom(area);
      this.do("SET_FORMATTING", { sheetId: area.sheet, target: [zoneOf(area)], style });
    }
  }

  /** Adds rows and columns so that the area exists; a margin spares adding one at a time. */
  makeRoom(area: Area): void {
    const sheetName = this.model.getters.getSheetName(area.sheet);
    const grow = (dimension: "ROW" | "COL", has: number, needs: number, margin: number): void => {
      if (needs <= has) return;
      this.do("ADD_COLUMNS_ROWS", {
        sheetId: area.sheet,
        sheetName,
        dimension,
        base: has - 1,
        quantity: needs - has + margin,
        position: "after",
      });
    };
    grow("ROW", this.model.getters.getNumberRows(area.sheet), area.row + area.rows, 50);
    grow("COL", this.model.getters.getNumberCols(area.sheet), area.column + area.columns, 4);
  }

  sizeOf(sheet: string): { readonly rows: number; readonly columns: number } {
    return { rows: this.model.getters.getNumberRows(sheet), columns: this.model.getters.getNumberCols(sheet) };
  }

  /** The part of the area that the grid holds, or undefined. */
  clip(area: Area): Area | undefined {
    const size = this.sizeOf(area.sheet);
    const rows = Math.min(area.rows, size.rows - area.row);
    const columns = Math.min(area.columns, size.columns - area.column);
    return rows > 0 && columns > 0 ? { ...area, rows, columns } : undefined;
  }
}

function sameArea(a: Area, b: Area): boolean {
  return (
    a.sheet === b.sheet && a.row === b.row && a.column === b.column && a.rows === b.rows && a.columns === b.columns
  );
}
