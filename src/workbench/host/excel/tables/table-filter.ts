import { ExcelError } from "../../excel-error.ts";
import type { TableRecord } from "../../workbook/table-record.ts";
import type { Workbook } from "../../workbook/workbook.ts";
import { ClientObject, partOf } from "../requests/client-object.ts";
import type { Requests } from "../requests/requests.ts";

/**
 * Whether a person filters the table in the grid; the stand-in sets no filters itself. What Excel says of a table
 * without filter buttons is not documented, so here it fails.
 */
export class TableFilterObject
  extends ClientObject<TableRecord, Excel.AutoFilter>
  implements Pick<Excel.AutoFilter, "isDataFiltered">
{
  protected readonly scalars = ["isDataFiltered"];

  constructor(requests: Requests, table: ClientObject<TableRecord, object>) {
    super(
      requests,
      "AutoFilter",
      partOf(table, "filter", (record) => record),
    );
  }

  protected fetch(_property: string, table: TableRecord, workbook: Workbook): unknown {
    if (workbook.tables.configOf(table)?.hasFilters !== true)
      throw new ExcelError("GeneralException", `The table ${table.name} has no filter.`, "AutoFilter.isDataFiltered");
    return workbook.tables.isFiltered(table);
  }

  get isDataFiltered(): boolean {
    return this.loadedValue("isDataFiltered") as boolean;
  }
}
