import { DomainError } from "../src/core/domain-error.ts";
import { OutOfRange } from "../src/core/domain.ts";
import { system as systemArgument } from "./arguments.ts";
import { outOfRangeMessage, withoutUnit } from "./wording.ts";
import type { UnitDefinition } from "../src/core/units/unit-definition.ts";
import type { CallContext, CellInput, CellMatrix, CellValue, WorksheetFunction } from "./define-function.ts";

function contextOf(fn: WorksheetFunction, cells: readonly CellInput[]): CallContext {
  const index = fn.arguments.findIndex((argument) => argument.name === systemArgument.name);
  const given = new Map<string, UnitDefinition>();
  return { given, system: index < 0 ? "US" : systemArgument.read(cells[index], { system: "US", given }) };
}

/** The last two or three figures of a double are rounding noise: 0 °C is 32 °F, not 31.99999999999994. */
const figures = 13;

/** Powers of ten that a double holds exactly, so that dividing by one gives the nearest double. */
const exactPowers = Array.from({ length: 23 }, (_, exponent) => Number(`1e${String(exponent)}`));

/** A printed number read again would give the same, but takes a third of the time of a conversion of units. */
function rounded(value: number): number {
  const power = exactPowers[figures - 1 - Math.floor(Math.log10(Math.abs(value)))];
  return power === undefined ? Number(value.toPrecision(figures)) : Math.round(value * power) / power;
}

function tidy(value: CellValue): CellValue {
  if (typeof value !== "number") return value;
  if (!Number.isFinite(value)) throw new DomainError("invalid", "The numbers given are too large or too small to calculate with.");
  return rounded(value);
}

function unitGiven(refusal: OutOfRange, call: CallContext): UnitDefinition | undefined {
  const name = refusal.subject.replaceAll(" ", "_");
  return [...call.given].find(([argument]) => withoutUnit(argument) === name)?.[1];
}

/**
 * Runs a worksheet function on cells, the same way for a cell in Excel and for the pane.
 *
 * @returns a finite number, text or truth value, or rows of these
 * @throws DomainError with a message for the user, in the user's units
 */
export function evaluate(fn: WorksheetFunction, cells: readonly CellInput[]): CellValue | CellMatrix {
  const call = contextOf(fn, cells);
  try {
    const values = fn.arguments.map((argument, index) => argument.read(cells[index], call));
    const result = fn.compute(values, call);
    return Array.isArray(result) ? result.map((row) => row.map(tidy)) : tidy(result);
  } catch (refusal) {
    if (refusal instanceof OutOfRange) throw new DomainError("invalid", outOfRangeMessage(refusal, call.system, unitGiven(refusal, call)));
    throw refusal;
  }
}
