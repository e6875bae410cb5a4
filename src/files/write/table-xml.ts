import type { SheetState, TableState } from "../../state/workbook-state.ts";
import { storedFormula } from "../stored-formula.ts";
import { asText } from "./cells-xml.ts";
import { zoneOf } from "./references.ts";
import { declaration, element, textOf } from "./xml.ts";

const mainNamespace = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

/** A table's headings as its cells show them. */
function headers(state: SheetState, area: string): readonly string[] {
  const zone = zoneOf(area);
  if (zone === undefined) throw new RangeError(`"${area}" on sheet ${state.name} is no area.`);
  const texts = new Map(
    state.typed.filter(([row]) => row === zone.top).map(([, column, , value]) => [column, asText(value)] as const),
  );
  return Array.from(
    { length: zone.right - zone.left + 1 },
    (_, index) => texts.get(zone.left + index) ?? `Column${String(index + 1)}`,
  );
}

/** A table's part. Its headings stand in the sheet's cells too, and Excel wants them equal. */
export function tablePart(state: SheetState, table: TableState, id: number): string {
  const { name, area, style, filterButtons } = table;
  const formulas = new Map(table.calculated.map(({ header, formula }) => [header.toLowerCase(), formula] as const));
  const columns = headers(state, area).map((header, index) => {
    const formula = formulas.get(header.toLowerCase());
    const content = formula === undefined ? "" : element("calculatedColumnFormula", {}, textOf(storedFormula(formula)));
    return element("tableColumn", { id: index + 1, name: header }, content);
  });
  return (
    declaration +
    element(
      "table",
      { xmlns: mainNamespace, id, name, displayName: name, ref: area, totalsRowShown: 0 },
      filterButtons ? element("autoFilter", { ref: area }) : "",
      element("tableColumns", { count: columns.length }, ...columns),
      element("tableStyleInfo", {
        name: style === "" ? undefined : style,
        showFirstColumn: table.firstColumn ? 1 : 0,
        showLastColumn: table.lastColumn ? 1 : 0,
        showRowStripes: table.bandedRows ? 1 : 0,
        showColumnStripes: table.bandedColumns ? 1 : 0,
      }),
    )
  );
}
