import type { Area } from "../../address.ts";
import { ExcelError, invalidArgument } from "../../excel-error.ts";
import type { TableRecord } from "../../workbook/table-record.ts";
import type { Workbook } from "../../workbook/workbook.ts";
import { rangeTarget } from "../ranges/range-target.ts";
import { CollectionObject } from "../requests/collection-object.ts";
import type { Finding, Requests } from "../requests/requests.ts";

/** The tables of the workbook, or of one sheet. */
export interface TableOwner {
  readonly sheet?: string;
}

type Members = "add" | "getItem" | "getItemOrNullObject" | "getCount" | "items" | "isNullObject";

export class TablesObject
  extends CollectionObject<TableOwner, string, Excel.Table, Excel.TableCollection>
  implements Pick<Excel.TableCollection, Exclude<Members, "isNullObject">>
{
  constructor(requests: Requests, finding: Finding<TableOwner>) {
    super(requests, "TableCollection", finding);
  }

  protected entries(owner: TableOwner, workbook: Workbook): readonly string[] {
    return tablesOf(owner, workbook).map(({ key }) => key);
  }

  protected item(key: string): Excel.Table {
    return this.requests.make.table(this.requests, {
      what: "table",
      find: (workbook) => workbook.tables.list().find((table) => table.key === key),
    });
  }

  private find(name: string, orNull: boolean): Excel.Table {
    const find = (workbook: Workbook): TableRecord | undefined =>
      tablesOf(this.live(), workbook).find((table) => table.name.toLowerCase() === name.toLowerCase());
    return this.requests.make.table(this.requests, { what: `table ${name}`, orNull: () => orNull, find });
  }

  getItem(name: string): Excel.Table {
    return this.find(name, false);
  }

  getItemOrNullObject(name: string): Excel.Table {
    return this.find(name, true);
  }

  add(address: Excel.Range | string, hasHeaders: boolean): Excel.Table {
    if (!hasHeaders)
      throw new ExcelError(
        "NotImplemented",
        "The stand-in makes tables with a header row only.",
        "TableCollection.add",
      );
    let added: TableRecord | undefined;
    let area: Area | undefined;
    const range = typeof address === "string" ? undefined : rangeTarget(address);
    this.change("add", (owner, workbook) => {
      const sheet = owner.sheet ?? workbook.grid.model.getters.getActiveSheetId();
      area = range === undefined ? workbook.area(address as string, sheet) : range();
      if (owner.sheet !== undefined && area.sheet !== owner.sheet)
        throw invalidArgument("The table's range lies on another sheet.", "TableCollection.add");
      workbook.requireUnlocked(area.sheet, "TableCollection.add");
      added = workbook.tables.add(area);
    });
    return this.requests.make.table(this.requests, { what: "table", find: () => added });
  }
}

function tablesOf({ sheet }: TableOwner, workbook: Workbook): readonly TableRecord[] {
  return workbook.tables.list().filter((table) => sheet === undefined || table.area.sheet === sheet);
}
