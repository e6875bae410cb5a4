import type { OSpreadsheet } from "../library.ts";
import { batchCommand } from "./grid/batch-command.ts";
import type { Grid } from "./grid/grid.ts";

/** Tells of everything that changes the workbook, by whomever; what only changes the view is none of it. */
export class Edits {
  private readonly listeners = new Set<() => void>();

  constructor(library: OSpreadsheet, { model }: Grid) {
    const edits = new Set<string>([...library.coreTypes, batchCommand, "UNDO", "REDO"]);
    model.on("command-dispatched", this, (command: object) => {
      if (edits.has((command as { readonly type: string }).type)) for (const listener of this.listeners) listener();
    });
  }

  onEdit(listener: () => void): () => void {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  }
}
