/** @module-tag landing */
import { afterEach, beforeEach, describe, expect, it } from "vitest";

import { editLog, readLog, takeBack } from "../../../src/excel/log-workbook.ts";
import type { LogSnapshot } from "../../../src/joblog/model/log-snapshot.ts";
import type { Host } from "../../../src/workbench/host/create-host.ts";
import { firstTwoDays } from "../../demo/days/demo-week.ts";
import { beforeTrip, deleteRowOf, insertColumnIn, insertSheetRowAbove, swapRows, typeAt } from "./log/in-between.ts";
import { openLog } from "./log/prepared-log.ts";

let host: Host;
let stop = (): void => undefined;

beforeEach(async () => {
  host = await openLog(firstTwoDays);
}, 90_000);

afterEach(() => {
  stop();
});

async function log(): Promise<LogSnapshot> {
  const read = await readLog();
  if (read === undefined) throw new Error("no log");
  return read;
}

/** The second trip is the one that writes: what happens before it, the first has not seen. */
const meanwhile = (act: () => void): void => {
  stop = beforeTrip(host, 2, act);
};

const reading = (id: string) => ({
  table: "readings" as const,
  row: { id, bath: "B-T1-0301", when: 46449.4, purpose: "check", ph: 11, temperature: 77, note: `of ${id}` },
});

const notesById = ({ rows }: LogSnapshot) =>
  Object.fromEntries(rows.readings.map(({ cells }) => [String(cells.id), cells.note]));

const claims = ({ rows }: LogSnapshot) => rows.claims.map(({ cells }) => cells.claim);

/** Tables as they stand, each with its rows. */
const everything = () => ({
  tables: host.workbook.tables.list().map(({ name, area }) => [name, area.rows, area.columns]),
  sheets: host.workbook.sheets.ids().map((sheet) => host.values(host.workbook.sheets.nameOf(sheet))),
});

describe("a new row while another person writes", () => {
  it("goes beneath the last claim though a sheet row is inserted above", async () => {
    const before = claims(await log());
    meanwhile(() => {
      insertSheetRowAbove(host, "Claims");
    });
    const receipt = await editLog({ rows: [{ table: "claims", row: { claim: "D-0999" } }] });
    expect(claims(await log())).toEqual([...before, "D-0999"]);
    await takeBack(receipt);
    expect(claims(await log())).toEqual(before);
  });

  it("leaves no gap where a row above is deleted", async () => {
    const before = claims(await log());
    meanwhile(() => {
      deleteRowOf(host, "Claims", 0);
    });
    await editLog({ rows: [{ table: "claims", row: { claim: "D-0999" } }] });
    const { rows } = await log();
    expect(rows.claims.map(({ cells, position }) => [position, cells.claim])).toEqual(
      [...before.slice(1), "D-0999"].map((claim, position) => [position, claim]),
    );
  });

  it("goes beneath a row that was added in its place, and takes another number where that one has its number", async () => {
    const { rows } = await log();
    const end = rows.readings.length;
    const [last = ""] = rows.readings.slice(-1).map(({ cells }) => String(cells.id));
    const next = `R${String(Number(last.slice(1)) + 1).padStart(3, "0")}`;
    meanwhile(() => {
      typeAt(host, "Readings", end, 0, next);
      typeAt(host, "Readings", end, 1, "B-T1-0301");
    });
    const receipt = await editLog({ rows: [reading(next)] });
    const after = await log();
    expect(after.rows.readings.slice(end).map(({ cells }) => [cells.id, cells.bath, cells.note])).toEqual([
      [next, "B-T1-0301", undefined],
      [`R${String(Number(last.slice(1)) + 2).padStart(3, "0")}`, "B-T1-0301", `of ${next}`],
    ]);
    await takeBack(receipt);
    expect((await log()).rows.readings.map(({ cells }) => cells.id)).toEqual([
      ...rows.readings.map(({ cells }) => cells.id),
      next,
    ]);
  });

  it("finds its columns where another person moves them, and writes nothing where one is renamed", async () => {
    meanwhile(() => {
      insertColumnIn(host, "Readings", 2);
    });
    await editLog({ rows: [reading("R901")] });
    stop();
    expect((await log()).rows.readings.at(-1)?.cells).toMatchObject({ id: "R901", ph: 11, note: "of R901" });
    const before = everything();
    meanwhile(() => {
      typeAt(host, "Readings", -1, 1, "Our tank");
    });
    await expect(editLog({ rows: [reading("R902")] })).rejects.toThrow(/column "Bath".* is missing or renamed/);
    stop();
    typeAt(host, "Readings", -1, 1, "Bath");
    expect(everything()).toEqual(before);
  });

  it("writes nothing of an entry whose other row another person has changed", async () => {
    const before = everything();
    meanwhile(() => {
      typeAt(host, "Additions", 0, 0, "A099");
    });
    const edit = editLog({
      rows: [reading("R901")],
      fills: [{ table: "additions", key: "A001", cells: { note: "foam" } }],
    });
    await expect(edit).rejects.toThrow(
      /row A001 of table Additions .* changed or deleted meanwhile. Nothing was written/,
    );
    stop();
    typeAt(host, "Additions", 0, 0, "A001");
    expect(everything()).toEqual(before);
  });

  /** Puts a column in before each trip for which `due` is true. */
  const insertColumns = (due: (trip: number) => boolean): void => {
    const execute = host.session.execute.bind(host.session);
    let trips = 0;
    host.session.execute = (steps) => {
      if (steps.length > 0) trips += 1;
      if (steps.length > 0 && due(trips)) insertColumnIn(host, "Readings", 2);
      execute(steps);
    };
    stop = () => {
      host.session.execute = execute;
    };
  };

  it("says that somebody was faster where rows change each time", async () => {
    const before = (await log()).rows.readings.length;
    // Plan, write, look at what was hit instead, put it back.
    insertColumns((trip) => trip % 4 === 2);
    await expect(editLog({ rows: [reading("R901")] })).rejects.toThrow(/Somebody else was faster/);
    stop();
    expect((await log()).rows.readings).toHaveLength(before);
  });

  it("tells of a part where rows change while it is put back, too", async () => {
    insertColumns((trip) => trip % 2 === 0);
    await expect(editLog({ rows: [reading("R901")] })).rejects.toThrow(
      /Another person is changing the same rows.*Part of this may be in the log all the same: look at the sheet Readings/,
    );
  });

  it("refuses a claim that another person has entered meanwhile", async () => {
    const end = claims(await log()).length;
    meanwhile(() => {
      typeAt(host, "Claims", end, 0, "d-0999");
    });
    const edit = editLog({ rows: [{ table: "claims", row: { claim: "D-0999" } }] });
    await expect(edit).rejects.toThrow(/Claims \(sheet .*\) holds a row D-0999 by now; somebody was faster/);
    expect(claims(await log()).slice(end)).toEqual(["d-0999"]);
  });
});

