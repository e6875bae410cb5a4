import type { LogContext } from "../../../src/advice/log-context.ts";
import { fieldTextOf, serialOf } from "../../../src/advice/wording/moments.ts";
import type { Draft, EntryField, EntryForm } from "../../../src/pane/record/entry-form.ts";
import { type FilledForm, fillForm } from "../../../src/pane/record/fill-form.ts";

/** Whole numbers under a limit, the same ones for the same seed: xorshift of 32 bits (Marsaglia, 2003). */
function dice(seed: number): (under: number) => number {
  let state = (seed ^ 0x9e3779b9) >>> 0 || 1;
  return (under) => {
    state ^= state << 13;
    state >>>= 0;
    state ^= state >>> 17;
    state ^= state << 5;
    state >>>= 0;
    return state % under;
  };
}

const slips = [
  "",
  "0",
  "-1",
  "14.5",
  "1e9",
  "abc",
  "=1+1",
  "1,5",
  "#VALUE!",
  "2031-01-01T10:00",
  "12 furlongs",
  "__proto__",
];

const words = ["oak chair", "KT", "wiped; twice", "=not a formula", "שלום", "soot, light"];

function ofList<Item>(list: readonly Item[], roll: (under: number) => number): Item | undefined {
  return list[roll(Math.max(1, list.length))];
}

/** Something that a person could type into a field; now and then a slip. */
function typedFor({ column, choices, key }: EntryField, { now }: LogContext, roll: (under: number) => number): string {
  if (roll(40) === 0) return ofList(slips, roll) ?? "";
  if (choices !== undefined) return ofList(choices, roll) ?? "";
  const present = serialOf(now) ?? 0;
  if (column.type === "date") return fieldTextOf(present - roll(3)).slice(0, 10);
  if (column.type === "date and time") return fieldTextOf(present - roll(60) / 1440);
  if (column.type === "text" || column.type === "choice")
    return /strength/i.test(key) ? (ofList(["1+28", "1+18", "1+36"], roll) ?? "") : (ofList(words, roll) ?? "");
  if (/^ph/i.test(key)) return String(10.6 + roll(90) / 100);
  if (/temperature/i.test(key)) return `${String(24 + roll(3))} C`;
  const { low, high } = column.limits?.US ?? { low: 0, high: 10 };
  const value = low + ((Math.min(high, low + 5) - low) * roll(100)) / 100;
  return column.type === "whole number" ? String(Math.ceil(value)) : value.toFixed(2);
}

/** A form filled in at random: what is required, and some of the rest. */
export function randomDraft(form: EntryForm, context: LogContext, seed: number): FilledForm {
  const roll = dice(seed);
  let typed: Draft = {};
  let filled = fillForm(form, typed, context);
  // Fields come and go with what is typed above them.
  for (let pass = 0; pass < 3; pass += 1) {
    for (const field of filled.groups.flatMap(({ fields }) => fields)) {
      const open = typed[field.key] === undefined;
      const proposed = (filled.values[field.key] ?? "") !== "";
      if (open && (proposed ? roll(8) === 0 : field.required || roll(3) === 0))
        typed = { ...typed, [field.key]: typedFor(field, context, roll) };
    }
    filled = fillForm(form, typed, context);
  }
  return filled;
}
