import type { FieldProblem, FilledFields } from "../../advice/filled-fields.ts";
import type { LogContext } from "../../advice/log-context.ts";
import type { UnitSystem } from "../../core/units/unit-system.ts";
import type { RowValue } from "../../joblog/model/definition.ts";
import { readInput } from "../controls/read-input.ts";
import type { Draft, EntryField, EntryForm, FieldGroup, Meaning } from "./entry-form.ts";
import { impossibleTimes } from "./impossible-times.ts";

/** A form with everything that was typed, proposed and worked out. */
export interface FilledForm {
  readonly values: Draft;
  readonly groups: readonly FieldGroup[];
  /** What a typed unit was turned into, by field key. */
  readonly converted: Readonly<Partial<Record<string, string>>>;
  readonly problems: readonly FieldProblem[];
  readonly meaning: Meaning;
}

interface FieldReadings {
  readonly values: ReadonlyMap<string, RowValue>;
  readonly converted: Readonly<Partial<Record<string, string>>>;
  readonly problems: readonly FieldProblem[];
}

function withLabel(field: EntryField): EntryField["column"] {
  return field.label === undefined ? field.column : { ...field.column, label: field.label };
}

/** Reads every field; a blank required one and a word that is no choice are problems. */
export function readFields(
  fields: readonly EntryField[],
  typed: Draft,
  system: UnitSystem,
  currency?: RowValue,
): FieldReadings {
  const values = new Map<string, RowValue>();
  const converted: Partial<Record<string, string>> = {};
  const problems: FieldProblem[] = [];
  for (const field of fields) {
    const column = withLabel(field);
    const reading = readInput(
      column,
      system,
      typed[field.key] ?? "",
      "person",
      currency === undefined ? currency : String(currency),
    );
    if (reading.read === "problem") problems.push({ key: field.key, message: reading.message });
    else if (reading.read === "blank") {
      if (field.required) problems.push({ key: field.key, message: `${column.label}: blank. ${field.column.help}` });
    } else if (field.choices !== undefined && !field.choices.includes(String(reading.value))) {
      problems.push({
        key: field.key,
        message: `${column.label}: "${String(reading.value)}" is not in the log. Allowed: ${field.choices.join(", ")}.`,
      });
    } else {
      values.set(field.key, reading.value);
      if (reading.converted !== undefined) converted[field.key] = reading.converted;
    }
  }
  return { values, converted, problems };
}

/** The values that could be read, by field key. */
export function filledFields(values: ReadonlyMap<string, RowValue>): FilledFields<string> {
  return {
    number: (key) => {
      const value = values.get(key);
      return typeof value === "number" ? value : undefined;
    },
    text: (key) => {
      const value = values.get(key);
      return value === undefined ? undefined : String(value);
    },
  };
}

/** Whoever works on this device is proposed wherever a form asks who did it. */
const whoOf = (fields: readonly EntryField[], { me }: LogContext): Draft =>
  me === undefined ? {} : Object.fromEntries(fields.flatMap(({ key, isWho }) => (isWho === true ? [[key, me]] : [])));

/** Reads a form's draft: proposals where nothing was typed, each field's value or problem, and what it all means. */
export function fillForm(form: EntryForm, typed: Draft, context: LogContext): FilledForm {
  const proposed = { ...form.proposals(typed, context), ...typed };
  const groups = form.groups(proposed, context);
  const fields = groups.flatMap((group) => group.fields);
  const values = { ...proposed, ...whoOf(fields, context), ...typed };
  const readings = readFields(fields, values, context.system, context.log.fields.currency);
  const filled = filledFields(readings.values);
  const meaning = form.meaning(filled, context, values);
  const problems = [...readings.problems, ...meaning.problems, ...impossibleTimes(fields, filled, context)];
  const allowed = problems.length === 0 && meaning.blocked === undefined;
  return {
    values,
    groups,
    converted: readings.converted,
    problems,
    meaning: allowed ? meaning : { ...meaning, rows: [], fills: [], changes: [] },
  };
}
