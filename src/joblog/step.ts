import type { UnitSystem } from "../core/units/unit-system.ts";
import type { RowFacts } from "./bath-facts.ts";
import type { LogSnapshot } from "./log-snapshot.ts";
import { volume } from "./units-of.ts";

/** What a person would do: the pane offers the form that belongs to it. */
export type StepKind = "opening dose" | "bench test" | "baseline" | "reading" | "top-up" | "release" | "closed" | "wait";

export interface NextStep {
  readonly kind: StepKind;
  readonly sentence: string;
  /** A second, quieter sentence: why, or how. */
  readonly reason?: string;
  readonly urgent: boolean;
  /** Things that are late or want a look, each a sentence. */
  readonly overdue: readonly string[];
}

export interface Bath {
  readonly id: string;
  readonly facts: RowFacts;
  readonly log: LogSnapshot;
  readonly system: UnitSystem;
}

export type Step = Omit<NextStep, "overdue">;

/** A limit of the shop, where the log names one. */
export function limitOf(log: LogSnapshot, field: string): number | undefined {
  const limit = log.fields[field];
  return typeof limit === "number" ? limit : undefined;
}

export const round = (value: number, digits: number): string => value.toFixed(digits);

/** Volumes as a measuring jug shows them. */
export const volumeWords = (value: number, system: UnitSystem): string => `${round(value, 2)} ${volume[system]}`;
