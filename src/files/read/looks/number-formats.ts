/** Formats that files name by number alone, in Excel's US spelling (ECMA-376, 18.8.30). */
const builtIn: Readonly<Record<number, string>> = {
  1: "0",
  2: "0.00",
  3: "#,##0",
  4: "#,##0.00",
  9: "0%",
  10: "0.00%",
  11: "0.00E+00",
  12: "# ?/?",
  13: "# ??/??",
  14: "m/d/yyyy",
  15: "d-mmm-yy",
  16: "d-mmm",
  17: "mmm-yy",
  18: "h:mm AM/PM",
  19: "h:mm:ss AM/PM",
  20: "h:mm",
  21: "h:mm:ss",
  22: "m/d/yyyy h:mm",
  37: "#,##0 ;(#,##0)",
  38: "#,##0 ;[Red](#,##0)",
  39: "#,##0.00;(#,##0.00)",
  40: "#,##0.00;[Red](#,##0.00)",
  45: "mm:ss",
  46: "[h]:mm:ss",
  47: "mmss.0",
  48: "##0.0E+0",
  49: "@",
};

/** Signs that stand for themselves: some programs write a backslash before them all the same. */
const needlessBackslash = /\\([-/: ()$+])/g;

export function withoutNeedlessBackslash(format: string): string {
  return format.replace(needlessBackslash, "$1");
}

/** The format of a number in the file's list or of the format's own; undefined for General. */
export function numberFormat(id: number, own: ReadonlyMap<number, string>): string | undefined {
  const given = own.get(id);
  const format = given === undefined ? builtIn[id] : withoutNeedlessBackslash(given);
  return format === undefined || /^general$/i.test(format) ? undefined : format;
}

/** What a format means once quoted and escaped text, colors, conditions and elapsed time are taken out. */
function signs(format: string): string {
  return format.replace(/"[^"]*"|\\.|_.|\*./g, "").replace(/\[[^\]]*\]/g, "");
}

/** Whether a number in this format is shown as a day: one with a year, a day or a month's name, and not a time alone. */
export function showsDay(format: string | undefined): boolean {
  return format !== undefined && !/general/i.test(format) && /[yd]|mmm/i.test(signs(format));
}
