import { usualDrop } from "../core/bath/common-practice.ts";
import type { LogSnapshot } from "../joblog/model/log-snapshot.ts";
import { bathState } from "../joblog/model/words.ts";
import { findRow, type RowFacts, rowFacts } from "./bath-facts.ts";

/** The row of the bath that the form speaks of. */
export function bathFacts(log: LogSnapshot, bath: string | undefined): RowFacts<"baths"> | undefined {
  const row = bath === undefined ? undefined : findRow(log, "baths", "bath", bath);
  return row === undefined ? undefined : rowFacts(row);
}

/** The alkalinity of a bath's water as its sheet hands it to the functions; null where it was not tested. */
export function alkalinityOf(bath: RowFacts<"baths">): number | string | null {
  return bath.number("alkalinityUsed") ?? bath.text("alkalinityUsed") ?? null;
}

/** The drop allowed as the Baths sheet has it: the bath's own, or else the shop's usual one. */
export function dropOf(bath: RowFacts<"baths">): number {
  return bath.number("dropUsed") ?? usualDrop;
}

/** Ids of the baths, newest last as in the sheet. */
export function bathIds(log: LogSnapshot): readonly string[] {
  return log.rows.baths.map((row) => String(row.cells.bath ?? "")).filter((id) => id !== "");
}

/** The bath to show first: one that waits for a top-up, else the last one that is not closed, else the last. */
export function usualBath(log: LogSnapshot): string | undefined {
  const open = log.rows.baths.filter((row) => row.cells.closed === undefined && row.cells.bath !== undefined);
  const due = open.find((row) => row.cells.state === bathState.topUp);
  const row = due ?? open.at(-1) ?? log.rows.baths.at(-1);
  const id = row?.cells.bath;
  return id === undefined ? undefined : String(id);
}
