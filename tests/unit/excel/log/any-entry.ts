import { readLog } from "../../../../src/excel/log-workbook.ts";
import type { LogEdit } from "../../../../src/excel/record/log-edit.ts";
import type { EntryForm } from "../../../../src/pane/record/entry-form.ts";
import { randomDraft } from "../../../property/week/random-draft.ts";

/** What the first draft by seed writes that the form takes, on the open log. */
export async function anyEntry(form: EntryForm): Promise<LogEdit> {
  const log = await readLog();
  if (log === undefined) throw new Error("There is no log.");
  const context = { log, system: "US", bath: "B-T1-0301", now: "2027-03-02T17:00" } as const;
  for (let seed = 1; seed < 2000; seed += 1) {
    const { meaning, problems } = randomDraft(form, context, seed);
    const { rows, fills = [], changes = [] } = meaning;
    const writes = rows.length + fills.length + changes.length > 0;
    if (writes && problems.length === 0 && meaning.blocked === undefined) return meaning;
  }
  throw new Error(`No draft of ${form.id} is taken.`);
}
