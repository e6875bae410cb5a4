/**
 * Text as Excel compares it: the case of letters does not count, accents do. Microsoft's help for the comparison
 * operators and for EXACT: "=" takes no notice of case, EXACT does.
 */
export function folded(text: string): string {
  return text.toLowerCase();
}

/** Whether Excel's "=" would call two texts the same; what is blank is the same as nothing. */
export function isSameText(one: string | undefined, other: string): boolean {
  return one !== undefined && folded(one) === folded(other);
}
