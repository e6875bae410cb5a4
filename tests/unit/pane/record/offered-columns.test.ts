/** A column that a person may type into is no use if no form asks for it. */
import { beforeAll, expect, test } from "vitest";

import { jobLog } from "../../../../src/joblog/job-log.ts";
import type { InputColumn } from "../../../../src/joblog/model/definition.ts";
import type { LogSnapshot } from "../../../../src/joblog/model/log-snapshot.ts";
import type { Draft, EntryField, EntryForm } from "../../../../src/pane/record/entry-form.ts";
import { type EntryId, forms } from "../../../../src/pane/record/forms.ts";
import { demoLog, moment } from "../../excel/log/demo-log.ts";
import { bath, fill, withCells } from "./entry-forms.ts";

/** What a form fills in by itself, or a view. */
const unasked: Readonly<Record<string, string>> = {
  "baths.shareBasis": "the Claims view sets it",
  "additions.unitCost": "the forms write down the average cost",
  "stockMoves.averageAfter": "the form writes down what the line makes of the average",
  "readings.confirmed": "the reading form writes it once a doubt was answered",
  "additions.kind": "the top-up and the make-up each know what goes in",
  "benchTests.surface": "the form has a result field for each surface",
};

/** What must be typed before a form shows its last fields. */
const progress: Readonly<Partial<Record<EntryId, readonly Draft[]>>> = {
  release: [
    {
      ph: "11.2",
      acid: "citric",
      target: "8.5",
      stage1: "1",
      phAfter1: "10",
      stage2: "1",
      phAfter2: "9",
      stage3: "1",
      phAfter3: "8.4",
      limitLow: "6",
      limitHigh: "9",
      permit: "P-1",
      analyses: "lab 7",
      analysesResult: "within limits",
    },
  ],
};

let open: LogSnapshot;
let closed: LogSnapshot;

beforeAll(async () => {
  open = await demoLog("2027-03-02T17:00");
  closed = withCells(open, "baths", bath, { closed: moment("2027-03-06T08:00"), state: "closed" });
}, 120_000);

function fieldsFor(form: EntryForm, log: LogSnapshot, typed: Draft): readonly EntryField[] {
  return fill(form, log, typed).groups.flatMap(({ fields }) => fields);
}

/** Every field that a form shows: as it opens, after each choice, and as far on as `progress` leads. */
function everyField(form: EntryForm<EntryId>): readonly EntryField[] {
  const log = form.id === "release" ? closed : open;
  const first = fieldsFor(form, log, {});
  const chosen = first.flatMap(({ key, choices = [] }) => choices.map((choice): Draft => ({ [key]: choice })));
  return [...first, ...[...chosen, ...(progress[form.id] ?? [])].flatMap((typed) => fieldsFor(form, log, typed))];
}

/** A form may change a column's unit, so that columns are told by what they are called and ask for. */
const named = ({ id, label, help }: InputColumn): string => [id, label, help].join("\n");

test("every column that an entry may fill is asked for by a form other than the correction", () => {
  const asked = new Set(
    forms
      .filter(({ id }) => id !== "correction")
      .flatMap((form) => everyField(form).map(({ column }) => named(column))),
  );
  const unaskedNow = jobLog.sheets
    .flatMap(({ tables }) => tables)
    .filter(({ entry }) => entry !== undefined)
    .flatMap(({ id: table, entry, columns }) =>
      columns
        .filter((column) => column.role === "input")
        .filter(({ ofCells }) => ofCells !== true)
        .filter((column, index) => !asked.has(named(column)) && !(index === 0 && entry?.letter !== undefined))
        .map(({ id }) => `${table}.${id}`),
    );
  expect(unaskedNow.sort()).toEqual(Object.keys(unasked).sort());
});

test("the columns that tell an entry from its neighbors are columns of its table", () => {
  const missing = jobLog.sheets
    .flatMap(({ tables }) => tables)
    .flatMap(({ id, entry, columns }) =>
      (entry?.about ?? [])
        .filter((about) => !columns.some((column) => column.id === about))
        .map((about) => `${id}.${about}`),
    );
  expect(missing).toEqual([]);
});

test("no two forms have one id or one title", () => {
  expect(new Set(forms.map(({ id }) => id)).size).toBe(forms.length);
  expect(new Set(forms.map(({ title }) => title)).size).toBe(forms.length);
});
