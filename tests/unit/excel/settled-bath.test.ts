/** A closed bath's rows hold values instead of formulas by a person's choice, whole or not at all, and back. */
import { beforeEach, describe, expect, it } from "vitest";

import { checkedLog } from "../../../src/advice/checked-log.ts";
import { buildLog, editLog, readLog, repairFormulas, upgradeLog } from "../../../src/excel/log-workbook.ts";
import { LogProblem } from "../../../src/excel/office-problems.ts";
import type { RowChange } from "../../../src/excel/record/cell-changes.ts";
import type { LogEdit } from "../../../src/excel/record/log-edit.ts";
import { callingColumns, settledTables } from "../../../src/joblog/formula/calling-columns.ts";
import { jobLog } from "../../../src/joblog/job-log.ts";
import { layOut } from "../../../src/joblog/layout/lay-out.ts";
import type { RowValue } from "../../../src/joblog/model/definition.ts";
import { headerOf } from "../../../src/joblog/model/headers.ts";
import type { LogSnapshot } from "../../../src/joblog/model/log-snapshot.ts";
import { putFormulasBack, settleBath } from "../../../src/pane/settle/settle-bath.ts";
import type { Host } from "../../../src/workbench/host/create-host.ts";
import { firstTwoDays } from "../../demo/days/demo-week.ts";
import { brokenOff, placesIn, tripsOf } from "./log/break-off.ts";
import { moment } from "./log/demo-log.ts";
import { beforeTrip, deleteRowOf, swapRows, typeAt } from "./log/in-between.ts";
import { openWorkbook } from "./log/open-workbook.ts";
import { openLog } from "./log/prepared-log.ts";
import { daysWithReadings, stillLog } from "./log/still-log.ts";

const bath = "B-T1-0301";
const other = "B-T1-0303";
const settle = { bath, by: "TF", now: "2027-03-04T09:00" };

/** The demo days' bath, closed and released, and one more that is in use. */
const closed = {
  fields: firstTwoDays.fields,
  rows: {
    ...firstTwoDays.rows,
    baths: (firstTwoDays.rows.baths ?? []).flatMap((row) => [
      { ...row, dropAllowed: undefined, closed: moment("2027-03-03T08:00"), closeReason: "soil" },
      { ...row, bath: other, opened: moment("2027-03-03T09:00") },
    ]),
    readings: [
      ...(firstTwoDays.rows.readings ?? []),
      { id: "R900", bath: other, when: moment("2027-03-03T10:00"), purpose: "check", ph: 11.2, temperature: 77 },
    ],
    meterChecks: [
      {
        id: "M001",
        when: moment("2027-03-01T06:00"),
        meter: "M-1",
        buffer1: 7,
        asFound1: 7,
        buffer2: 10,
        asFound2: 10,
      },
    ],
    releases: [
      {
        id: "L001",
        bath,
        when: moment("2027-03-03T09:00"),
        volume: 20,
        ph: 10.9,
        temperature: 77,
        acid: "citric",
        target: 8.5,
      },
      { id: "L002", bath: other, when: moment("2027-03-05T09:00"), volume: 20, ph: 10.9, acid: "citric", target: 8.5 },
    ],
  },
} as const;

const allowDrop = (before: RowValue | undefined): RowChange => ({
  table: "baths",
  position: 0,
  cells: { bath: { before: bath, after: bath }, dropAllowed: { before, after: 0.9 } },
});

let host: Host;
let had: Readonly<Record<string, number>>;

beforeEach(async () => {
  host = await openLog(closed, "US", [closed]);
  had = formulas();
}, 120_000);

async function log(): Promise<LogSnapshot> {
  const read = await readLog();
  if (read === undefined) throw new Error("no log");
  return read;
}

/** What every cell of the tables that a settling touches holds, formulas as formulas. */
function contents(): Readonly<Record<string, readonly (readonly unknown[])[]>> {
  return Object.fromEntries(
    settledTables(jobLog).map(({ name }) => {
      const area = host.workbook.tables.named(name)?.area;
      if (area === undefined) throw new Error(`There is no table ${name}.`);
      const { sheet, row, column, rows, columns } = area;
      return [
        name,
        Array.from({ length: rows }, (_, line) =>
          Array.from({ length: columns }, (_one, at) =>
            host.workbook.cells.formula({ sheet, row: row + line, column: column + at }),
          ),
        ),
      ];
    }),
  );
}

/** How many cells that call functions hold a formula, by table and bath. */
function formulas(): Readonly<Record<string, number>> {
  const counts: Record<string, number> = {};
  const held = contents();
  for (const table of settledTables(jobLog)) {
    const [headers = [], ...lines] = held[table.name] ?? [];
    const at = (id: string): number => {
      const column = table.columns.find((one) => one.id === id);
      return column === undefined ? -1 : headers.indexOf(headerOf(column, "US"));
    };
    for (const line of lines) {
      const key = `${table.id} ${String(line[at("bath")])}`;
      const calling = [...callingColumns(table, jobLog)].filter((id) => String(line[at(id)]).startsWith("="));
      counts[key] = (counts[key] ?? 0) + calling.length;
    }
  }
  return counts;
}

