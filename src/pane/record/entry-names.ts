import type { EntryId } from "./entry-form.ts";

/** What an entry is called: over its form, in the list of entries and on every button that leads there. */
export const entryNames: Readonly<Record<EntryId, string>> = {
  charge: "Charge",
  "bench test": "Bench test",
  baseline: "Baseline",
  reading: "Reading",
  addition: "Top-up",
  "level make-up": "Level make-up",
  load: "Load",
  item: "Item",
  "meter check": "Meter check",
  care: "Care",
  "change-out": "Change-out",
  release: "Release",
  "cost line": "Cost line",
  "stock move": "Stock",
  correction: "Correct an entry",
};
