import { ClientObject, partOf } from "../requests/client-object.ts";
import type { Requests } from "../requests/requests.ts";

export class FreezePanesObject
  extends ClientObject<string, Excel.WorksheetFreezePanes>
  implements Pick<Excel.WorksheetFreezePanes, "freezeRows" | "freezeColumns" | "unfreeze">
{
  protected readonly scalars: readonly string[] = [];

  constructor(requests: Requests, worksheet: ClientObject<string, object>) {
    super(
      requests,
      "WorksheetFreezePanes",
      partOf(worksheet, "freeze panes", (sheet) => sheet),
    );
  }

  protected fetch(): unknown {
    return undefined;
  }

  freezeRows(count = 1): void {
    this.change("freezeRows", (sheetId, { grid }) => {
      grid.do("FREEZE_ROWS", { sheetId, quantity: count });
    });
  }

  freezeColumns(count = 1): void {
    this.change("freezeColumns", (sheetId, { grid }) => {
      grid.do("FREEZE_COLUMNS", { sheetId, quantity: count });
    });
  }

  unfreeze(): void {
    this.change("unfreeze", (sheetId, { grid }) => {
      grid.do("UNFREEZE_COLUMNS_ROWS", { sheetId });
    });
  }
}