function columnOf(table: "readings", id: string): number {
  const { columns = [] } = settledTables(jobLog).find((one) => one.id === table) ?? {};
  return columns.findIndex((one) => one.id === id);
}

/** All that the log says but for the note of the settling. */
function figures({ rows, fields }: LogSnapshot): unknown {
  const baths = rows.baths.map(({ cells, ...row }) => ({
    ...row,
    cells: { ...cells, settledAt: undefined, settledBy: undefined },
  }));
  return { fields, rows: { ...rows, baths } };
}

const problemOf = async (work: Promise<unknown>): Promise<string> =>
  work.then(
    () => "",
    (error: unknown) => {
      if (error instanceof LogProblem) return `${error.message} ${error.remedy}`;
      throw error;
    },
  );

it("refuses a bath of more rows than Excel on the web takes at once", { tags: "landing" }, async () => {
  const { fields, rows } = daysWithReadings(301);
  openWorkbook();
  await buildLog(
    stillLog({ fields, rows: { ...rows, baths: (rows.baths ?? []).map((row) => ({ ...row, closed: 46460 })) } }),
  );
  const before = await log();
  expect(await problemOf(settleBath.run(settle))).toMatch(/has 30\d rows, more than the 300 .* Nothing was settled/);
  expect(await log()).toEqual(before);
});

