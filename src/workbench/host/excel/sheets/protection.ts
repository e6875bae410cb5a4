import type { Workbook } from "../../workbook/workbook.ts";
import { ClientObject, partOf } from "../requests/client-object.ts";
import type { Requests } from "../requests/requests.ts";

/** Protection of a sheet over the grid's lock, which knows no password and no exceptions. */
export class ProtectionObject
  extends ClientObject<string, Excel.WorksheetProtection>
  implements Pick<Excel.WorksheetProtection, "protected" | "protect" | "unprotect">
{
  protected readonly scalars = ["protected"];

  constructor(requests: Requests, worksheet: ClientObject<string, object>) {
    super(
      requests,
      "WorksheetProtection",
      partOf(worksheet, "protection", (sheet) => sheet),
    );
  }

  protected fetch(_property: string, sheet: string, workbook: Workbook): unknown {
    return workbook.grid.model.getters.isSheetLocked(sheet);
  }

  get protected(): boolean {
    return this.loadedValue("protected") as boolean;
  }

  protect(): void {
    this.change("protect", (sheetId, { grid }) => {
      grid.do("LOCK_SHEET", { sheetId });
    });
  }

  unprotect(): void {
    this.change("unprotect", (sheetId, { grid }) => {
      grid.do("UNLOCK_SHEET", { sheetId });
    });
  }
}
