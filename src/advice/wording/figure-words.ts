/** With so many decimals, zeros among them. */
export function fixed(value: number, decimals: number): string {
  return value.toFixed(decimals);
}

/** `1 row`, `2 rows`, `3.1 days`; a count or a figure as it is shown. */
export function countOf(count: number | string, thing: string): string {
  return `${String(count)} ${thing}${String(count) === "1" ? "" : "s"}`;
}
