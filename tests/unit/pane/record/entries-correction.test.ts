import { beforeAll, describe, expect, test } from "vitest";

import { findRow } from "../../../../src/advice/bath-facts.ts";
import { editLog, readLog, takeBack } from "../../../../src/excel/log-workbook.ts";
import type { AnyChange } from "../../../../src/excel/record/cell-changes.ts";
import type { LogSnapshot } from "../../../../src/joblog/model/log-snapshot.ts";
import type { Draft } from "../../../../src/pane/record/entry-form.ts";
import type { FilledForm } from "../../../../src/pane/record/fill-form.ts";
import { correctionEntry } from "../../../../src/pane/record/forms/correction/correction-entry.ts";
import { rowNames } from "../../../../src/pane/record/forms/correction/correction-rows.ts";
import { moment, openDemoLog } from "../../excel/log/demo-log.ts";
import { bath, fill, said, withCells } from "./entry-forms.ts";

const items = [
  { id: "I001", claim: "D-0427", item: "oak chair", quantity: 1, route: "bath", bath, outcome: "restored" },
];
const loads = [
  { id: "L001", bath, claim: "D-0427", when: moment("2027-03-01T10:05"), baskets: 2, soil: "heavy", minutes: 10 },
];

let log: LogSnapshot;

beforeAll(async () => {
  log = await openDemoLog("2027-03-02T17:00", { items, loads });
}, 120_000);

async function present(): Promise<LogSnapshot> {
  const read = await readLog();
  if (read === undefined) throw new Error("The workbook holds no log.");
  return read;
}

/** Chooses the row whose name begins so and types over some of its columns. */
function correct(
  kind: string,
  start: string,
  typed: Readonly<Record<string, string>>,
  why = "misread",
  given = log,
): FilledForm {
  const entryRow = rowNames(given, { entryTable: kind }).find((name) => name.startsWith(start)) ?? "";
  const chosen: Draft = { entryTable: kind, entryRow };
  const keys = fill(correctionEntry, given, chosen).groups.flatMap(({ fields }) => fields.map(({ key }) => key));
  const own = Object.entries(typed).map(([id, text]) => [keys.find((key) => key.endsWith(` ${id}`)) ?? id, text]);
  return fill(correctionEntry, given, { ...chosen, ...(Object.fromEntries(own) as Draft), why });
}

const problemsOf = (filled: FilledForm): readonly string[] => filled.problems.map(({ message }) => message);

/** All that the form says of a draft; it always says something. */
const inWords = (filled: FilledForm): string => [...problemsOf(filled), said(filled)].join("\n");

