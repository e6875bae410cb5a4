import type { KeyboardEvent } from "react";

/**
 * Escape leaves a form in which nothing was typed; else it only goes to the way back, the form's first
 * button, so that no single key loses an entry.
 */
export function onEscape(typed: boolean, onBack: () => void): (event: KeyboardEvent<HTMLFormElement>) => void {
  return (event) => {
    if (event.key !== "Escape") return;
    if (typed) event.currentTarget.querySelector("button")?.focus();
    else onBack();
  };
}
