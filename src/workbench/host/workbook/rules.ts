import type { Area } from "../address.ts";
import type { ConditionalFormat, Zone } from "../library.ts";
import { type Grid, zoneOf } from "./grid/grid.ts";

export function addConditionalFormat(grid: Grid, area: Area, cf: Omit<ConditionalFormat, "ranges">): void {
  grid.makeRoom(area);
  grid.do("ADD_CONDITIONAL_FORMAT", {
    sheetId: area.sheet,
    cf,
    ranges: [grid.model.getters.getRangeDataFromZone(area.sheet, zoneOf(area))],
  });
}

/** The zone stretched to the table's last row where it ended with the table's former last row. */
function stretched(zone: Zone, table: Area, formerRows: number): Zone | undefined {
  const formerLast = table.row + formerRows - 1;
  const inside = zone.left >= table.column && zone.right < table.column + table.columns && zone.top >= table.row;
  return inside && zone.bottom === formerLast ? { ...zone, bottom: table.row + table.rows - 1 } : undefined;
}

/** Rules that covered a table down to its last row cover the new rows too. */
export function extendRules(grid: Grid, table: Area, formerRows: number): void {
  const { getters } = grid.model;
  const sheetId = table.sheet;
  for (const rule of [...getters.getDataValidationRules(sheetId)]) {
    const zones = rule.ranges.map(({ zone }) => stretched(zone, table, formerRows) ?? zone);
    if (zones.every((zone, index) => zone === rule.ranges[index]?.zone)) continue;
    const { id, criterion, isBlocking } = rule;
    grid.do("ADD_DATA_VALIDATION_RULE", {
      sheetId,
      ranges: zones.map((zone) => getters.getRangeDataFromZone(sheetId, zone)),
      rule: { id, criterion, ...(isBlocking === undefined ? {} : { isBlocking }) },
    });
  }
  for (const { ranges, ...cf } of [...getters.getConditionalFormats(sheetId)]) {
    const zones = ranges.map((range) => getters.getRangeFromSheetXC(sheetId, range).zone);
    const wider = zones.map((zone) => stretched(zone, table, formerRows) ?? zone);
    if (wider.every((zone, index) => zone === zones[index])) continue;
    grid.do("ADD_CONDITIONAL_FORMAT", {
      sheetId,
      cf,
      ranges: wider.map((zone) => getters.getRangeDataFromZone(sheetId, zone)),
    });
  }
}
