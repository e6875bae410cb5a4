import type { UnitSystem } from "../../core/units/unit-system.ts";
import { buildLog, editLog, readLog } from "../../excel/log-workbook.ts";
import { announce, checkNotCancelled, type LongWork } from "../../excel/long-work.ts";
import type { LogEdit } from "../../excel/record/log-edit.ts";
import { jobLog } from "../../joblog/job-log.ts";
import { layOut } from "../../joblog/layout/lay-out.ts";
import type { LogContent } from "../../joblog/model/definition.ts";
import type { LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import type { shareBases } from "../../joblog/model/words.ts";
import { sharePlan } from "../claims/share-plan.ts";
import { type FilledForm, fillForm } from "../record/fill-form.ts";
import { formOf } from "../record/forms.ts";
import { demoWeek } from "./week.ts";
import { bathOne, type WeekEvent } from "./week-event.ts";
import { weekShop } from "./week-shop.ts";

/** An entry of the week that a form does not take as it was meant. */
class WeekProblem extends Error {
  constructor({ at, entry, draft }: WeekEvent, why: readonly string[]) {
    super(`${at}, ${entry}: ${why.join(" ")} Typed: ${JSON.stringify(draft)}`);
    this.name = "WeekProblem";
  }
}

export interface Played {
  readonly event: WeekEvent;
  /** What the form showed just before it was recorded. */
  readonly filled: FilledForm;
  /** The log with the entry in it. */
  readonly log: LogSnapshot;
}

interface Week {
  readonly system: UnitSystem;
  /** What the log holds before the first entry. */
  readonly shop: LogContent;
  readonly events: readonly WeekEvent[];
}

const weekAsInvented: Week = { system: "US", shop: weekShop, events: demoWeek };

/** Where a week is written. */
export interface WeekBook {
  readonly begin: (system: UnitSystem, shop: LogContent, work: LongWork) => Promise<void>;
  readonly record: (edit: LogEdit) => Promise<void>;
  /** The log after a write, with all its figures worked out. */
  readonly present: () => Promise<LogSnapshot>;
}

/** The open workbook. */
export const openBook: WeekBook = {
  begin: async (system, shop, work) => {
    await buildLog(layOut(jobLog, { system }, shop), work);
  },
  record: async (edit) => {
    await editLog(edit);
  },
  present: async () => {
    const log = await readLog();
    if (log === undefined) throw new Error("The workbook holds no log.");
    return log;
  },
};

export interface WeekOptions extends LongWork {
  /** The invented week as it is, if left out. */
  readonly week?: Week;
  readonly afterEntry?: (played: Played) => void | Promise<void>;
  /** The open workbook, if left out. */
  readonly book?: WeekBook;
}

/** What a person would stop at: problems, a closed form, and every question that the week does not expect, or expects in vain. */
function objections({ confirms = [] }: WeekEvent, { problems, meaning }: FilledForm): readonly string[] {
  const asked = meaning.doubts ?? [];
  return [
    ...problems.map(({ message }) => message),
    ...(meaning.blocked === undefined ? [] : [meaning.blocked.why]),
    ...asked.filter((question) => !confirms.some((expected) => expected.test(question))),
    ...confirms
      .filter((expected) => !asked.some((question) => expected.test(question)))
      .map((expected) => `The form did not ask ${String(expected)}.`),
  ];
}

/** Fields that were typed but that the form does not show would be lost without a word. */
function unseen({ draft }: WeekEvent, { groups }: FilledForm): readonly string[] {
  const shown = new Set(groups.flatMap(({ fields }) => fields.map(({ key }) => key)));
  return Object.keys(draft)
    .filter((key) => !shown.has(key))
    .map((key) => `The form has no field "${key}".`);
}

async function play(event: WeekEvent, log: LogSnapshot, system: UnitSystem, book: WeekBook): Promise<Played> {
  const filled = fillForm(formOf(event.entry), event.draft, { log, system, bath: event.bath, now: event.at });
  const against = [...unseen(event, filled), ...objections(event, filled)];
  if (against.length > 0) throw new WeekProblem(event, against);
  await book.record(filled.meaning);
  return { event, filled, log: await book.present() };
}

/** Shares the first bath out among its claims, as the Claims view does. */
export async function shareWeek(
  log: LogSnapshot,
  basis: (typeof shareBases)[number],
  book = openBook,
): Promise<LogSnapshot> {
  const { changes } = sharePlan(log, bathOne, basis);
  if (changes === undefined) return log;
  await book.record(changes);
  return book.present();
}

/**
 * Begins the invented shop's log and types its week into the pane's forms, entry by
 * entry, each against the log as it then stands. Cancelled, it leaves the entries typed so far. Rejects with
 * a WeekProblem where a form refuses or asks what the week does not expect.
 */
export async function playWeek({
  week = weekAsInvented,
  afterEntry,
  book = openBook,
  ...work
}: WeekOptions = {}): Promise<LogSnapshot> {
  const { system, shop, events } = week;
  await book.begin(system, shop, work);
  let log = await book.present();
  for (const [index, event] of events.entries()) {
    const at = event.at.replace("T", " ");
    checkNotCancelled(work, `The week stands as far as ${at}.`);
    await announce(work, { step: index + 1, of: events.length, words: `${at}: ${event.entry}` });
    const played = await play(event, log, system, book);
    log = played.log;
    await afterEntry?.(played);
  }
  return shareWeek(log, "baskets", book);
}