describe("the correction form", () => {
  test("offers the kinds that the log holds, and their rows, the last first", () => {
    expect(fill(correctionEntry, log, {}).groups[0]?.fields[0]?.choices).toEqual([
      "Reading",
      "Addition",
      "Load",
      "Item",
      "Bench test",
      "Bath",
      "Cost line",
    ]);
    const names = rowNames(log, { entryTable: "Reading" });
    expect(names).toHaveLength(log.rows.readings.length);
    expect(names.at(-1)).toMatch(/^R001 · Mar 1, .* · B-T1-0301 · 11\.4/);
  });

  test("writes only what differs, and the note keeps what stood there, when and why", async () => {
    const filled = correct("Reading", "R001", { temperature: "77,5" });
    expect(problemsOf(filled)).toEqual([]);
    const before = findRow(log, "readings", "id", "R001")?.cells.temperature;
    expect(said(filled)).toContain(`Sample temp: ${String(before)} becomes 77,5.`);
    const receipt = await editLog(filled.meaning);
    const after = findRow(await present(), "readings", "id", "R001")?.cells;
    expect(after?.["temperature"]).toBe(77.5);
    expect(after?.["note"]).toContain(`corrected 2027-03-08 08:50: Sample temp was ${String(before)} (misread)`);
    await takeBack(receipt);
    expect(await present()).toEqual(log);
  });

  test("never offers the pH as read, and what is given for it all the same changes nothing", () => {
    const filled = correct("Reading", "R001", { ph: "11.40" });
    expect(filled.groups.flatMap(({ fields }) => fields.map(({ column }) => column.id))).not.toContain("ph");
    expect(filled.groups.flatMap(({ fields }) => fields.map(({ column }) => column.id))).toContain("temperature");
    expect(problemsOf(filled)).toEqual(["Nothing differs from the log yet."]);
  });

  test("changes the outcome of an item that was closed, and empties it again", () => {
    const filled = correct(
      "Item",
      "I001",
      { outcome: "not restorable", reason: "DELAM" },
      "finish lifted in the second cycle",
    );
    expect(filled.meaning.changes?.[0]?.cells).toEqual({
      id: { before: "I001", after: "I001" },
      outcome: { before: "restored", after: "not restorable" },
      reason: { before: undefined, after: "DELAM" },
      note: {
        before: undefined,
        after:
          "corrected 2027-03-08 08:50: Outcome was restored, Reason code was blank (finish lifted in the second cycle)",
      },
    });
    const changed: AnyChange | undefined = correct("Item", "I001", { outcome: "" }).meaning.changes?.[0];
    expect(changed?.cells["outcome"]).toEqual({
      before: "restored",
      after: undefined,
    });
  });

  test("refuses what the entry's own form refuses", () => {
    expect(problemsOf(correct("Reading", "R001", { temperature: "900" }))[0]).toMatch(/"900" is out of range/);
    expect(problemsOf(correct("Reading", "R001", { when: "2030-03-01T08:00" }))[0]).toMatch(/still to come/);
    expect(problemsOf(correct("Reading", "R001", { when: "2027-02-01T08:00" }))[0]).toMatch(
      /before the bath was opened/,
    );
    expect(problemsOf(correct("Reading", "R001", { level: "60" }))[0]).toMatch(/above the tank's rim/);
    expect(problemsOf(correct("Addition", "A001", { amount: "0" }))[0]).toMatch(/Allowed: more than 0/);
    expect(problemsOf(correct("Addition", "A001", { amount: "900" }))[0]).toMatch(/more than the tank holds/);
    expect(problemsOf(correct("Load", "L001", { baskets: "0" }))[0]).toMatch(/0 is nothing/);
    expect(problemsOf(correct("Load", "L001", { claim: "D-9999" }))[0]).toMatch(/is not in the log/);
    expect(problemsOf(correct("Load", "L001", { bath: "" }))[0]).toMatch(/Bath: blank/);
    expect(problemsOf(correct("Bath", bath, { closed: "2027-03-02T08:00" }))[0]).toMatch(
      /before the bath's last entry/,
    );
    expect(problemsOf(correct("Bath", bath, { opened: "2027-03-02T08:00" }))[0]).toMatch(
      /after the bath's first entry/,
    );
  });

  test("moves an item and a cost line to another bath, though neither has a time of its own to check", () => {
    const other = {
      ...log,
      rows: { ...log.rows, baths: [...log.rows.baths, { position: 9, cells: { bath: "B-T2" } }] },
    };
    for (const [kind, start] of [
      ["Item", "I001"],
      ["Cost line", "C001"],
    ] as const) {
      const filled = correct(kind, start, { bath: "B-T2" }, "wrong bath", other);
      expect(problemsOf(filled)).toEqual([]);
      const [change]: readonly AnyChange[] = filled.meaning.changes ?? [];
      expect(change?.cells["bath"]).toEqual({ before: bath, after: "B-T2" });
    }
  });

  test.each(["Reading", "Addition", "Load", "Item", "Bench test", "Bath", "Cost line"])(
    "answers whatever is typed into any field of a %s",
    (kind) => {
      const [entryRow = ""] = rowNames(log, { entryTable: kind });
      const chosen: Draft = { entryTable: kind, entryRow };
      const keys = fill(correctionEntry, log, chosen).groups.flatMap(({ fields }) => fields.map(({ key }) => key));
      for (const key of keys.slice(2))
        for (const text of ["", "0", "-5", "x", "=1+1", "#VALUE!", "2030-01-01T00:00", bath, "1e99"])
          expect(inWords(fill(correctionEntry, log, { ...chosen, [key]: text }))).toMatch(
            /^(?!.*(?:undefined|NaN|\[object))./s,
          );
    },
  );

  test("wants a change and a reason", () => {
    expect(problemsOf(correct("Load", "L001", {}))).toEqual(["Nothing differs from the log yet."]);
    expect(problemsOf(correct("Load", "L001", { baskets: "3" }, ""))[0]).toMatch(/Why: blank/);
  });

  test("marks the reason as wanted once something but the note differs", () => {
    const wanted = (typed: Readonly<Record<string, string>>): boolean | undefined =>
      correct("Load", "L001", typed, "")
        .groups.flatMap(({ fields }) => fields)
        .find(({ key }) => key === "why")?.required;
    expect(wanted({})).toBe(false);
    expect(wanted({ note: "more" })).toBe(false);
    expect(wanted({ baskets: "3" })).toBe(true);
  });

  test("tells times as people write them, without the T of a date-time field", () => {
    const filled = correct("Load", "L001", { when: "2027-03-01T10:45" });
    expect(said(filled)).toMatch(/: Mar 1, 2027, \d\d:\d\d becomes Mar 1, 2027, 10:45\./);
    expect(JSON.stringify(filled.meaning.changes)).not.toMatch(/was \d{4}-\d\d-\d\dT/);
  });

  test("never writes to another row what was typed for one", () => {
    const first = correct("Reading", "R001", { temperature: "77.5" });
    const second = rowNames(log, { entryTable: "Reading" }).find((name) => name.startsWith("R002")) ?? "";
    expect(problemsOf(fill(correctionEntry, log, { ...first.values, entryRow: second }))).toEqual([
      "Nothing differs from the log yet.",
    ]);
  });

  test("is refused once sorting has put another row in that place", async () => {
    const filled = correct("Reading", "R001", { note: "cloudy" });
    await Excel.run(async (context) => {
      context.workbook.tables.getItem("Readings").columns.getItem("Reading").getDataBodyRange().getCell(0, 0).values = [
        ["R099"],
      ];
      await context.sync();
    });
    await expect(editLog(filled.meaning)).rejects.toThrow(/Reading \(Readings\) was changed since it was read/);
  });
});

describe("a correction of a row of a settled bath", () => {
  const settled = (): LogSnapshot => withCells(log, "baths", bath, { settledAt: moment("2027-03-08T08:00") });
  const refusal = `Bath ${bath} is settled, so its figures would not follow. Put its formulas back first (More, Shop, Closed baths).`;

  test.each([
    ["Reading", "R001", { temperature: "77.5" }],
    ["Addition", "A001", { amount: "1.5" }],
    ["Load", "L001", { baskets: "3" }],
    ["Bath", bath, { dropAllowed: "0.4" }],
  ] as const)("%s: is refused where the bath's figures would have to follow", (kind, start, typed) => {
    expect(problemsOf(correct(kind, start, typed, "misread", settled()))).toContain(refusal);
    expect(problemsOf(correct(kind, start, typed))).not.toContain(refusal);
  });

  test("takes a note, and what no figure of the bath rests on", () => {
    expect(problemsOf(correct("Reading", "R001", { note: "cloudy" }, "misread", settled()))).toEqual([]);
    expect(problemsOf(correct("Item", "I001", { outcome: "partly" }, "misread", settled()))).not.toContain(refusal);
  });

  test("asks for neither of the cells that say so", () => {
    const keys = fill(correctionEntry, log, {
      entryTable: "Bath",
      entryRow: rowNames(log, { entryTable: "Bath" })[0] ?? "",
    }).groups.flatMap(({ fields }) => fields.map(({ key }) => key));
    expect(keys.filter((key) => key.includes("settled"))).toEqual([]);
  });
});
