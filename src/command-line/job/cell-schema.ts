import * as z from "zod";

import { type UnitSystem, unitSystems } from "../../core/units/unit-system.ts";
import { firstDay } from "../../joblog/layout/validation-plans.ts";
import type { FieldDefinition, InputColumn } from "../../joblog/model/definition.ts";
import { isKeyText, keyTextAllowed } from "../../joblog/model/key-text.ts";
import { isMoment, serialIn } from "./moments.ts";

/** What is typed: a column's cell or a named one. */
export type Entry = InputColumn | FieldDefinition;

/** Excel's limit of a cell's text. */
const longestText = 32_767;

/** Characters that no part of an .xlsx file may hold (XML 1.0, 2.2), and halves of characters. */
const unwritable = /[\u0000-\u0008\u000b-\u001f\ufffe\uffff]|\p{Cs}/u;

const writableText = z
  .string()
  .min(1, "an empty text; leave the entry out instead.")
  .max(longestText, `a text of more than ${longestText.toLocaleString("en-US")} characters, which no cell holds.`)
  .refine((text) => !unwritable.test(text), "a text with characters that no workbook can hold.");

const text = z.union([writableText, z.number(), z.boolean()], { error: "neither a text nor a number." });

const isKey = (entry: Entry): boolean => "key" in entry && entry.key;

function numberSchema({ limits }: Entry) {
  if (limits === undefined) return z.number("not a number.");
  const all = unitSystems.map((system) => limits[system]);
  const low = Math.min(...all.map((one) => one.low));
  const high = Math.max(...all.map((one) => one.high));
  const allowed = `not a number from ${String(low)} to ${String(high)}.`;
  return z.number("not a number.").min(low, allowed).max(high, allowed);
}

/** A date as text or as Excel's serial number. */
function momentSchema({ type }: Entry) {
  const example = type === "date" ? "2027-03-01" : "2027-03-01T14:05";
  const wrong = `not a date such as "${example}" from 2000-01-01 on.`;
  return z.union(
    [
      z.number().min(firstDay, wrong),
      z
        .string()
        .regex(/^\d{4}-\d{2}-\d{2}(?:[T ]\d{2}:\d{2}(?::\d{2})?)?$/, wrong)
        .refine((one) => (serialIn(one) ?? 0) >= firstDay, wrong),
    ],
    { error: wrong },
  );
}

function schemaOf(entry: Entry) {
  const { type, choices } = entry;
  if (choices?.kind === "fixed")
    return z.enum(choices.choices, { error: `none of ${choices.choices.map((one) => `"${one}"`).join(", ")}.` });
  if (isKey(entry))
    return text.refine((value) => isKeyText(String(value)), `not a name that rows are found by (${keyTextAllowed}).`);
  if (isMoment(type)) return momentSchema(entry);
  return type === "text" || type === "choice" || type === "yes or no" ? text : numberSchema(entry);
}

/** "gal (US), L (metric), imperial gal (imperial)", once where the systems agree. */
function bySystem(of: (system: UnitSystem) => string): string {
  const all = unitSystems.map((system) => ({ system, says: of(system) }));
  const [first] = all;
  return first !== undefined && all.every(({ says }) => says === first.says)
    ? first.says
    : all.map(({ system, says }) => `${says} (${system})`).join(", ");
}

function describedBy(entry: Entry): string {
  const { help, unit, limits, choices } = entry;
  return [
    help,
    ...(unit === undefined ? [] : [`Unit: ${bySystem((system) => unit[system])}.`]),
    ...(limits === undefined
      ? []
      : [`Allowed: ${bySystem((system) => `${String(limits[system].low)} to ${String(limits[system].high)}`)}.`]),
    ...(choices?.kind === "column" ? [`One of ${choices.table}.${choices.column}.`] : []),
    ...("required" in entry && entry.required ? ["Needed for figures that build on it."] : []),
  ].join(" ");
}

type EntrySchema = ReturnType<typeof schemaOf>;

/** To make one takes longer than to read a thousand cells by it. */
const made = new Map<Entry, EntrySchema>();

/** What a job may say for a column or a named cell, from the log's description. */
export function entrySchema(entry: Entry): EntrySchema {
  const known = made.get(entry);
  if (known !== undefined) return known;
  const schema = schemaOf(entry).meta({ title: entry.label, description: describedBy(entry) });
  made.set(entry, schema);
  return schema;
}

/** Limits of a number are those of the job's own units, narrower than `entrySchema` knows; undefined where it keeps them. */
export function limitFault({ limits }: Entry, value: unknown, system: UnitSystem): string | undefined {
  if (limits === undefined || typeof value !== "number") return undefined;
  const { low, high } = limits[system];
  return value >= low && value <= high ? undefined : `not a number from ${String(low)} to ${String(high)}.`;
}
