import type { StepKind } from "../../advice/next-step/step.ts";
import type { EntryId } from "./entry-form.ts";

/** The entry that belongs to a next step; a bath that waits has none. */
export const entryOfStep: Readonly<Record<StepKind, EntryId | undefined>> = {
  "opening dose": "addition",
  "bench test": "bench test",
  baseline: "baseline",
  reading: "reading",
  "top-up": "addition",
  "make-up": "level make-up",
  "meter check": "meter check",
  "change-out": "change-out",
  release: "release",
  closed: "charge",
  wait: undefined,
};
