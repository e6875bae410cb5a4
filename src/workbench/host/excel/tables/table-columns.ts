import type { TableRecord } from "../../workbook/table-record.ts";
import type { Workbook } from "../../workbook/workbook.ts";
import { ClientObject, partOf } from "../requests/client-object.ts";
import { CollectionObject } from "../requests/collection-object.ts";
import type { Finding, Requests } from "../requests/requests.ts";

interface ColumnTarget {
  readonly table: TableRecord;
  readonly index: number;
}

class TableColumnObject
  extends ClientObject<ColumnTarget, Excel.TableColumn>
  implements Pick<Excel.TableColumn, "name" | "index" | "getDataBodyRange" | "getRange">
{
  protected readonly scalars = ["name", "index"];

  constructor(requests: Requests, finding: Finding<ColumnTarget>) {
    super(requests, "TableColumn", finding);
  }

  protected fetch(property: string, { table, index }: ColumnTarget): unknown {
    return property === "name" ? table.headers[index] : index;
  }

  get name(): string {
    return this.loadedValue("name") as string;
  }
  get index(): number {
    return this.loadedValue("index") as number;
  }

  private range(fromRow: number): Excel.Range {
    return this.requests.make.range(
      this.requests,
      partOf(this, "column", ({ table, index }, workbook) => {
        const { area } = workbook.tables.current(table);
        return { ...area, row: area.row + fromRow, rows: area.rows - fromRow, column: area.column + index, columns: 1 };
      }),
    );
  }

  getRange(): Excel.Range {
    return this.range(0);
  }
  getDataBodyRange(): Excel.Range {
    return this.range(1);
  }
}

export class TableColumnsObject
  extends CollectionObject<TableRecord, number, Excel.TableColumn, Excel.TableColumnCollection>
  implements Pick<Excel.TableColumnCollection, "items" | "getCount" | "getItem" | "getItemOrNullObject">
{
  constructor(requests: Requests, finding: Finding<TableRecord>) {
    super(requests, "TableColumnCollection", finding);
  }

  protected entries(table: TableRecord, workbook: Workbook): readonly number[] {
    return workbook.tables.current(table).headers.map((_, index) => index);
  }

  protected item(index: number): Excel.TableColumn {
    return new TableColumnObject(
      this.requests,
      partOf(this, "column", (table) => ({ table, index })),
    ).face;
  }

  private find(key: string | number, orNull: boolean): Excel.TableColumn {
    const find = (workbook: Workbook): ColumnTarget | undefined => {
      const table = workbook.tables.current(this.live());
      const index =
        typeof key === "number"
          ? key - 1
          : table.headers.findIndex((header) => header.toLowerCase() === key.toLowerCase());
      return index in table.headers ? { table, index } : undefined;
    };
    return new TableColumnObject(this.requests, { what: `column ${key}`, orNull: () => orNull, find }).face;
  }

  getItem(key: string | number): Excel.TableColumn {
    return this.find(key, false);
  }
  getItemOrNullObject(key: string | number): Excel.TableColumn {
    return this.find(key, true);
  }
}
