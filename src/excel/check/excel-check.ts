/** What a check of this Excel is: data, with the one function that tries it. */
import type { CallRecord } from "./call-record.ts";

export type Verdict = "ok" | "differs" | "could not be tried";

/** What a check has to work with. */
export interface CheckBench {
  readonly context: Excel.RequestContext;
  /** A blank sheet of its own, which is deleted afterward. */
  readonly sheet: Excel.Worksheet;
  readonly calls: CallRecord;
  readonly pause: (milliseconds: number) => Promise<void>;
}

export interface Finding {
  readonly verdict: Verdict;
  readonly seen: string;
}

export interface ExcelCheck {
  /** Never changes: reports of different Excels are compared by it. */
  readonly id: string;
  readonly title: string;
  /** What is done. */
  readonly asks: string;
  /** What Bathsheet relies on. */
  readonly expected: string;
  /** How long an answer may take, in milliseconds; 30 s unless it says so. */
  readonly patience?: number;
  /** An error of Excel that this throws is a finding too; any other means that the check could not be tried. */
  readonly run: (bench: CheckBench) => Promise<Finding>;
}

/** Thrown by a check for which something is lacking. */
export class NotTried extends Error {
  constructor(message: string) {
    super(message);
    this.name = "NotTried";
  }
}

/** All sheets of the checks begin so; only such sheets are ever deleted. */
export const sheetPrefix = "Bathsheet check ";

/** What was thrown, in its words; it may come from another window, where `instanceof` fails. */
export function wordsOf(error: unknown): string {
  return typeof error === "object" && error !== null && "message" in error ? String(error.message) : String(error);
}

export function finding(asExpected: boolean, seen: string): Finding {
  return { verdict: asExpected ? "ok" : "differs", seen };
}

/** A value as it would stand in a program, so that blank, null and 0 look different. */
export function spelled(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(spelled).join(", ")}]`;
  if (typeof value === "string") return `"${value}"`;
  if (typeof value === "object" && value !== null) return `an object with ${Object.keys(value).join(", ")}`;
  return String(value);
}
