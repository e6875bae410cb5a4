import type { PrintState } from "../../../state/workbook-state.ts";
import type { SheetNotes } from "../workbook/workbook.ts";

/** Members of Office.js's HeaderFooter; the others are PageLayout's. */
const isOfHeaderFooter = /(?:Header|Footer)$/;

/** What Office.js may be given as a range in place of an address cannot be kept. */
function isPlain(value: unknown): boolean {
  if (Array.isArray(value)) return true;
  if (typeof value !== "object" || value === null) return value !== null && value !== undefined;
  return Object.getPrototypeOf(value) === Object.prototype;
}

export function printState(notes: SheetNotes | undefined): PrintState {
  const members = [...(notes ?? [])].filter(([, value]) => isPlain(value));
  return Object.fromEntries(members.map(([key, value]) => [key.slice(key.indexOf(".") + 1), value]));
}

export function printNotes(print: PrintState): SheetNotes {
  return new Map(
    Object.entries(print).map(([member, value]): [string, unknown] => [
      `${isOfHeaderFooter.test(member) ? "HeaderFooter" : "PageLayout"}.${member}`,
      value,
    ]),
  );
}
