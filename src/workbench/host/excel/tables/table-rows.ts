import type { TableRecord } from "../../workbook/table-record.ts";
import type { Workbook } from "../../workbook/workbook.ts";
import { ClientObject, partOf } from "../requests/client-object.ts";
import type { Promised, Requests } from "../requests/requests.ts";

export class TableRowsObject
  extends ClientObject<TableRecord, Excel.TableRowCollection>
  implements Pick<Excel.TableRowCollection, "count" | "getCount" | "deleteRows">
{
  protected readonly scalars = ["count"];

  constructor(requests: Requests, table: ClientObject<TableRecord, object>) {
    super(
      requests,
      "TableRowCollection",
      partOf(table, "rows", (target) => target),
    );
  }

  protected fetch(_property: string, table: TableRecord, workbook: Workbook): unknown {
    return workbook.tables.current(table).area.rows - 1;
  }

  get count(): number {
    return this.loadedValue("count") as number;
  }

  getCount(): Promised<number> {
    return this.result("getCount", (table, workbook) => workbook.tables.current(table).area.rows - 1);
  }

  deleteRows(rows: number[]): void {
    this.change("deleteRows", (table, workbook) => {
      workbook.deleteTableRows(table, rows);
    });
  }
}
