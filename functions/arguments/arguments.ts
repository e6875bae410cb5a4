import { parseMoney } from "../../src/core/units/parse-money.ts";
import type { PH } from "../../src/core/units/quantity.ts";
import { ph } from "../../src/core/units/quantity.ts";
import type { UnitSystem } from "../../src/core/units/unit-system.ts";
import { unitSystems } from "../../src/core/units/unit-system.ts";
import type { Argument, CellValue } from "../define-function.ts";
import { ambiguityMessage, isBlank, isBlankOrZero, numberFrom, refuse, singleCell, wordIn } from "./read-cell.ts";
import { notOneOf, notOneOfChemicals } from "./wording.ts";

type About<Name extends string> = Pick<Argument<unknown, Name>, "name" | "help" | "unit" | "optional" | "choices">;

function oneCell<Value, const Name extends string>(
  about: About<Name>,
  fromCell: (cell: CellValue) => Value,
): Argument<Value, Name> {
  return {
    excelType: "any",
    dimensionality: "scalar",
    ...about,
    read: (input) => fromCell(singleCell(about.name, input)),
  };
}

/** A required plain number for which 0 makes no sense. */
export function positiveNumber<const Name extends string>(
  name: Name,
  help: string,
  unit: string,
): Argument<number, Name> {
  return oneCell({ name, help, unit, optional: false }, (cell) => {
    if (isBlankOrZero(cell)) refuse(name, "is blank or 0.");
    return numberFrom(name, cell);
  });
}

/** A required amount of money, with its currency's sign or without. */
export function moneyAmount<const Name extends string>(name: Name, help: string, unit: string): Argument<number, Name> {
  return oneCell({ name, help, unit, optional: false }, (cell) => {
    if (isBlankOrZero(cell)) refuse(name, "is blank or 0.");
    const money = typeof cell === "string" ? parseMoney(cell) : undefined;
    if (money?.read === "ambiguous") refuse(name, ambiguityMessage(String(cell), money.readings));
    return money?.read === "number" ? money.value : numberFrom(name, cell);
  });
}

/** A pH reading; 0 and blank are refused alike, since no bath reads 0. */
export function phReading<const Name extends string>(name: Name, help: string): Argument<PH, Name> {
  const number = positiveNumber(name, help, "pH");
  return { ...number, read: (input, call) => ph(number.read(input, call)) };
}

/** A required plain number that may be 0; a cell that is blank for certain is refused. */
export function anyNumber<const Name extends string>(name: Name, help: string): Argument<number, Name> {
  return oneCell({ name, help, optional: false }, (cell) => {
    if (isBlank(cell)) refuse(name, "is blank.");
    return numberFrom(name, cell);
  });
}

/** An optional plain number; blank, 0 and left out all mean the default. */
export function optionalNumber<const Name extends string>(
  name: Name,
  help: string,
  unit: string,
  fallback: number,
): Argument<number, Name> {
  return oneCell({ name, help, unit, optional: true }, (cell) =>
    isBlankOrZero(cell) ? fallback : numberFrom(name, cell),
  );
}

/** Other words for a choice, in small letters: what drums and people say for it. */
type AlsoRead<Choice extends string> = Readonly<Record<string, Choice>>;

/** Reads one of a few words; `undefined` where the cell is blank, which a text parameter may get as "0". */
function choiceReader<Choice extends string>(
  name: string,
  choices: readonly Choice[],
  alsoRead: AlsoRead<Choice>,
  refusal: typeof notOneOf = notOneOf,
): (cell: CellValue) => Choice | undefined {
  const asWritten = choices.map((choice) => [choice, choice] as const);
  const known = new Map<string, Choice>([
    ...Object.entries(alsoRead),
    ...asWritten,
    ...choices.map((choice) => [choice.toLowerCase(), choice] as const),
  ]);
  return (cell) => {
    if (isBlankOrZero(cell) || cell === "0") return undefined;
    return known.get(String(cell)) ?? known.get(wordIn(cell)) ?? refuse(name, refusal(String(cell), choices));
  };
}

/** Excel offers the words of a text parameter while a formula is typed. */
function oneOf<Value, const Name extends string>(
  about: About<Name>,
  fromCell: (cell: CellValue) => Value,
): Argument<Value, Name> {
  return { ...oneCell(about, fromCell), excelType: "string" };
}

/** A required chemical out of a few. */
export function requiredChemical<Choice extends string, const Name extends string>(
  name: Name,
  help: string,
  choices: readonly Choice[],
  alsoRead: AlsoRead<Choice>,
): Argument<Choice, Name> {
  const read = choiceReader(name, choices, alsoRead, notOneOfChemicals);
  return oneOf({ name, help, optional: false, choices }, (cell) => read(cell) ?? refuse(name, "is blank."));
}

/** An optional word out of a few; blank and left out mean "not given". */
export function optionalChoice<Choice extends string, const Name extends string>(
  name: Name,
  help: string,
  choices: readonly Choice[],
): Argument<Choice | undefined, Name> {
  return oneOf({ name, help, optional: true, choices }, choiceReader(name, choices, {}));
}

/** An optional word out of a few; blank and left out mean the fallback. */
export function choice<Choice extends string, const Name extends string>(
  name: Name,
  help: string,
  choices: readonly Choice[],
  fallback: NoInfer<Choice>,
): Argument<Choice, Name> {
  const given = optionalChoice(name, help, choices);
  return { ...given, read: (input, call) => given.read(input, call) ?? fallback };
}

/** A required text. */
export function word<const Name extends string>(name: Name, help: string): Argument<string, Name> {
  return oneCell({ name, help, optional: false }, (cell) => {
    if (typeof cell !== "string") return refuse(name, isBlankOrZero(cell) ? "is blank." : "must be a word in quotes.");
    const text = cell.trim();
    return text === "" ? refuse(name, "is blank.") : text;
  });
}

/** The system that a call names; undefined where it is left out. */
export const systemGiven: Argument<UnitSystem | undefined, "system"> = optionalChoice(
  "system",
  "US (default), metric or imperial: the unit of bare numbers and of the result",
  unitSystems,
);

/** The last argument of every function that takes everyday units. `evaluate` reads it first. */
export const system: Argument<UnitSystem, "system"> = {
  ...systemGiven,
  read: (input, call) => systemGiven.read(input, call) ?? "US",
};
