/** What the pane says of a log, and whether it says the same while Excel has not finished. */
import { bathIds } from "../../../src/advice/bath-values.ts";
import { checkedLog } from "../../../src/advice/checked-log.ts";
import { nextStep } from "../../../src/advice/next-step/next-step.ts";
import { forecast } from "../../../src/advice/readings/forecast.ts";
import { trendOf } from "../../../src/advice/readings/trend-points.ts";
import type { Noting } from "../../../src/advice/unlike-cells.ts";
import { waitingSentence, workingOut } from "../../../src/advice/waiting.ts";
import { readLog } from "../../../src/excel/log-workbook.ts";
import type { LogSnapshot } from "../../../src/joblog/model/log-snapshot.ts";
import { sharePlan } from "../../../src/pane/claims/share-plan.ts";
import { shareResult } from "../../../src/pane/claims/share-result.ts";
import { demoWeek } from "../../../src/pane/demo/week.ts";
import { figuresOf } from "../../../src/pane/now/bath-figures.tsx";
import { sharesOf } from "../../../src/pane/now/claim-shares.tsx";
import type { Draft, EntryForm } from "../../../src/pane/record/entry-form.ts";
import { fillForm } from "../../../src/pane/record/fill-form.ts";
import { formOf, forms } from "../../../src/pane/record/forms.ts";
import { stockSentences } from "../../../src/pane/shop/shop-view.tsx";
import type { Host } from "../../../src/workbench/host/create-host.ts";
import { serial } from "./played-week.ts";

/** Sentences by where they stand; those that wait say so. */
type Said = ReadonlyMap<string, string>;

interface Look {
  readonly log: LogSnapshot;
  readonly noting: Noting;
}

/** Where nothing is checked, as where functions answer at once. */
const unchecked: Noting = (work) => ({ answer: work(), unlike: [] });

/** A moment of the week: what is typed next, and which of the other forms are opened besides. */
interface Moment {
  readonly now: string;
  readonly bath: string | undefined;
  readonly next: { readonly form: EntryForm; readonly draft: Draft } | undefined;
  readonly opened: readonly EntryForm[];
}

function formSays(
  look: Look,
  moment: Moment,
  form: EntryForm,
  draft: Draft,
  put: (at: string, said: string) => void,
): void {
  const { now, bath } = moment;
  const { answer, unlike } = look.noting(() => fillForm(form, draft, { log: look.log, system: "US", bath, now }));
  const { findings, ...meaning } = answer.meaning;
  const where = `${form.id}${Object.keys(draft).length === 0 ? "" : ", filled in"}`;
  put(
    `${where}: findings`,
    unlike.length > 0 && findings.length > 0 ? waitingSentence(unlike, undefined) : JSON.stringify(findings),
  );
  // What is typed is never held back, so what is proposed, asked and written does not wait.
  put(`${where}: values`, JSON.stringify(answer.values));
  put(`${where}: problems`, JSON.stringify(answer.problems));
  put(`${where}: asked and written`, JSON.stringify(meaning));
}

function allSaid(look: Look, moment: Moment): Said {
  const { log, noting } = look;
  const said = new Map<string, string>();
  const put = (at: string, words: string): void => {
    said.set(at, words);
  };
  const say = (at: string, work: () => unknown): void => {
    const { answer, unlike } = noting(work);
    put(at, unlike.length > 0 ? waitingSentence(unlike, undefined) : JSON.stringify([answer]));
  };
  for (const bath of bathIds(log)) {
    say(`${bath}: next step`, () => nextStep(log, bath, "US", serial(moment.now)));
    say(`${bath}: what comes`, () => forecast(log, bath, "US"));
    say(`${bath}: figures`, () => figuresOf(log, bath, "US"));
    say(`${bath}: trend`, () => trendOf(log, bath));
    say(`${bath}: shares`, () => sharesOf(log, bath));
    say(`${bath}: who pays`, () => shareResult(log, bath));
    say(`${bath}: share out`, () => sharePlan(log, bath, "baskets"));
  }
  say("stock", () => stockSentences({ log, system: "US", now: moment.now }));
  for (const form of moment.opened) formSays(look, moment, form, {}, put);
  if (moment.next !== undefined) formSays(look, moment, moment.next.form, moment.next.draft, put);
  return said;
}

export interface Comparison {
  /** Looks at a sheet on which something had not been answered. */
  looks: number;
  sentences: number;
  waiting: number;
  /** Sentences that would have been wrong, had the pane gone by what cells show. */
  averted: number;
  readonly wrong: string[];
}

/** After every how many writes the pane looks, how often before all is answered, and how many forms are opened each time. */
export interface Pace {
  readonly every: number;
  readonly looks: number;
  readonly forms: number;
}

async function presentLog(): Promise<LogSnapshot> {
  const log = await readLog();
  if (log === undefined) throw new Error("The workbook holds no log.");
  return log;
}

/**
 * Reads the log after each write of the week as the pane would: several times while functions answer, then once more.
 * What the pane says at any of those looks must be what it says in the end, or that it is working it out; what it says in
 * the end, what it would say if functions answered at once.
 */
export function comparing(
  host: Host,
  pace: Pace,
): { readonly present: () => Promise<LogSnapshot>; readonly found: Comparison } {
  const found: Comparison = { looks: 0, sentences: 0, waiting: 0, averted: 0, wrong: [] };
  let written = 0;
  const present = async (): Promise<LogSnapshot> => {
    const event = demoWeek[written];
    const moment: Moment = {
      now: event?.at ?? "2027-03-12T17:00",
      bath: event?.bath,
      next: event === undefined ? undefined : { form: formOf(event.entry), draft: event.draft },
      opened: Array.from({ length: pace.forms }, (_, index) => forms[(written + index * 4) % forms.length]).filter(
        (form) => form !== undefined,
      ),
    };
    const at = `before ${moment.now}`;
    written += 1;
    const early: { readonly said: Said; readonly raw: Said | undefined }[] = [];
    const { answers } = host.workbook;
    if (written % pace.every !== 0) {
      answers.answerAll();
      return presentLog();
    }
    for (let look = 0; look < pace.looks && !answers.areComplete; look += 1) {
      const read = await presentLog();
      const first = early.length === 0;
      early.push({
        said: allSaid(checkedLog(read), moment),
        raw: first ? allSaid({ log: read, noting: unchecked }, moment) : undefined,
      });
      answers.answerSome();
    }
    answers.answerAll();
    const log = await presentLog();
    const due = allSaid({ log, noting: unchecked }, moment);
    const last = allSaid(checkedLog(log), moment);
    const compare = (said: Said, mayWait: boolean): void => {
      if (said.size !== due.size) found.wrong.push(`${at}: ${String(said.size)} sentences, ${String(due.size)} due`);
      for (const [where, words] of said) {
        found.sentences += 1;
        if (words === due.get(where)) continue;
        if (mayWait && words === workingOut) found.waiting += 1;
        else found.wrong.push(`${at}, ${where}: ${words}, and then ${due.get(where) ?? "nothing"}`);
      }
    };
    for (const { said, raw } of early) {
      found.looks += 1;
      compare(said, true);
      for (const [where, words] of raw ?? []) if (words !== due.get(where)) found.averted += 1;
    }
    compare(last, false);
    return log;
  };
  return { present, found };
}
