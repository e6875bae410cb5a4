/** RFC 4180, section 2: a field with a quote, a comma or a line break stands in quotes, and its quotes are doubled. */
function field(text: string): string {
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/** A text that a spreadsheet would take for a formula gets an apostrophe, as it would when typed. */
export const harmless = (text: string): string => (/^[=+@\t\r-]/.test(text) ? `'${text}` : text);

/** Lines of fields as comma-separated values, ended by CR LF. */
export function csvText(lines: readonly (readonly string[])[]): string {
  return lines.map((line) => `${line.map(field).join(",")}\r\n`).join("");
}
