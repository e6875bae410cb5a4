import { unitSystems } from "../src/core/units/unit-system.ts";
import { isBlank, isBlankOrZero, numberFrom, refuse, singleCell } from "./read-cell.ts";
import { ph } from "../src/core/units/quantity.ts";
import { quoted } from "./wording.ts";
import type { Argument, CellValue } from "./define-function.ts";
import type { PH } from "../src/core/units/quantity.ts";
import type { UnitSystem } from "../src/core/units/unit-system.ts";

type About = Pick<Argument<unknown>, "name" | "help" | "unit" | "optional" | "choices">;

function oneCell<Value>(about: About, fromCell: (cell: CellValue) => Value): Argument<Value> {
  return { excelType: "any", dimensionality: "scalar", ...about, read: (input) => fromCell(singleCell(about.name, input)) };
}

/** A required plain number for which 0 makes no sense. */
export function positiveNumber(name: string, help: string, unit: string): Argument<number> {
  return oneCell({ name, help, unit, optional: false }, (cell) => {
    if (isBlankOrZero(cell)) refuse(name, "is blank or 0.");
    return numberFrom(name, cell);
  });
}

/** A pH reading; 0 and blank are refused alike, since no bath reads 0. */
export function phReading(name: string, help: string): Argument<PH> {
  const number = positiveNumber(name, help, "pH");
  return { ...number, read: (input, call) => ph(number.read(input, call)) };
}

/** A required plain number that may be 0; a cell that is blank for certain is refused. */
export function anyNumber(name: string, help: string): Argument<number> {
  return oneCell({ name, help, optional: false }, (cell) => {
    if (isBlank(cell)) refuse(name, "is blank.");
    return numberFrom(name, cell);
  });
}

/** An optional plain number; blank, 0 and left out all mean the default. */
export function optionalNumber(name: string, help: string, unit: string, fallback: number): Argument<number> {
  return oneCell({ name, help, unit, optional: true }, (cell) => (isBlankOrZero(cell) ? fallback : numberFrom(name, cell)));
}

function choiceFrom<Choice extends string>(name: string, cell: CellValue, choices: readonly Choice[]): Choice {
  const word = String(cell).trim().toLowerCase();
  const found = choices.find((choice) => choice.toLowerCase() === word);
  return found ?? refuse(name, `is ${quoted(String(cell))}; write ${choices.map((choice) => `“${choice}”`).join(", ")}.`);
}

/** A required word out of a few. */
export function requiredChoice<Choice extends string>(name: string, help: string, choices: readonly Choice[]): Argument<Choice> {
  return oneCell({ name, help, optional: false, choices }, (cell) => {
    if (isBlankOrZero(cell)) refuse(name, "is blank.");
    return choiceFrom(name, cell, choices);
  });
}

/** An optional word out of a few; blank and left out mean "not given". */
export function optionalChoice<Choice extends string>(
  name: string,
  help: string,
  choices: readonly Choice[],
): Argument<Choice | undefined> {
  return oneCell({ name, help, optional: true, choices }, (cell) => (isBlankOrZero(cell) ? undefined : choiceFrom(name, cell, choices)));
}

/** An optional word out of a few; blank and left out mean the fallback. */
export function choice<Choice extends string>(
  name: string,
  help: string,
  choices: readonly Choice[],
  fallback: NoInfer<Choice>,
): Argument<Choice> {
  const given = optionalChoice(name, help, choices);
  return { ...given, read: (input, call) => given.read(input, call) ?? fallback };
}

/** A required text. */
export function word(name: string, help: string): Argument<string> {
  return oneCell({ name, help, optional: false }, (cell) => {
    if (isBlankOrZero(cell)) refuse(name, "is blank.");
    if (typeof cell !== "string") refuse(name, "must be a word in quotes.");
    return cell.trim();
  });
}

/** The last argument of every function that takes everyday units. `evaluate` reads it first. */
export const system: Argument<UnitSystem> = choice(
  "system",
  "US (default), metric or imperial: the unit of bare numbers and of the result",
  unitSystems,
  "US",
);
