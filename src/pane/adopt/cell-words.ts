import { plainText } from "../../core/units/plain-text.ts";

/** Spaces, tabs, line breaks and signs that look alike are one; what stands in a cell otherwise stays. */
export function cellWords(value: unknown): string {
  return typeof value === "string"
    ? plainText(value)
    : typeof value === "number" || typeof value === "boolean"
      ? String(value)
      : "";
}

export const isBlankCell = (value: unknown): boolean => cellWords(value) === "";

/** Error values as Excel hands them over. */
export const isErrorCell = (value: unknown): boolean =>
  typeof value === "string" && /^#(?:N\/A|[A-Z/0_]+[!?])$/.test(value);

/** Words of a heading, small letters, without units' signs and punctuation. */
export function headingWords(text: string): readonly string[] {
  return (
    text
      .replaceAll("#", " no ")
      .toLowerCase()
      .match(/[\p{L}\d]+/gu) ?? []
  );
}
