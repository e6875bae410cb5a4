import type { StateValue, WorkbookState } from "../../state/workbook-state.ts";

/** Something that the file holds and the workbench leaves out or holds otherwise; `sheet` where it is on one. */
export interface Loss {
  readonly what: string;
  readonly sheet?: string;
}

export interface ReadWorkbook {
  readonly state: WorkbookState;
  /** What the file gives beside formulas, by sheet id in the order of its formula cells; null for none. */
  readonly values: Readonly<Record<string, readonly (StateValue | null)[]>>;
  readonly losses: readonly Loss[];
  /** What was changed to make it fit, in sentences. */
  readonly changes: readonly string[];
  /** Whether the file is Excel's own; other programs leave things out of what they save. */
  readonly isByExcel: boolean;
}

/** Collects what is left out, each once. */
export class Losses {
  private readonly found = new Map<string, Loss>();

  add(what: string, sheet?: string): void {
    this.found.set(`${sheet ?? ""}\n${what}`, sheet === undefined ? { what } : { what, sheet });
  }

  list(): readonly Loss[] {
    return [...this.found.values()];
  }
}
