import { columnLetters } from "../../joblog/layout/addresses.ts";

/** An area counted from 0. */
export interface Zone {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

/** A sheet's name before a reference. */
function sheetPrefix(name: string): string {
  return `'${name.replaceAll("'", "''")}'!`;
}

function columnOf(letters: string): number {
  return Array.from(letters).reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
}

/** The zone of `B2` or `$A$1:$C$9`; undefined for anything else, whole rows and columns among it. */
export function zoneOf(reference: string): Zone | undefined {
  const match = /^\$?([A-Z]{1,3})\$?([1-9]\d*)(?::\$?([A-Z]{1,3})\$?([1-9]\d*))?$/.exec(reference);
  if (match === null) return undefined;
  const [, left = "", top = "", right = left, bottom = top] = match;
  return { top: Number(top) - 1, left: columnOf(left), bottom: Number(bottom) - 1, right: columnOf(right) };
}

export function zoneText({ top, left, bottom, right }: Zone): string {
  const first = `${columnLetters(left)}${String(top + 1)}`;
  return top === bottom && left === right ? first : `${first}:${columnLetters(right)}${String(bottom + 1)}`;
}

/** A reference with its dollar signs, on a sheet by name: `'Baths'!$B$4`, `'Baths'!$A:$F`. Undefined where it is none. */
export function fixedReference(reference: string, ownSheet: string): string | undefined {
  const bang = reference.lastIndexOf("!");
  const named = reference.slice(0, Math.max(0, bang));
  const sheet = named.startsWith("'") ? named.slice(1, -1).replaceAll("''", "'") : named;
  const local = reference.slice(bang + 1).replaceAll("$", "");
  if (!/^(?:[A-Z]{1,3}[1-9]\d*(?::[A-Z]{1,3}[1-9]\d*)?|[A-Z]{1,3}:[A-Z]{1,3}|[1-9]\d*:[1-9]\d*)$/.test(local))
    return undefined;
  return sheetPrefix(bang < 0 ? ownSheet : sheet) + local.replace(/[A-Z]+|\d+/g, "$$$&");
}
