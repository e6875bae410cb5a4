import { findRow } from "./bath-facts.ts";
import { round, volumeWords, type Bath } from "./step.ts";
import { days } from "./units-of.ts";
import { changeOut } from "./words.ts";

/** Days after which a bath in daily use is old (a technical note on alkaline wash tanks says rarely over a week). */
const longLife = 7;

/** Hours without a reading that make one overdue: one working shift (common practice, no source). */
const shift = 8;

/** The log's change-out signal with its figures; what else decides is said beside it. */
function changeOutSentence({ facts, system }: Bath): string | undefined {
  const signal = facts.text("changeOut");
  const share = facts.number("topUpShare");
  if (signal === undefined || share === undefined) return undefined;
  const decides = "Consider a change-out; the bench test, the ratio of total to free alkalinity and the days open decide too.";
  const [first, largest] = [facts.number("firstRound"), facts.number("largestRound")];
  if (signal !== changeOut.grow || first === undefined || largest === undefined) {
    return `Top-ups have reached ${round(share * 100, 0)}% of the opening dose. ${decides}`;
  }
  return `Top-ups grow: the first round took ${volumeWords(first, system)}, a later one ${volumeWords(largest, system)}, ${round(share * 100, 0)}% of the opening dose in all. ${decides}`;
}

/** What is late or wants a look, each a sentence. `now` is an Excel serial number. */
export function overdueOf(bath: Bath, now: number): readonly string[] {
  const { facts, log, system } = bath;
  if (facts.text("state") === "closed") return [];
  const late: string[] = [];
  const readAt = facts.number("lastReadingAt");
  if (facts.number("baseline") !== undefined && readAt !== undefined && (now - readAt) * 24 > shift) {
    const hours = (now - readAt) * 24;
    late.push(hours < 48 ? `No reading for ${round(hours, 0)} hours.` : `No reading for ${round(hours / 24, 0)} days.`);
  }
  const open = facts.number("daysOpen");
  if (open !== undefined && open > longLife) late.push(`Open for ${round(open, 0)} ${days[system]}: think of a change-out.`);
  const signal = changeOutSentence(bath);
  if (signal !== undefined) late.push(signal);
  const concentrate = findRow(log, "concentrates", "concentrate", facts.text("concentrate") ?? "");
  if (concentrate?.cells["sdsOnFile"] === "no") late.push("No safety data sheet on file for the concentrate.");
  return late;
}
