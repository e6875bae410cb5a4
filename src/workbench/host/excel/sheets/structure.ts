import type { Workbook } from "../../workbook/workbook.ts";
import { ClientObject } from "../requests/client-object.ts";
import type { Requests } from "../requests/requests.ts";

/** Protection of a workbook's structure: no sheet is added, removed or renamed. The grid knows none, so it is kept here. */
export class StructureObject
  extends ClientObject<Workbook, Excel.WorkbookProtection>
  implements Pick<Excel.WorkbookProtection, "protected" | "protect" | "unprotect">
{
  protected readonly scalars = ["protected"];

  constructor(requests: Requests) {
    super(requests, "WorkbookProtection", { what: "workbook", find: (workbook) => workbook });
  }

  protected fetch(_property: string, workbook: Workbook): unknown {
    return workbook.structureLocked;
  }

  get protected(): boolean {
    return this.loadedValue("protected") as boolean;
  }

  protect(): void {
    this.change("protect", (workbook) => {
      workbook.structureLocked = true;
    });
  }

  unprotect(): void {
    this.change("unprotect", (workbook) => {
      workbook.structureLocked = false;
    });
  }
}
