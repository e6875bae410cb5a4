import type { App } from "@odoo/owl";

import { formulaFault } from "../host/formulas/formula-fault.ts";
import type { Model, OSpreadsheet } from "../host/library.ts";
import { keepReachable, replaceOnTyping } from "./grid-access.ts";
import type { GridNotices } from "./notices.ts";
import { type CellEditor, refuseFaultyFormulas } from "./refuse-formulas.ts";

/** The component library that the grid is drawn with, a script of its own. */
export type Owl = typeof import("@odoo/owl");

/** A mounted grid. */
export interface MountedGrid {
  /** True while a cell holds a cursor. */
  readonly isCellBeingEdited: () => boolean;
  /** Takes the grid off the page. */
  readonly unmount: () => void;
}

/** Draws the model's grid into `place`. The template file is the library's own. */
export async function mountGrid(
  library: OSpreadsheet,
  owl: Owl,
  model: Model,
  notices: GridNotices,
  place: HTMLElement,
): Promise<MountedGrid> {
  const templates = await (await fetch("vendor/o-spreadsheet/o_spreadsheet.xml")).text();
  let editionMode = (): string => "inactive";
  class WorkbenchSpreadsheet extends library.Spreadsheet {
    override setup(): void {
      super.setup();
      const { useStore, CellComposerStore, ComposerFocusStore } = library.stores;
      const editor = useStore(CellComposerStore) as unknown as CellEditor;
      const focus = useStore(ComposerFocusStore);
      editionMode = (): string => editor.editionMode;
      refuseFaultyFormulas(
        editor,
        model,
        (sheet, content) => formulaFault(library, model, sheet, content),
        notices.raiseError,
        (content) => {
          focus.focusActiveComposer({ content, focusMode: "contentFocus" });
        },
      );
    }
  }
  const app: App = new owl.App(WorkbenchSpreadsheet as unknown as ConstructorParameters<Owl["App"]>[0], {
    props: { model, colorScheme: "light", ...notices },
    templates,
    env: {},
  });
  await app.mount(place);
  const isCellBeingEdited = (): boolean => editionMode() !== "inactive";
  const ends = [keepReachable(place), replaceOnTyping(place, isCellBeingEdited)];
  return {
    isCellBeingEdited,
    unmount: () => {
      for (const end of ends) end();
      app.destroy();
    },
  };
}
