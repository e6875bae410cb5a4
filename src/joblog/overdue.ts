import { findRow } from "./bath-facts.ts";
import { round, type Bath } from "./step.ts";
import { days } from "./units-of.ts";

/** Days after which a bath in daily use is old (a technical note on alkaline wash tanks says rarely over a week). */
const longLife = 7;

/** Hours without a reading that make one overdue: one working shift (common practice, no source). */
const shift = 8;

/** Share of the opening dose topped up at which a change-out is worth a thought (common practice, no source). */
const manyTopUps = 1;

/** What is late or wants a look, each a sentence. `now` is an Excel serial number. */
export function overdueOf({ facts, log, system }: Bath, now: number): readonly string[] {
  if (facts.text("state") === "closed") return [];
  const late: string[] = [];
  const readAt = facts.number("lastReadingAt");
  if (facts.number("baseline") !== undefined && readAt !== undefined && (now - readAt) * 24 > shift) {
    const hours = (now - readAt) * 24;
    late.push(hours < 48 ? `No reading for ${round(hours, 0)} hours.` : `No reading for ${round(hours / 24, 0)} days.`);
  }
  const open = facts.number("daysOpen");
  if (open !== undefined && open > longLife) late.push(`Open for ${round(open, 0)} ${days[system]}: think of a change-out.`);
  const share = facts.number("topUpShare");
  if (share !== undefined && share >= manyTopUps) late.push(`Top-ups have reached ${round(share * 100, 0)}% of the opening dose: think of a change-out.`);
  const concentrate = findRow(log, "concentrates", "concentrate", facts.text("concentrate") ?? "");
  if (concentrate?.cells["sdsOnFile"] === "no") late.push("No safety data sheet on file for the concentrate.");
  return late;
}
