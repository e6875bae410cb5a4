import { depth, leastLevel } from "../../joblog/model/units-of.ts";
import { changeOut } from "../../joblog/model/words.ts";
import { findRow, lastReadingOf, rowFacts } from "../bath-facts.ts";
import { baselineFault } from "../readings/baseline-written.ts";
import { unreadAdditions } from "../readings/unread-additions.ts";
import { countOf, fixed } from "../wording/figure-words.ts";
import { meterSentences } from "./overdue-meter.ts";
import { doubleNumberSentences } from "./overdue-numbers.ts";
import { type Bath, limitOf, type Overdue, type StepKind, volumeWords } from "./step.ts";

/** The log's change-out signal with its figures; what else decides is said beside it. */
function changeOutSentence({ facts, system }: Bath): string | undefined {
  const signal = facts.text("changeOut");
  const share = facts.number("topUpShare");
  if (signal === undefined || share === undefined) return undefined;
  const decides =
    "Consider a change-out; the bench test, the ratio of total to free alkalinity and the days open decide too.";
  const [first, largest] = [facts.number("firstRound"), facts.number("largestRound")];
  if (signal !== changeOut.grow || first === undefined || largest === undefined) {
    return `Top-ups have reached ${fixed(share * 100, 0)}% of the opening dose. ${decides}`;
  }
  return `Top-ups grow: the first round took ${volumeWords(first, system)}, a later one ${volumeWords(largest, system)}, ${fixed(share * 100, 0)}% of the opening dose in all. ${decides}`;
}

function readingSentence({ facts, log }: Bath, now: number): string | undefined {
  const readAt = facts.number("lastReadingAt");
  const most = limitOf(log, "readingHours");
  if (
    facts.number("baseline") === undefined ||
    readAt === undefined ||
    most === undefined ||
    (now - readAt) * 24 <= most
  )
    return undefined;
  const hours = (now - readAt) * 24;
  return `No reading for ${hours < 48 ? countOf(fixed(hours, 0), "hour") : countOf(fixed(hours / 24, 0), "day")}.`;
}

function ageSentence({ facts, log }: Bath): string | undefined {
  const open = facts.number("daysOpen");
  const most = limitOf(log, "bathLife");
  return open !== undefined && most !== undefined && open > most
    ? `Open for ${countOf(fixed(open, 0), "day")}: consider a change-out.`
    : undefined;
}

function levelSentence({ facts, log, id, system }: Bath): string | undefined {
  const tank = findRow(log, "tanks", "tank", facts.text("tank") ?? "");
  const row = lastReadingOf(log, id);
  const level = row === undefined ? undefined : rowFacts(row).number("level");
  const line = tank === undefined ? undefined : rowFacts(tank).number("fillDepth");
  const perDepth = tank === undefined ? undefined : rowFacts(tank).number("volumePerDepth");
  const madeUp = unreadAdditions(log, id).length > 0;
  if (
    level === undefined ||
    line === undefined ||
    perDepth === undefined ||
    madeUp ||
    line - level < leastLevel[system]
  )
    return undefined;
  return `Level ${fixed(line - level, 1)} ${depth[system]} under the line: about ${volumeWords((line - level) * perDepth, system)} to make up.`;
}

/** What is late or wants a look. `now` is an Excel serial number. */
export function overdueOf(bath: Bath, now: number): readonly Overdue[] {
  const { facts, log } = bath;
  if (facts.text("state") === "closed") return [];
  const concentrate = findRow(log, "concentrates", "concentrate", facts.text("concentrate") ?? "");
  const one = (text: string | undefined, kind?: StepKind): readonly Overdue[] =>
    text === undefined ? [] : [{ text, ...(kind === undefined ? {} : { kind }) }];
  const fault = baselineFault(facts, bath.system);
  return [
    ...one(fault?.text, fault?.answer),
    ...one(readingSentence(bath, now), "reading"),
    ...meterSentences(bath, now).flatMap((text) => one(text, "meter check")),
    ...one(levelSentence(bath), "make-up"),
    ...one(ageSentence(bath), "change-out"),
    ...one(changeOutSentence(bath), "change-out"),
    ...doubleNumberSentences(log).flatMap((text) => one(text)),
    ...one(concentrate?.cells.sdsOnFile === "no" ? "No safety data sheet on file for the concentrate." : undefined),
  ];
}
