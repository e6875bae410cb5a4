import type { ContentType } from "./definition.ts";

const usual: Readonly<Record<ContentType, string>> = {
  text: "@",
  number: "General",
  "whole number": "0",
  date: "yyyy-mm-dd",
  "date and time": "yyyy-mm-dd hh:mm",
  money: "#,##0.00",
  share: "0%",
  choice: "@",
  "yes or no": "@",
};

interface Formatted {
  readonly type: ContentType;
  readonly format?: string;
}

/**
 * Number format of a cell. Typed text is kept as typed ("1:40" is no time of day, "007" no 7);
 * a formula needs the general format, or Excel would show its text instead of its result.
 */
export function cellFormat({ type, format }: Formatted, role: "input" | "computed"): string {
  if (format !== undefined) return format;
  const ofType = usual[type];
  return role === "computed" && ofType === "@" ? "General" : ofType;
}
