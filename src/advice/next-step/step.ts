import type { UnitSystem } from "../../core/units/unit-system.ts";
import type { FieldId } from "../../joblog/formula/log-names.ts";
import type { LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import { volume } from "../../joblog/model/units-of.ts";
import type { RowFacts } from "../bath-facts.ts";
import { fixed } from "../wording/figure-words.ts";

/** What a person would do: the pane offers the form that belongs to it. */
export type StepKind =
  | "opening dose"
  | "bench test"
  | "baseline"
  | "written baseline"
  | "reading"
  | "top-up"
  | "make-up"
  | "meter check"
  | "change-out"
  | "release"
  | "closed"
  | "wait";

/** Something that is late or wants a look, with what a person would do about it. */
export interface Overdue {
  readonly text: string;
  readonly kind?: StepKind;
}

export interface NextStep {
  readonly kind: StepKind;
  readonly sentence: string;
  /** A second, quieter sentence: why, or how. */
  readonly reason?: string;
  readonly urgent: boolean;
  readonly overdue: readonly Overdue[];
}

export interface Bath {
  readonly id: string;
  readonly facts: RowFacts<"baths">;
  readonly log: LogSnapshot;
  readonly system: UnitSystem;
}

export type Step = Omit<NextStep, "overdue">;

/** A limit of the shop, where the log names one. */
export function limitOf(log: LogSnapshot, field: FieldId): number | undefined {
  const limit = log.fields[field];
  return typeof limit === "number" ? limit : undefined;
}

/** Volumes as a measuring jug shows them. */
export const volumeWords = (value: number, system: UnitSystem): string => `${fixed(value, 2)} ${volume[system]}`;
