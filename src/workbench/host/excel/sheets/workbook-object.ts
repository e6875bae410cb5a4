import { areaOf } from "../../workbook/grid/grid.ts";
import type { Workbook } from "../../workbook/workbook.ts";
import { ClientObject } from "../requests/client-object.ts";
import type { Requests } from "../requests/requests.ts";
import { TablesObject } from "../tables/tables-object.ts";
import { ApplicationObject } from "./application.ts";
import { NamesObject } from "./names-object.ts";
import { SheetFunctionsObject } from "./sheet-functions.ts";
import { StructureObject } from "./structure.ts";
import { WorksheetsObject } from "./worksheets-object.ts";

type Members =
  | "worksheets"
  | "tables"
  | "names"
  | "application"
  | "functions"
  | "getSelectedRange"
  | "getActiveCell"
  | "name"
  | "readOnly"
  | "protection";

export class WorkbookObject extends ClientObject<Workbook, Excel.Workbook> implements Pick<Excel.Workbook, Members> {
  protected readonly scalars = ["name", "readOnly"];

  constructor(requests: Requests) {
    super(requests, "Workbook", { what: "workbook", find: (workbook) => workbook });
  }

  protected fetch(property: string, _target: Workbook, workbook: Workbook): unknown {
    return property === "name" ? "Workbook" : workbook.grid.model.getters.isReadonly();
  }

  get name(): string {
    return this.loadedValue("name") as string;
  }
  get readOnly(): boolean {
    return this.loadedValue("readOnly") as boolean;
  }

  get worksheets(): Excel.WorksheetCollection {
    return this.part("worksheets", () => new WorksheetsObject(this.requests).face);
  }
  get tables(): Excel.TableCollection {
    return this.part("tables", () => new TablesObject(this.requests, { what: "tables", find: () => ({}) }).face);
  }
  get names(): Excel.NamedItemCollection {
    return this.part("names", () => new NamesObject(this.requests).face);
  }
  get functions(): Excel.Functions {
    return this.part("functions", () => new SheetFunctionsObject(this.requests).face);
  }
  get application(): Excel.Application {
    return this.part("application", () => new ApplicationObject(this.requests).face);
  }

  get protection(): Excel.WorkbookProtection {
    return this.part("protection", () => new StructureObject(this.requests).face);
  }

  getSelectedRange(): Excel.Range {
    return this.requests.make.range(this.requests, {
      what: "selection",
      find: ({ grid }) => areaOf(grid.model.getters.getActiveSheetId(), grid.model.getters.getSelectedZone()),
    });
  }

  getActiveCell(): Excel.Range {
    return this.requests.make.range(this.requests, {
      what: "active cell",
      find: ({ grid }) => {
        const { sheetId, row, col } = grid.model.getters.getActivePosition();
        return { sheet: sheetId, row, column: col, rows: 1, columns: 1 };
      },
    });
  }
}
