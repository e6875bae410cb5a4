/** What an open bath still lacks of its opening dose. */
import type { LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import { bench } from "../../joblog/model/words.ts";
import type { Answer } from "../ask.ts";
import { findRow, type RowFacts, rowFacts } from "../bath-facts.ts";
import { completedRow } from "../drafted-row.ts";
import { stepUpFrom } from "./label-limit.ts";

/** Amounts are poured to about this much of the log's unit of volume. */
export const pourable = 0.0005;

/** A step up from the strength wanted, where its dose is in and the bench test failed all the same; blank at the label's highest. */
export function proposedRaise(facts: RowFacts<"baths"> | undefined): string {
  const [planned, poured] = (["plannedDose", "openingDose"] as const).map((id) => facts?.number(id));
  if (facts === undefined || planned === undefined || poured === undefined) return "";
  return facts.text("benchState") === bench.refused && planned - poured <= pourable ? stepUpFrom(facts) : "";
}

/** What a bath's row will say of its planned dose once it asks for that strength; undefined without a working volume. */
export function plannedAt(strength: string, log: LogSnapshot, bath: string): Answer<number> | undefined {
  const row = findRow(log, "baths", "bath", bath);
  if (row === undefined) return undefined;
  const raised = completedRow(log, "baths", row, { strength });
  const base = raised.answer("baseDose");
  return base?.known === true ? raised.answer("plannedDose") : base;
}

/** What is missing of the planned opening dose, at the strength that is wanted from now on. */
export function missingOpening(log: LogSnapshot, bath: string, strength?: string): number | undefined {
  const row = findRow(log, "baths", "bath", bath);
  if (row === undefined) return undefined;
  const facts = rowFacts(row);
  const wantedStrength = strength ?? proposedRaise(facts);
  const planned = wantedStrength === "" ? undefined : plannedAt(wantedStrength, log, bath);
  const wanted = planned?.known === true ? planned.value : facts.number("plannedDose");
  const left = (wanted ?? 0) - (facts.number("openingDose") ?? 0);
  return left > pourable ? left : undefined;
}
