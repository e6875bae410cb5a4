const escapes: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };

/** Text as it may stand in a page. */
export function text(value: string): string {
  return value.replace(/[&<>"]/g, (sign) => escapes[sign] ?? sign);
}
