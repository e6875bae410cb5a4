import { findRow, rowFacts, rowsOfBath } from "../../../../src/advice/bath-facts.ts";
import { baselineCells, givenBaseline } from "../../../../src/advice/readings/baseline-written.ts";
import type { UnitSystem } from "../../../../src/core/units/unit-system.ts";
import type { LogContent, LogRow } from "../../../../src/joblog/model/definition.ts";
import type { LogSnapshot } from "../../../../src/joblog/model/log-snapshot.ts";
import { daysBaseline } from "../../../demo/days/demo-week.ts";
import { workedOut } from "./worked-out.ts";

function written(bath: LogRow<"baths">, log: LogSnapshot): LogRow<"baths"> {
  const name = String(bath.bath ?? "");
  const row = findRow(log, "baths", "bath", name);
  const given = row === undefined ? undefined : givenBaseline(rowFacts(row));
  if (given === undefined) return bath;
  const counted = rowsOfBath(log, "readings", name).filter(({ cells }) => cells.counted === 1);
  const at = Math.max(...counted.map(({ cells }) => Number(cells.when)));
  const from = counted.map(({ cells }) => String(cells.id ?? ""));
  return { ...bath, ...baselineCells(given, { at, by: "KT", from }) };
}

const blank = Object.fromEntries(Object.keys(daysBaseline).map((column) => [column, undefined]));

/** A log's content with those baselines written down that its readings give, and no others. */
export async function baselinesWritten(typed: LogContent, system: UnitSystem = "US"): Promise<LogContent> {
  const baths = typed.rows.baths?.map((bath): LogRow<"baths"> => ({ ...bath, ...blank }));
  const content: LogContent = { ...typed, rows: { ...typed.rows, ...(baths === undefined ? {} : { baths }) } };
  if (baths === undefined || !(content.rows.readings ?? []).some(({ purpose }) => purpose === "baseline"))
    return content;
  const log = await workedOut(content, system);
  return { ...content, rows: { ...content.rows, baths: baths.map((bath) => written(bath, log)) } };
}
