import { OutOfRange } from "../src/core/limits/domain.ts";
import { DomainError } from "../src/core/limits/domain-error.ts";
import { toThirteenDigits } from "../src/core/numeric/to-thirteen-digits.ts";
import type { UnitDefinition } from "../src/core/units/unit-definition.ts";
import type { UnitSystem } from "../src/core/units/unit-system.ts";
import { system as systemArgument, systemGiven } from "./arguments/arguments.ts";
import { inWords, otherDegreesHint, outOfRangeMessage, withoutUnit } from "./arguments/wording.ts";
import type { CallContext, CellInput, CellMatrix, CellValue, WorksheetFunction } from "./define-function.ts";

/** One call; most need no units for a message, so these are made when the first is noted. */
class Call implements CallContext {
  private units: Map<string, UnitDefinition> | undefined;
  private numbers: Map<string, number> | undefined;

  systemNamed = false;

  constructor(public system: UnitSystem) {}

  get given(): Map<string, UnitDefinition> {
    return (this.units ??= new Map());
  }

  get bare(): Map<string, number> {
    return (this.numbers ??= new Map());
  }
}

function callOf(fn: WorksheetFunction, cells: readonly CellInput[]): Call {
  const call = new Call("US");
  const last = fn.arguments.length - 1;
  if (fn.arguments[last] === systemArgument) {
    const given = systemGiven.read(cells[last], call);
    call.systemNamed = given !== undefined;
    call.system = given ?? call.system;
  }
  return call;
}

/** 0 °C is 32 °F, not 31.99999999999994. */
function tidy(value: CellValue): CellValue {
  return typeof value === "number" ? toThirteenDigits(value) : value;
}

function isStorable(value: CellValue): boolean {
  return typeof value !== "number" || Number.isFinite(value);
}

function areStorable(result: CellValue | CellMatrix): boolean {
  return Array.isArray(result) ? result.every((row) => row.every(isStorable)) : isStorable(result);
}

/** The core's domains are wide; numbers near the ends of them can still give what no number holds. */
function beyondNumbers(fn: WorksheetFunction, cells: readonly CellInput[]): DomainError {
  const given = fn.arguments.filter(({ choices }, index) => choices === undefined && (cells[index] ?? "") !== "");
  const names = given.map(({ name }) => inWords(name));
  return new DomainError("invalid", `${names.join(", ")}: one of these is too large or too small to calculate with.`);
}

function argumentOf({ subject }: OutOfRange, call: CallContext): string | undefined {
  const name = subject.replaceAll(" ", "_");
  return [...call.given.keys()].find((argument) => withoutUnit(argument) === name);
}

function messageOf(refusal: OutOfRange, call: CallContext): string {
  const argument = argumentOf(refusal, call) ?? "";
  const bare = call.bare.get(argument);
  return (
    outOfRangeMessage(refusal, call.system, call.given.get(argument)) +
    (bare === undefined ? "" : otherDegreesHint(refusal, bare, call.system))
  );
}

/**
 * Runs a worksheet function on cells, the same way for a cell in Excel and for the pane.
 *
 * @returns a finite number, text or truth value, or rows of these
 * @throws DomainError with a message for the user, in the user's units
 */
export function evaluate(fn: WorksheetFunction, cells: readonly CellInput[]): CellValue | CellMatrix {
  const call = callOf(fn, cells);
  try {
    const values: unknown[] = [];
    for (const argument of fn.arguments) values.push(argument.read(cells[values.length], call));
    const result = fn.compute(values, call);
    if (!areStorable(result)) throw beyondNumbers(fn, cells);
    return Array.isArray(result) ? result.map((row) => row.map(tidy)) : tidy(result);
  } catch (refusal) {
    if (refusal instanceof OutOfRange) throw new DomainError("invalid", messageOf(refusal, call));
    throw refusal;
  }
}
