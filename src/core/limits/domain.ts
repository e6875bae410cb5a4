import type { QuantityKind } from "../units/quantity.ts";
import { DomainError } from "./domain-error.ts";

/** What a bounded number measures: a quantity in its SI unit, a pH, or a plain number. */
type Measure = QuantityKind | "pH" | "number";

/** The allowed range of an input, in SI units. */
export interface Domain {
  readonly measure: Measure;
  readonly low: number;
  readonly high: number;
  /** The low end itself is not allowed. */
  readonly openLow?: boolean;
  /** The high end itself is not allowed. */
  readonly openHigh?: boolean;
  /** Why nothing lower is taken, and what to do: whole sentences, said after the range. */
  readonly tooLow?: string;
  /** Why nothing higher is taken, and what to do. */
  readonly tooHigh?: string;
}

/** An input outside its domain; whoever knows the user's unit words the message from these facts. */
export class OutOfRange extends DomainError {
  /** What the number is, in plain words: "volume". */
  readonly subject: string;
  readonly given: number;
  readonly domain: Domain;

  constructor(subject: string, given: number, domain: Domain) {
    super("invalid", `The ${subject} is outside its allowed range`);
    this.subject = subject;
    this.given = given;
    this.domain = domain;
  }
}

/** Why a value outside its domain is refused, where the domain says so. */
export function reasonOf({ given, domain }: OutOfRange): string | undefined {
  return given > domain.low ? domain.tooHigh : domain.tooLow;
}

/** Whether a value, in the unit of the domain, lies in it; not a number never does. */
export function isWithin(value: number, domain: Domain): boolean {
  const aboveLow = domain.openLow === true ? value > domain.low : value >= domain.low;
  const belowHigh = domain.openHigh === true ? value < domain.high : value <= domain.high;
  return aboveLow && belowHigh;
}

/** @throws OutOfRange when the value is not a number within the domain */
export function checkWithin(subject: string, value: number, domain: Domain): void {
  if (!isWithin(value, domain)) throw new OutOfRange(subject, value, domain);
}