describe("settling a closed bath", () => {
  it("leaves every figure of the log as it was, without a call in its rows", async () => {
    const before = await log();
    expect(checkedLog(before).anyUnlike()).toBeUndefined();
    expect(await settleBath.run(settle)).toContain(`Bath ${bath} is settled`);
    const after = await log();
    expect(figures(after)).toEqual(figures(before));
    expect(checkedLog(after).anyUnlike()).toBeUndefined();
    expect(after.rows.baths[0]?.cells).toMatchObject({ settledAt: moment("2027-03-04T09:00"), settledBy: "TF" });
    const has = formulas();
    for (const table of settledTables(jobLog)) {
      const key = `${table.id} ${bath}`;
      expect(had[key], key).toBeGreaterThan(0);
      // Rows that are typed beneath a table take the formulas of its last one.
      const isLast = table.id === "additions";
      expect(has[key], key).toBe(isLast ? callingColumns(table, jobLog).size : 0);
      expect(has[`${table.id} ${other}`]).toBe(had[`${table.id} ${other}`]);
    }
  });

  it("is undone to the cell by putting the formulas back", async () => {
    const before = contents();
    await settleBath.run(settle);
    expect(contents()).not.toEqual(before);
    expect(await putFormulasBack.run({ bath })).toContain("follows its formulas again");
    expect(contents()).toEqual(before);
  });

  it("refuses a bath in use, one that is settled, and one that is gone", async () => {
    expect(await problemOf(settleBath.run({ ...settle, bath: other }))).toContain("is not closed");
    expect(await problemOf(settleBath.run({ ...settle, bath: "B-T9" }))).toContain("no bath B-T9 any more");
    await settleBath.run(settle);
    expect(await problemOf(settleBath.run(settle))).toContain("is settled already");
  });

  it.each(["#BUSY!", "former value"] as const)(
    "refuses while functions have not answered and cells show %s",
    async (until) => {
      const allowed = (await log()).rows.baths[0]?.cells.dropAllowed;
      host.answerLate({ until, seed: 1 });
      await editLog({ changes: [allowDrop(allowed)] });
      expect(await problemOf(settleBath.run(settle))).toContain("Nothing was settled");
      host.workbook.answers.answerAll();
      expect(formulas()).toEqual(had);
      expect(await settleBath.run(settle)).toContain("is settled");
      host.workbook.answers.answerAll();
      expect(checkedLog(await log()).anyUnlike()).toBeUndefined();
    },
  );

  it("does not take over an error", async () => {
    await editLog({
      changes: [{ table: "releases", position: 0, cells: { ph: { before: 10.9, after: 19 } } }],
    });
    const before = contents();
    expect(await problemOf(settleBath.run(settle))).toMatch(/on the sheet Release.* shows #.*Nothing was settled/);
    expect(contents()).toEqual(before);
  });
});

const changes: Readonly<Record<string, (read: LogSnapshot) => LogEdit>> = {
  "the bath's drop allowed": ({ rows }) => ({ changes: [allowDrop(rows.baths[0]?.cells.dropAllowed)] }),
  "the shop's usual drop": ({ fields }) => ({ fields: { usualDrop: { before: fields.usualDrop, after: 0.9 } } }),
  "a meter check that reaches back": () => ({
    rows: [
      {
        table: "meterChecks",
        row: { when: moment("2027-03-05T06:00"), meter: "M-1", buffer1: 7, asFound1: 7.1, buffer2: 10, asFound2: 10.3 },
      },
    ],
  }),
};

describe("a change after that", { tags: "landing" }, () => {
  it.each(Object.entries(changes))(
    "of %s is told with the bath, and the formulas give the new figures",
    async (_what, change) => {
      await settleBath.run(settle);
      expect(checkedLog(await log()).typedOver()).toBeUndefined();
      await editLog(change(await log()));
      expect(checkedLog(await log()).typedOver()?.settledBath).toBe(bath);
      await putFormulasBack.run({ bath });
      const after = checkedLog(await log());
      expect(after.typedOver()).toBeUndefined();
      expect(after.anyUnlike()).toBeUndefined();
    },
  );
});

describe("writing the formulas of a log with a settled bath anew", { tags: "landing" }, () => {
  const plan = layOut(jobLog, { system: "US" }, { fields: {}, rows: {} });

  it("gives the bath its formulas back, says so, and calls none of its values typed over", async () => {
    const before = contents();
    await settleBath.run(settle);
    const { unsettled, replaced } = await repairFormulas(plan);
    expect(unsettled).toEqual([bath]);
    expect(replaced).toEqual([]);
    expect(contents()).toEqual(before);
  });

  it("lists what else was typed over a formula there", async () => {
    await settleBath.run(settle);
    const verdict = columnOf("readings", "verdict");
    typeAt(host, "Readings", 3, verdict, "hold on");
    const { replaced } = await repairFormulas(plan);
    expect(replaced).toEqual([{ table: "Readings", header: "Verdict", row: "R004", value: "hold on" }]);
  });

  it("leaves it settled where no formula changed", async () => {
    await settleBath.run(settle);
    const before = contents();
    expect(await upgradeLog(plan)).toMatchObject({ unsettled: [], rewritten: 0 });
    expect(contents()).toEqual(before);
  });

  it("gives all of them back where one changed", async () => {
    const before = contents();
    await settleBath.run(settle);
    const last = (host.workbook.tables.named("Readings")?.area.rows ?? 0) - 2;
    typeAt(host, "Readings", last, columnOf("readings", "phCorrected"), "=1+1");
    expect((await upgradeLog(plan)).unsettled).toEqual([bath]);
    expect(contents()).toEqual(before);
  });

  it("leaves it settled where Excel stops", async () => {
    await settleBath.run(settle);
    const before = contents();
    const saved = host.save();
    const places = placesIn(await tripsOf(host, () => repairFormulas(plan))).filter(({ changes }) => changes > 0);
    const late = places.at(-2) ?? { trip: 0, changes: 0 };
    host.restore(saved);
    const failure = await brokenOff(host, late, "GeneralException", "once", () => repairFormulas(plan));
    expect(failure).toBeInstanceOf(LogProblem);
    expect(contents()).toEqual(before);
  });
});

const rivals: Readonly<Record<string, () => void>> = {
  "deletes a row above": () => {
    deleteRowOf(host, "Readings", 0);
  },
  "sorts two rows": () => {
    swapRows(host, "Readings", 2, 6, host.workbook.tables.named("Readings")?.headers.length ?? 0);
  },
  "types another pH": () => {
    typeAt(host, "Readings", 3, 4, "10.7");
  },
};

const works = {
  settling: {
    prepare: () => Promise.resolve(""),
    act: () => settleBath.run(settle),
    meanwhile: Object.keys(rivals),
  },
  "putting back": {
    prepare: () => settleBath.run(settle),
    act: () => putFormulasBack.run({ bath }),
    meanwhile: ["deletes a row above"],
  },
} as const;

describe.each(Object.entries(works))("%s", { tags: "landing" }, (_name, { prepare, act, meanwhile }) => {
  // `broken-batches.test.ts` takes others by seed, and all of them in a soak.
  it("is whole or not there, whether Excel stops early, in the middle or late", async () => {
    await prepare();
    const before = contents();
    const saved = host.save();
    const places = placesIn(await tripsOf(host, act)).filter(({ changes }) => changes > 0);
    const done = contents();
    expect(done).not.toEqual(before);
    expect(places.length).toBeGreaterThan(3);
    for (const place of [places[0], places[Math.floor(places.length / 2)], places.at(-2)]) {
      if (place === undefined) throw new Error("There are few places.");
      host.restore(saved);
      await brokenOff(host, place, "GeneralException", "once", act);
      const now = JSON.stringify(contents());
      expect([JSON.stringify(before), JSON.stringify(done)], JSON.stringify(place)).toContain(now);
    }
  });

  it.each(meanwhile)("hits no other row while another person %s", async (rival) => {
    await prepare();
    const stop = beforeTrip(host, 3, rivals[rival] ?? expect.fail(rival));
    const stood = formulas();
    await problemOf(act());
    stop();
    const has = formulas();
    for (const key of Object.keys(stood).filter((one) => one.endsWith(other))) expect(has[key], key).toBe(stood[key]);
    const { rows } = await log();
    const own = Object.entries(has).filter(([key]) => key.startsWith("readings") && key.endsWith(bath));
    // All of it or nothing: the note and the rows say the same.
    const isSettled = rows.baths[0]?.cells.settledAt !== undefined;
    expect(own.map(([, count]) => count === 0)).toEqual([isSettled]);
  });
});
