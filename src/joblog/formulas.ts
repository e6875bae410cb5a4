import type { References } from "./definition.ts";
import type { TableId } from "./formula/log-types.ts";

/**
 * Date-times compared inside COUNTIFS and its kin pass through text of 15 digits, so "at the same
 * time" allows half a minute.
 */
export const halfMinute = "1/2880";

/** Serial number of 31 December 9999, Excel's last day: a time that never comes. */
export const never = "2958465";

/** `text` as a formula writes it. */
export function quoted(text: string): string {
  return `"${text.replaceAll('"', '""')}"`;
}

/** Blank as long as any of the conditions holds, otherwise the result. */
export function blankIf(conditions: readonly string[], result: string): string {
  const [only] = conditions;
  const test = conditions.length === 1 && only !== undefined ? only : `OR(${conditions.join(",")})`;
  return `IF(${test},"",${result})`;
}

/** The position of a key in a table's key column, blank where it stands nowhere. */
export function positionOf(reference: References, key: string, table: TableId, keyColumn: string): string {
  const match = `MATCH(${key},${reference.all(table, keyColumn)},0)`;
  return `IF(${key}="","",IF(ISNA(${match}),"",${match}))`;
}

/** The cell of another table's column at a position that is known to exist. */
export function at(reference: References, table: TableId, column: string, position: string): string {
  return `INDEX(${reference.all(table, column)},${position})`;
}

/** As `at`, blank where the position or the cell is blank. */
export function atOrBlank(reference: References, table: TableId, column: string, position: string): string {
  const cell = at(reference, table, column, position);
  return `IF(${position}="","",IF(${cell}="","",${cell}))`;
}

/** `range,criterion` pairs of COUNTIFS and its kin. */
export function where(pairs: readonly (readonly [range: string, criterion: string])[]): string {
  return pairs.map(([range, criterion]) => `${range},${criterion}`).join(",");
}

/** A criterion "later than that time". */
export function after(time: string): string {
  return `">"&(${time}+${halfMinute})`;
}

/** A criterion "earlier than that time". */
export function before(time: string): string {
  return `"<"&(${time}-${halfMinute})`;
}

/** A criterion "at that time or later". */
export function from(time: string): string {
  return `">="&(${time}-${halfMinute})`;
}

/** A criterion "at that time or earlier". */
export function upTo(time: string): string {
  return `"<="&(${time}+${halfMinute})`;
}

/** How many liters one unit of volume of the log is: the US and the imperial gallon need their country, the liter has none. */
export function litersInUnit(reference: References): string {
  const system = reference.named("unitSystem");
  return `BATH.UNITCONVERT(1,IF(${system}="metric","L",${system}&" gal"),"L")`;
}

/** Half a cent stays half a cent in every unit of volume: what a conversion or a binary fraction leaves short is less than this many decimals show. */
export function toTheCent(value: string): string {
  return `ROUND(ROUND(${value},6),2)`;
}
