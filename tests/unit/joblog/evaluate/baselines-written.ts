import { baselineCells, givenBaseline } from "../../../../src/advice/baseline-written.ts";
import { findRow, rowFacts, rowsOfBath } from "../../../../src/advice/bath-facts.ts";
import type { UnitSystem } from "../../../../src/core/units/unit-system.ts";
import type { LogContent, LogRow } from "../../../../src/joblog/model/definition.ts";
import type { LogSnapshot } from "../../../../src/joblog/model/log-snapshot.ts";
import { workedOut } from "./worked-out.ts";

function written(bath: LogRow<"baths">, log: LogSnapshot): LogRow<"baths"> {
  const name = String(bath.bath ?? "");
  const row = findRow(log, "baths", "bath", name);
  const given = bath.baseline !== undefined || row === undefined ? undefined : givenBaseline(rowFacts(row));
  if (given === undefined) return bath;
  const counted = rowsOfBath(log, "readings", name).filter(({ cells }) => cells.counted === 1);
  const at = Math.max(...counted.map(({ cells }) => Number(cells.when)));
  const from = counted.map(({ cells }) => String(cells.id ?? ""));
  return { ...bath, ...baselineCells(given, { at, by: "KT", from }) };
}

/** A log's content with the baselines written down that its readings give, where a bath has none yet. */
export async function baselinesWritten(content: LogContent, system: UnitSystem = "US"): Promise<LogContent> {
  const { baths } = content.rows;
  if (baths === undefined || !(content.rows.readings ?? []).some(({ purpose }) => purpose === "baseline"))
    return content;
  const log = await workedOut(content, system);
  return { ...content, rows: { ...content.rows, baths: baths.map((bath) => written(bath, log)) } };
}
