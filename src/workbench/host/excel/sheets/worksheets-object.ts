import { ExcelError } from "../../excel-error.ts";
import type { SheetChange } from "../../workbook/change-log.ts";
import type { Workbook } from "../../workbook/workbook.ts";
import { CollectionObject } from "../requests/collection-object.ts";
import { guard } from "../requests/guard.ts";
import type { Requests } from "../requests/requests.ts";

type ChangedHandler = (args: Excel.WorksheetChangedEventArgs) => Promise<unknown>;

export class WorksheetsObject
  extends CollectionObject<Workbook, string, Excel.Worksheet, Excel.WorksheetCollection>
  implements
    Pick<
      Excel.WorksheetCollection,
      "add" | "getItem" | "getItemOrNullObject" | "getActiveWorksheet" | "getFirst" | "getCount" | "items" | "onChanged"
    >
{
  readonly onChanged: OfficeExtension.EventHandlers<Excel.WorksheetChangedEventArgs>;

  constructor(requests: Requests) {
    super(requests, "WorksheetCollection", { what: "sheets", find: (workbook) => workbook });
    this.onChanged = guard("EventHandlers", {
      add: (handler: ChangedHandler) => this.addHandler(handler),
    }) as typeof this.onChanged;
  }

  protected entries(_owner: Workbook, workbook: Workbook): readonly string[] {
    return workbook.sheets.ids();
  }

  protected item(sheet: string): Excel.Worksheet {
    return this.requests.make.worksheet(this.requests, {
      what: "sheet",
      find: (workbook) => (workbook.sheets.exists(sheet) ? sheet : undefined),
    });
  }

  private find(name: string, orNull: boolean): Excel.Worksheet {
    const find = (workbook: Workbook): string | undefined =>
      workbook.sheets.named(name) ?? (workbook.sheets.exists(name) ? name : undefined);
    return this.requests.make.worksheet(this.requests, { what: `sheet ${name}`, orNull: () => orNull, find });
  }

  getItem(name: string): Excel.Worksheet {
    return this.find(name, false);
  }
  getItemOrNullObject(name: string): Excel.Worksheet {
    return this.find(name, true);
  }

  getActiveWorksheet(): Excel.Worksheet {
    return this.requests.make.worksheet(this.requests, {
      what: "active sheet",
      find: (workbook) => workbook.grid.model.getters.getActiveSheetId(),
    });
  }

  getFirst(): Excel.Worksheet {
    return this.requests.make.worksheet(this.requests, {
      what: "first sheet",
      find: (workbook) => workbook.sheets.ids()[0],
    });
  }

  add(name?: string): Excel.Worksheet {
    let added: string | undefined;
    this.change("add", (_owner, workbook) => {
      if (workbook.structureLocked)
        throw new ExcelError("AccessDenied", "The workbook's structure is protected.", "WorksheetCollection.add");
      added = workbook.sheets.add(name);
    });
    return this.requests.make.worksheet(this.requests, { what: `sheet ${name ?? ""}`, find: () => added });
  }

  /** The handler is registered and removed at sync, and called after the change is complete. */
  private addHandler(handler: ChangedHandler): unknown {
    const { requests } = this;
    let stop: (() => void) | undefined;
    requests.enqueue("switch", "WorksheetCollection.onChanged", () => {
      const { workbookNow } = requests;
      stop = workbookNow.changes.onChange((changes) => {
        for (const change of changes)
          queueMicrotask(() => {
            void handler(eventFor(change, workbookNow));
          });
      });
    });
    return guard("EventHandlerResult", {
      context: requests.face,
      remove: (): void => {
        requests.enqueue("switch", "EventHandlerResult.remove", () => {
          stop?.();
        });
      },
    });
  }
}

function eventFor({ area }: SheetChange, workbook: Workbook): Excel.WorksheetChangedEventArgs {
  return {
    type: "WorksheetChanged",
    address: workbook.sheets.exists(area.sheet) ? workbook.localAddressOf(area) : "",
    changeType: "RangeEdited",
    source: "Local",
    worksheetId: area.sheet,
  } as Excel.WorksheetChangedEventArgs;
}
