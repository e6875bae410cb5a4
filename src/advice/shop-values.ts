/** The shop's own defaults where no row of the log has taken them up yet; what its sheets leave blank is the function's own. */
import { usualDrop, usualHouseShare, usualMeterAccuracy } from "../core/bath/common-practice.ts";
import type { FieldId } from "../joblog/formula/log-names.ts";
import type { LogSnapshot } from "../joblog/model/log-snapshot.ts";

function shopsNumber(log: LogSnapshot | undefined, field: FieldId, otherwise: number): number {
  const value = log?.fields[field];
  return typeof value === "number" ? value : otherwise;
}

/** The drop allowed where no bath of the log is meant. */
export function shopsDrop(log: LogSnapshot | undefined): number {
  return shopsNumber(log, "usualDrop", usualDrop);
}

/** The largest first addition, as a share of the opening dose. */
export function shopsHouseShare(log: LogSnapshot | undefined): number {
  return shopsNumber(log, "houseShare", usualHouseShare);
}

/** How far the shop lets its meter be off, and so how far a reading may be. */
export function shopsMeterAccuracy(log: LogSnapshot | undefined): number {
  return shopsNumber(log, "meterLimit", usualMeterAccuracy);
}
