/**
 * Excel stops at any place of any batch, with any code: the workbook is as it was, or as it was to be, or the person
 * is told that a part of it stands there. A few places by seed; a soak takes them all.
 *
 * @module-tag landing
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";

import { buildLog, editLog, repairFormulas, takeBack, upgradeLog } from "../../../src/excel/log-workbook.ts";
import { LogProblem } from "../../../src/excel/office-problems.ts";
import type { Receipt } from "../../../src/excel/record/receipt.ts";
import { jobLog } from "../../../src/joblog/job-log.ts";
import { layOut } from "../../../src/joblog/layout/lay-out.ts";
import type { LogContent } from "../../../src/joblog/model/definition.ts";
import type { EntryForm } from "../../../src/pane/record/entry-form.ts";
import { forms } from "../../../src/pane/record/forms.ts";
import { putFormulasBack, settleBath } from "../../../src/pane/settle/settle-bath.ts";
import type { Host } from "../../../src/workbench/host/create-host.ts";
import { firstTwoDays } from "../../demo/days/demo-week.ts";
import { runs } from "../../setup/random-runs.ts";
import { judgeOfThisFile } from "./judge/judged-excel.ts";
import { anyEntry } from "./log/any-entry.ts";
import { brokenOff, type Manner, type Place, placesIn, tripsOf } from "./log/break-off.ts";
import { contentOfThen, earlierLog, muchLater, shapeOfThen } from "./log/earlier-log.ts";
import { openWorkbook } from "./log/open-workbook.ts";
import { openLog } from "./log/prepared-log.ts";

const codes = [
  "GeneralException",
  "AccessDenied",
  "InvalidArgument",
  "InternalError",
  "ConnectionFailure",
  "Busy",
  "ItemNotFound",
] as const;

/** Whether a soak runs: then every place and every manner is taken. */
const all = runs(1).numRuns > 1;

/** Each judge takes other places. */
const seed = (fc.readConfigureGlobal().seed ?? 1) + (judgeOfThisFile() === "stand-in" ? 0 : 1);

const told = /Part of this may be in the log all the same|did not let it be taken back|still stands beneath/;

interface Count {
  injected: number;
  asItWas: number;
  asItWasToBe: number;
  between: number;
  told: number;
}

const counts = new Map<string, Count>();

function countOf(action: string): Count {
  const count = counts.get(action) ?? { injected: 0, asItWas: 0, asItWasToBe: 0, between: 0, told: 0 };
  counts.set(action, count);
  return count;
}

/** Tables as they stand, names and what every cell holds. */
function everything(host: Host): string {
  const { workbook } = host;
  const sheets = workbook.sheets.ids().map((sheet) => {
    const area = workbook.usedArea(sheet);
    const lines = Array.from({ length: area?.rows ?? 0 }, (_, row) =>
      Array.from({ length: area?.columns ?? 0 }, (_column, column) => [
        workbook.cells.formula({ sheet, row: (area?.row ?? 0) + row, column: (area?.column ?? 0) + column }),
        workbook.cells.value({ sheet, row: (area?.row ?? 0) + row, column: (area?.column ?? 0) + column }),
      ]),
    );
    return [workbook.sheets.nameOf(sheet), area?.row, area?.column, lines];
  });
  // A sheet's own number is another in each new workbook.
  const tables = workbook.tables
    .list()
    .map(({ name, area, headers }) => [name, { ...area, sheet: workbook.sheets.nameOf(area.sheet) }, headers]);
  return JSON.stringify([sheets, tables, [...workbook.names.list()].sort()]);
}

interface Action {
  readonly name: string;
  /** A workbook to act on, the same each time, and the act. */
  readonly open: () => Promise<{ readonly host: Host; readonly work: () => Promise<unknown> }>;
}

interface Trial {
  readonly place: Place;
  readonly code: string;
  readonly manner: Manner;
}

async function trialsOf(
  { open }: Action,
  wanted: number,
): Promise<{ readonly trials: readonly Trial[]; readonly done: string }> {
  const { host, work } = await open();
  const places = placesIn(await tripsOf(host, work));
  const done = everything(host);
  if (all)
    return {
      done,
      // A workbook that is as it was serves for the next trial, so those come first.
      trials: (["once", "for good"] as const).flatMap((manner) =>
        places.map((place, index) => ({ place, manner, code: codes[index % codes.length] ?? "GeneralException" })),
      ),
    };
  const trial = fc.record({
    place: fc.constantFrom(...places.filter(({ changes }) => changes > 0)),
    code: fc.constantFrom(...codes),
    manner: fc.constantFrom<Manner>("once", "for good"),
  });
  return { done, trials: fc.sample(trial, { ...runs(wanted), seed }) };
}

async function tryAll(action: Action, wanted: number): Promise<void> {
  const { trials, done } = await trialsOf(action, wanted);
  const count = countOf(action.name);
  let opened = await action.open();
  let before = everything(opened.host);
  for (const { place, code, manner } of trials) {
    const where = `${action.name}, ${JSON.stringify(place)}, ${code} ${manner}`;
    const failure = await brokenOff(opened.host, place, code, manner, opened.work);
    const after = everything(opened.host);
    count.injected += 1;
    if (failure !== undefined) expect(failure, where).toBeInstanceOf(LogProblem);
    const message = failure instanceof LogProblem ? failure.message : "";
    if (after === done && message === "") {
      count.asItWasToBe += 1;
    } else if (after === before) {
      count.asItWas += 1;
      expect(message, where).not.toBe("");
      if (manner === "once") expect(message, where).not.toMatch(told);
    } else if (after === done) {
      count.asItWasToBe += 1;
      expect(message, where).toMatch(told);
    } else {
      count.between += 1;
      expect(message, where).toMatch(told);
      if (manner === "once") expect(message, `${where} is not taken out`).toMatch(/still stands beneath/);
    }
    if (told.test(message)) count.told += 1;
    if (after === before) continue;
    opened = await action.open();
    before = everything(opened.host);
  }
}

