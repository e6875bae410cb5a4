import { ExcelError } from "../../excel-error.ts";
import type { Workbook } from "../../workbook/workbook.ts";

/**
 * One step of a batch. "look" finds things, "change" writes, "read" needs calculated values, "switch"
 * changes how the following steps are treated.
 */
export interface Step {
  readonly kind: "look" | "change" | "read" | "switch";
  /** Member that asked for it, as in `Range.values`. */
  readonly location: string;
  readonly run: () => void;
}

/** What has gone between the add-in and the workbook: trips that carried something, and cells by direction. */
export interface Traffic {
  trips: number;
  cellsRead: number;
  cellsWritten: number;
  /** Bytes of the largest request, by estimate. */
  largestOut: number;
}

/** What all request contexts of one host share. */
export class Session {
  workbook: Workbook;
  readonly traffic: Traffic = { trips: 0, cellsRead: 0, cellsWritten: 0, largestOut: 0 };
  eventsEnabled = true;
  /** True while a person edits a cell in the grid; batches are refused then, as in Excel. */
  isCellBeingEdited: () => boolean = () => false;

  /** Asked before each batch that carries something; tests let Excel refuse one so. */
  refusal: () => ExcelError | undefined = () => undefined;

  /** What becomes of a workbook that the add-in opens beside this one; a page offers it for download. */
  openNew: (file: Uint8Array) => void = () => undefined;

  private readonly evaluateIfDue: () => void;

  /** `evaluateIfDue` brings cells up to date whose functions were associated since they were calculated. */
  constructor(workbook: Workbook, evaluateIfDue: () => void) {
    this.workbook = workbook;
    this.evaluateIfDue = evaluateIfDue;
  }

  /** Performs the steps in order; the first failure ends them. */
  execute(steps: readonly Step[]): void {
    this.evaluateIfDue();
    let at = 0;
    while (at < steps.length) {
      const run = segment(steps, at);
      at += run.length;
      const changes = run.some(({ kind }) => kind === "change");
      if (changes) this.change(run);
      else perform(run);
    }
  }

  private change(run: readonly Step[]): void {
    const { workbook } = this;
    workbook.changes.byProgram(this.eventsEnabled, () => {
      workbook.perform(() => {
        perform(run);
      });
      workbook.chartScale.update();
    });
  }

  requireNoCellEdit(): void {
    if (!this.isCellBeingEdited()) return;
    throw new ExcelError(
      "InvalidOperationInCellEditMode",
      "Excel is in cell-editing mode. Please exit the edit mode by pressing ENTER or TAB or selecting another cell, and then try again.",
    );
  }
}

/** Steps from `start` that go together: changes with the looks among them, or else one single step. */
function segment(steps: readonly Step[], start: number): readonly Step[] {
  if (steps[start]?.kind !== "change") return steps.slice(start, start + 1);
  let end = start;
  while (end < steps.length && (steps[end]?.kind === "change" || steps[end]?.kind === "look")) end += 1;
  return steps.slice(start, end);
}

function perform(steps: readonly Step[]): void {
  for (const step of steps) {
    try {
      step.run();
    } catch (error) {
      if (error instanceof ExcelError && error.debugInfo.errorLocation === "")
        error.debugInfo.errorLocation = step.location;
      throw error;
    }
  }
}
