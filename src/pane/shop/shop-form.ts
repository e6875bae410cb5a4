/** A form that changes what the log looks up: limits and the rows of its own lists. */
import type { FieldProblem, FilledFields } from "../../advice/filled-fields.ts";
import type { Finding } from "../../advice/finding.ts";
import { figure } from "../../advice/wording/figures.ts";
import { fieldTextOf } from "../../advice/wording/moments.ts";
import type { UnitSystem } from "../../core/units/unit-system.ts";
import type { LogEdit } from "../../excel/record/log-edit.ts";
import type { RowValue } from "../../joblog/model/definition.ts";
import { unclearFigure } from "../controls/unit-kinds.ts";
import type { Draft, EntryField, FieldGroup } from "../record/entry-form.ts";
import { filledFields, readFields } from "../record/fill-form.ts";

export interface FilledShopForm {
  readonly values: Draft;
  readonly converted: Readonly<Partial<Record<string, string>>>;
  readonly problems: readonly FieldProblem[];
  readonly findings: readonly Finding[];
  /** Absent while something is wrong or nothing differs from the log. */
  readonly changes?: LogEdit;
}

export interface ShopForm {
  readonly title: string;
  /** What will have been saved: the title of a form that adds something is an order. */
  readonly saved: (values: Draft) => string;
  readonly purpose: string;
  readonly groups: readonly FieldGroup[];
  readonly fill: (typed: Draft) => FilledShopForm;
}

/** Digits enough to give back what any cell of the log holds. */
const digits = 6;

/** What a cell holds, as a person would type it. */
function typedText(value: RowValue | undefined, { column }: EntryField, system: UnitSystem): string {
  if (value === undefined) return "";
  if (typeof value !== "number") return String(value);
  if (column.type === "date") return fieldTextOf(value).slice(0, 10);
  if (column.type === "share") return `${figure(value * 100, digits - 2)}%`;
  return unclearFigure(column.unit, value, system)?.readings[1] ?? figure(value, digits);
}

interface ReadForm {
  readonly values: Draft;
  readonly converted: Readonly<Partial<Record<string, string>>>;
  readonly problems: readonly FieldProblem[];
  readonly filled: FilledFields<string>;
  /** Keys of the fields whose text is no longer that of the log. */
  readonly changed: readonly string[];
}

/** Reads a draft over what the log holds; a field that still reads as the log does is no change, and no problem either. */
export function readForm(
  fields: readonly EntryField[],
  held: (key: string) => RowValue | undefined,
  typed: Draft,
  system: UnitSystem,
  currency?: RowValue,
): ReadForm {
  const start = Object.fromEntries(fields.map((field) => [field.key, typedText(held(field.key), field, system)]));
  const values: Draft = { ...start, ...typed };
  const changed = fields.map(({ key }) => key).filter((key) => values[key]?.trim() !== start[key]);
  const { values: read, converted, problems } = readFields(fields, values, system, currency);
  return {
    values,
    converted,
    problems: problems.filter(({ key }) => changed.includes(key) || values[key] === ""),
    filled: filledFields(read),
    changed,
  };
}
