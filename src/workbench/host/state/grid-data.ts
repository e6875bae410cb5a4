import type { WorkbookData } from "@odoo/o-spreadsheet";

import type { BorderDescription, Model, OSpreadsheet } from "../library.ts";

/** A part of the grid's model by what it writes into the grid's data, which its types keep private. */
interface ModelPart {
  export: (data: WorkbookData) => void;
}

export type GridBorder = Readonly<Partial<Record<"top" | "bottom" | "left" | "right", BorderDescription>>>;

interface BordersPart extends ModelPart {
  /** By sheet, column and row. */
  readonly borders: Readonly<Record<string, readonly ((GridBorder | undefined)[] | undefined)[] | undefined>>;
}

function partsOf(model: Model): readonly ModelPart[] {
  return (model as unknown as { readonly corePlugins: readonly ModelPart[] }).corePlugins;
}

/**
 * The grid's own data without cells, looks and borders, each part as the grid writes it: its full export takes seconds
 * for a long log, nearly all of them for the cells.
 */
export function gridDataWithoutCells(library: OSpreadsheet, model: Model): WorkbookData {
  const plugins = library.registries.corePluginRegistry;
  const [Cells, Borders] = [plugins.get("cell"), plugins.get("borders")];
  const data = library.helpers.createEmptyWorkbookData();
  for (const part of partsOf(model)) if (!(part instanceof Cells) && !(part instanceof Borders)) part.export(data);
  return data;
}

/** Finds a sheet's borders without the copy that the grid makes of each. */
export function bordersOf(
  library: OSpreadsheet,
  model: Model,
  sheet: string,
): (row: number, column: number) => GridBorder | undefined {
  const Borders = library.registries.corePluginRegistry.get("borders");
  const part = partsOf(model).find((one) => one instanceof Borders) as BordersPart | undefined;
  const borders = part?.borders[sheet];
  return (row, column) => {
    const border = borders?.[column]?.[row];
    return (border?.top ?? border?.bottom ?? border?.left ?? border?.right) ? border : undefined;
  };
}
