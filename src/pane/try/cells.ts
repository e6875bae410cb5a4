import type { Argument, DefinedFunction } from "../../../functions/define-function.ts";
import { figure } from "../../advice/wording/figures.ts";
import { parseNumber } from "../../core/units/parse-number.ts";
import { unclearNumber } from "../../core/units/unclear-number.ts";
import type { UnitSystem } from "../../core/units/unit-system.ts";
import type { Draft } from "../record/entry-form.ts";

export type TypedCell = number | string | null;

/** What was typed, as the cell that Excel would make of it: a number, text with a unit, or nothing. */
export function typedCell(values: Draft, key: string): TypedCell {
  const text = values[key]?.trim() ?? "";
  if (text === "") return null;
  const reading = parseNumber(text);
  return reading.read === "number" && !text.includes("/") ? reading.value : text;
}

function argument(cell: TypedCell): string {
  if (cell === null) return "";
  return typeof cell === "number" ? String(cell) : `"${cell.replaceAll('"', '""')}"`;
}

/** The call of a function as a cell holds it, without its equals sign; arguments left out at the end are not written. */
export function callText<const Arguments extends readonly Argument<unknown>[]>(
  of: DefinedFunction<Arguments>,
  given: { readonly [Name in Arguments[number]["name"]]?: TypedCell | undefined },
): string {
  const byName: Readonly<Record<string, TypedCell | undefined>> = given;
  const cells = of.arguments.map(({ name }) => byName[name] ?? null);
  const last = cells.findLastIndex((cell) => cell !== null);
  return `BATH.${of.id}(${cells
    .slice(0, last + 1)
    .map(argument)
    .join(",")})`;
}

/** A temperature of the log as a person would type it: with its scale where a bare number would be asked about. */
export function degreesText(value: number | undefined, system: UnitSystem): string {
  if (value === undefined) return "";
  return unclearNumber("temperature", value, system)?.readings[1] ?? figure(value, 1);
}

/** US is what a function takes where no system is given. */
export function systemCell(system: UnitSystem): TypedCell {
  return system === "US" ? null : system;
}