/** A bath is released once it is closed. */
const closedBaths: LogContent = {
  ...firstTwoDays,
  rows: {
    ...firstTwoDays.rows,
    baths: (firstTwoDays.rows.baths ?? []).map((bath) => ({ ...bath, closed: 46448.7, closeReason: "spent" })),
  },
};

const logFor = ({ id }: EntryForm): LogContent => (id === "release" ? closedBaths : firstTwoDays);

const recording = (form: EntryForm): Action => ({
  name: `record: ${form.id}`,
  open: async () => {
    const host = await openLog(logFor(form));
    const edit = await anyEntry(form);
    return { host, work: () => editLog(edit) };
  },
});

const removing = (form: EntryForm): Action => ({
  name: `take back: ${form.id}`,
  open: async () => {
    const host = await openLog(logFor(form));
    const receipt: Receipt = await editLog(await anyEntry(form));
    return { host, work: () => takeBack(receipt) };
  },
});

const adopting: Action = {
  name: "adopt a batch",
  open: async () => {
    const host = await openLog(firstTwoDays);
    const baths = ["B-T2-0", "B-T2-1"].map((bath) => ({ table: "baths" as const, row: { bath, tank: "T2" } }));
    const readings = ["X1", "X2", "X3"].map((id) => ({
      table: "readings" as const,
      row: { id, bath: "B-T2-1", when: 46449, purpose: "check", ph: 11 },
    }));
    return { host, work: () => editLog({ rows: [...baths, ...readings], idsAsGiven: true }) };
  },
};

const nothingTyped: LogContent = { fields: {}, rows: {} };
const again = layOut(jobLog, { system: "US" }, nothingTyped);

const limits: Action = {
  name: "change limits of the shop",
  open: async () => {
    const host = await openLog(firstTwoDays);
    const fields = { permit: { before: undefined, after: "P-1" } };
    return { host, work: () => editLog({ fields }) };
  },
};

const settle = { bath: "B-T1-0301", by: "TF", now: "2027-03-04T09:00" };

const settling: Action = {
  name: "settle a bath",
  open: async () => {
    const host = await openLog(closedBaths);
    return { host, work: () => settleBath.run(settle) };
  },
};

const puttingBack: Action = {
  name: "put the formulas back",
  open: async () => {
    const host = await openLog(closedBaths);
    await settleBath.run(settle);
    return { host, work: () => putFormulasBack.run(settle) };
  },
};

const builds: readonly Action[] = [
  {
    name: "build",
    open: () => Promise.resolve({ host: openWorkbook(), work: () => buildLog(again) }),
  },
  {
    name: "add what is missing",
    open: async () => {
      const host = await openLog(firstTwoDays);
      await Excel.run(async (context) => {
        context.workbook.worksheets.getItem("Charts").delete();
        await context.sync();
      });
      return { host, work: () => buildLog(again) };
    },
  },
  {
    name: "repair formulas",
    open: async () => {
      const host = await openLog(firstTwoDays);
      return { host, work: () => repairFormulas(again) };
    },
  },
  {
    name: "upgrade",
    open: async () => {
      const earlier = earlierLog(muchLater);
      const host = openWorkbook();
      await buildLog(layOut(earlier, { system: "US" }, contentOfThen(earlier, firstTwoDays)));
      const released = { [earlier.version]: shapeOfThen(earlier) };
      return { host, work: () => upgradeLog(layOut({ ...jobLog, released }, { system: "US" }, nothingTyped)) };
    },
  },
];

/** Without a soak a few of them, others for another seed. */
function some<Item>(items: readonly Item[], count: number): readonly Item[] {
  if (all) return items;
  const [picked = []] = fc.sample(fc.shuffledSubarray([...items], { minLength: count, maxLength: count }), {
    ...runs(1),
    seed,
  });
  return picked;
}

describe("a batch that breaks off", () => {
  it.each(some(forms, 1).map((form) => [form.id, form] as const))(
    "leaves nothing of the entry %s, or says so",
    async (_id, form) => {
      await tryAll(recording(form), 2);
    },
  );

  it.each(some(forms, 1).map((form) => [form.id, form] as const))(
    "leaves the entry %s, or nothing of it, when it is taken back, or says so",
    async (_id, form) => {
      await tryAll(removing(form), 1);
    },
  );

  it.each(some([adopting, limits, settling, puttingBack], 1).map((action) => [action.name, action] as const))(
    "leaves all or nothing of it, or says so: %s",
    async (_name, action) => {
      await tryAll(action, 2);
    },
  );

  it.each(some(builds, 1).map((action) => [action.name, action] as const))(
    "leaves the workbook as it was, or says so: %s",
    async (_name, action) => {
      await tryAll(action, 1);
    },
  );

  it("was tried", () => {
    const sum = [...counts.values()].reduce((total, { injected }) => total + injected, 0);
    expect(sum).toBeGreaterThan(4);
    if (all) console.info([...counts].map(([action, count]) => `${action}: ${JSON.stringify(count)}`).join("\n"));
  });
});
