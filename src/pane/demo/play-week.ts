import { announce, checkNotCancelled, type LongWork } from "../../excel/long-work.ts";
import { appendRows, buildLog, readLog } from "../../excel/log-workbook.ts";
import { jobLog } from "../../joblog/job-log.ts";
import { layOut } from "../../joblog/lay-out.ts";
import type { LogSnapshot } from "../../joblog/log-snapshot.ts";
import { recordActionOf } from "../actions/record-actions.ts";
import { fillForm, type FilledForm } from "../entries/fill-form.ts";
import type { WeekEvent } from "./week-event.ts";
import type { WeekLine } from "./week-lines.ts";
import { weekShop } from "./week-shop.ts";
import { demoWeek } from "./week.ts";

/** An entry of the week that a form does not take as it was meant. */
export class WeekProblem extends Error {
  constructor({ at, entry, draft }: WeekEvent, why: readonly string[]) {
    super(`${at}, ${entry}: ${why.join(" ")} Typed: ${JSON.stringify(draft)}`);
    this.name = "WeekProblem";
  }
}

export interface Played {
  readonly event: WeekEvent | WeekLine;
  /** What the form showed just before it was recorded; nothing where the line was typed on its sheet. */
  readonly filled?: FilledForm;
  /** The log with the entry in it. */
  readonly log: LogSnapshot;
}

export interface WeekOptions extends LongWork {
  readonly afterEntry?: (played: Played) => void | Promise<void>;
}

async function presentLog(): Promise<LogSnapshot> {
  const log = await readLog();
  if (log === undefined) throw new Error("The workbook holds no log.");
  return log;
}

/** What a person would stop at: problems, a closed form, and every question that the week does not expect, or expects in vain. */
function objections({ confirms = [] }: WeekEvent, { problems, meaning }: FilledForm): readonly string[] {
  const asked = meaning.doubts ?? [];
  return [
    ...problems.map(({ message }) => message),
    ...(meaning.blocked === undefined ? [] : [meaning.blocked.why]),
    ...asked.filter((question) => !confirms.some((expected) => expected.test(question))),
    ...confirms.filter((expected) => !asked.some((question) => expected.test(question))).map((expected) => `The form did not ask ${String(expected)}.`),
  ];
}

/** Fields that were typed but that the form does not show would be lost without a word. */
function unseen({ draft }: WeekEvent, { groups }: FilledForm): readonly string[] {
  const shown = new Set(groups.flatMap(({ fields }) => fields.map(({ key }) => key)));
  return Object.keys(draft).filter((key) => !shown.has(key)).map((key) => `The form has no field "${key}".`);
}

async function record(event: WeekEvent, log: LogSnapshot): Promise<FilledForm> {
  const action = recordActionOf(event.entry);
  const filled = fillForm(action.form, event.draft, { log, system: "US", bath: event.bath, now: event.at });
  const against = [...unseen(event, filled), ...objections(event, filled)];
  if (against.length > 0) throw new WeekProblem(event, against);
  await action.run(filled.meaning);
  return filled;
}

async function play(event: WeekEvent | WeekLine, log: LogSnapshot): Promise<Played> {
  if ("row" in event) {
    await appendRows([event.row]);
    return { event, log: await presentLog() };
  }
  const filled = await record(event, log);
  return { event, filled, log: await presentLog() };
}

/**
 * Builds the invented shop's log in the open workbook and types its week into the pane's forms, entry by
 * entry, each against the log as it then stands. Cancelled, it leaves the entries typed so far. Rejects with
 * a WeekProblem where a form refuses or asks what the week does not expect.
 */
export async function playWeek({ afterEntry, ...work }: WeekOptions = {}): Promise<LogSnapshot> {
  await buildLog(layOut(jobLog, { system: "US" }, weekShop), work);
  let log = await presentLog();
  for (const [index, event] of demoWeek.entries()) {
    const at = event.at.replace("T", " ");
    checkNotCancelled(work, `The week stands as far as ${at}.`);
    await announce(work, { step: index + 1, of: demoWeek.length, words: `${at}: ${"row" in event ? "a line of stock or cost" : event.entry}` });
    const played = await play(event, log);
    log = played.log;
    await afterEntry?.(played);
  }
  return log;
}
