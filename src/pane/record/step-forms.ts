import type { StepKind } from "../../advice/next-step/step.ts";

/** Forms that a next step leads to. Their names are on buttons before any form is loaded, so they stand apart from the forms. */
export const addition = { id: "addition", title: "Add concentrate" } as const;
export const baseline = { id: "baseline", title: "Baseline" } as const;
export const writtenBaseline = { id: "written baseline", title: "Write down the baseline" } as const;
export const benchTest = { id: "bench test", title: "Bench test" } as const;
export const changeOut = { id: "change-out", title: "Change-out" } as const;
export const charge = { id: "charge", title: "Charge" } as const;
export const levelMakeUp = { id: "level make-up", title: "Make up to the line" } as const;
export const meterCheck = { id: "meter check", title: "Meter check" } as const;
export const reading = { id: "reading", title: "Reading", needs: "bath" } as const;
export const release = { id: "release", title: "Release" } as const;

/** The form that answers a next step; a bath that waits has none. */
export const formOfStep = {
  "opening dose": addition,
  "bench test": benchTest,
  baseline,
  "written baseline": writtenBaseline,
  reading,
  "top-up": addition,
  "make-up": levelMakeUp,
  "meter check": meterCheck,
  "change-out": changeOut,
  release,
  closed: charge,
  wait: undefined,
} as const satisfies Readonly<Record<StepKind, { readonly id: string; readonly title: string } | undefined>>;

export type StepForm = NonNullable<(typeof formOfStep)[StepKind]>;
