import { text } from "./html-text.ts";

/** A table that may be wider than a phone: it scrolls in its own box, which the keyboard reaches. */
export function scrollable(title: string, table: string): string {
  return `<div class="wide" role="group" aria-label="${text(title)}" tabindex="0">${table}</div>`;
}