describe("an earlier row while another person writes", () => {
  const width = () => host.workbook.tables.named("Readings")?.headers.length ?? 0;
  const correction = async () => {
    const held = (await log()).rows.readings[1]?.cells;
    return editLog({
      changes: [
        {
          table: "readings",
          position: 1,
          cells: { id: { before: "R002", after: "R002" }, note: { before: held?.note, after: "foam" } },
        },
      ],
    });
  };

  it("is corrected wherever sorting has put it", async () => {
    const before = notesById(await log());
    // Its own look at the log is a trip, too.
    stop = beforeTrip(host, 3, () => {
      swapRows(host, "Readings", 1, 2, width());
    });
    const receipt = await correction();
    stop();
    const after = await log();
    expect(after.rows.readings.map(({ cells }) => cells.id).slice(1, 3)).toEqual(["R003", "R002"]);
    expect(notesById(after)).toEqual({ ...before, R002: "foam" });
    deleteRowOf(host, "Readings", 0);
    await takeBack(receipt);
    expect(notesById(await log())["R002"]).toBe(before["R002"]);
  });

  it("is left alone where another person has deleted it", async () => {
    const before = notesById(await log());
    stop = beforeTrip(host, 3, () => {
      deleteRowOf(host, "Readings", 1);
    });
    await expect(correction()).rejects.toThrow(/Reading \(Readings\) was changed since it was read/);
    const { R002: _gone, ...rest } = before;
    expect(notesById(await log())).toEqual(rest);
  });
});

describe("taking back while another person writes", () => {
  it("takes out its own row where one above is deleted", async () => {
    const before = notesById(await log());
    const receipt = await editLog({ rows: [reading("R901")] });
    await editLog({ rows: [reading("R902")] });
    meanwhile(() => {
      deleteRowOf(host, "Readings", 0);
    });
    await takeBack(receipt);
    const { R001: _gone, ...rest } = before;
    expect(notesById(await log())).toEqual({ ...rest, R902: "of R902" });
  });

  it("cuts no row that another person has added at the end", async () => {
    const { rows } = await log();
    const end = rows.readings.length;
    const receipt = await editLog({ rows: [reading("R901")] });
    meanwhile(() => {
      typeAt(host, "Readings", end + 1, 0, "R777");
    });
    await takeBack(receipt);
    expect((await log()).rows.readings.slice(end).map(({ cells }) => cells.id)).toEqual(["R777"]);
  });

  it("is refused, with all as it was, where its row is changed meanwhile", async () => {
    const end = (await log()).rows.readings.length;
    const receipt = await editLog({ rows: [reading("R901")] });
    meanwhile(() => {
      typeAt(host, "Readings", end, 1, "B-T2-0301");
    });
    await expect(takeBack(receipt)).rejects.toThrow(/was changed since/);
    expect((await log()).rows.readings.at(-1)?.cells).toMatchObject({ id: "R901", bath: "B-T2-0301", ph: 11 });
  });
});
