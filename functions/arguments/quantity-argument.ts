import { toSi } from "../../src/core/units/convert.ts";
import { defaultUnit } from "../../src/core/units/default-unit.ts";
import { saysGrains, unitBySymbol } from "../../src/core/units/find-unit.ts";
import { nearestUnitWord } from "../../src/core/units/nearest-unit-word.ts";
import { isMoney } from "../../src/core/units/parse-money.ts";
import { parseQuantity } from "../../src/core/units/parse-quantity.ts";
import type { Quantity, QuantityKind } from "../../src/core/units/quantity.ts";
import type { UnclearNumber } from "../../src/core/units/unclear-number.ts";
import { coldSample, fahrenheitOrCelsius, isDoubtful, unclearNumber } from "../../src/core/units/unclear-number.ts";
import type { UnitDefinition } from "../../src/core/units/unit-definition.ts";
import type { UnitSystem } from "../../src/core/units/unit-system.ts";
import { unitSystems } from "../../src/core/units/unit-system.ts";
import { unitTable } from "../../src/core/units/unit-table.ts";
import type { Argument, CallContext, CellValue } from "../define-function.ts";
import { list } from "./list-arguments.ts";
import { ambiguityMessage, isBlank, isBlankOrZero, refuse, singleCell } from "./read-cell.ts";
import { askInstead, oneOfThe, plainNumber, quoted, writeOneOf } from "./wording.ts";

interface QuantityHelp<Kind extends QuantityKind> {
  readonly kind: Kind;
  readonly help: string;
  /** Symbol of the unit of a bare number, where it is not the system's usual one. */
  readonly bareUnit?: string;
  /** The sample of a wash bath: a bare temperature too cold for one is asked about. */
  readonly ofSample?: boolean;
  /** The answer is in whatever unit was given, so that a bare number needs none. */
  readonly anyUnit?: boolean;
}

function bareUnitOf(about: QuantityHelp<QuantityKind>, call: Pick<CallContext, "system">): UnitDefinition {
  return about.bareUnit === undefined ? defaultUnit(about.kind, call.system) : unitBySymbol(about.bareUnit, about.kind);
}

/** "US gal (US), L (metric), imperial gal (imperial)", or one unit where the systems agree. */
function unitWords(about: QuantityHelp<QuantityKind>): string {
  const perSystem = unitSystems.map((system) => ({ system, symbol: bareUnitOf(about, { system }).symbol }));
  const symbols = new Set(perSystem.map(({ symbol }) => symbol));
  return symbols.size === 1
    ? [...symbols].join("")
    : perSystem.map(({ system, symbol }) => `${symbol} (${system})`).join(", ");
}

/**
 * 60 °F is an ordinary sample, and a log takes it; but 60 °C is what many baths are kept at, and a formula by itself
 * stands in no shop's log that says which.
 */
function sixtyDegrees(kind: QuantityKind, value: number, call: CallContext): UnclearNumber | undefined {
  return kind === "temperature" && call.system === "US" && value === coldSample.high
    ? fahrenheitOrCelsius(value)
    : undefined;
}

/** Refuses a bare number that makes sense in two units; both readings are said. */
function checkClear(name: string, value: number, about: QuantityHelp<QuantityKind>, call: CallContext): void {
  call.bare.set(name, value);
  if (about.bareUnit !== undefined || about.anyUnit === true || !isDoubtful(about.kind)) return;
  if (about.kind === "temperature" && (about.ofSample !== true || call.systemNamed)) return;
  const unclear = unclearNumber(about.kind, value, call.system) ?? sixtyDegrees(about.kind, value, call);
  if (unclear !== undefined) refuse(name, `is ${plainNumber(value)}, without a unit; ${writeOneOf(unclear)}.`);
}

function quantityFrom(name: string, cell: CellValue, about: QuantityHelp<QuantityKind>, call: CallContext): number {
  const bareUnit = bareUnitOf(about, call);
  call.given.set(name, bareUnit);
  if (typeof cell === "number" && Number.isFinite(cell)) {
    checkClear(name, cell, about, call);
    return toSi(cell, bareUnit);
  }
  if (typeof cell !== "string") refuse(name, `must be a number or text with a unit of ${about.kind}.`);
  const reading = parseQuantity(cell, about.kind, call.system, bareUnit);
  switch (reading.read) {
    case "quantity":
      call.given.set(name, reading.unit);
      if (reading.bare !== undefined) checkClear(name, reading.bare, about, call);
      return reading.si;
    case "ambiguous":
      return refuse(name, ambiguityMessage(cell, reading.readings, reading.rest));
    case "undecided":
      return refuse(name, `is ${quoted(cell)}; write ${reading.choices.map(quoted).join(" or ")}.`);
    case "other kind":
      return refuse(
        name,
        `is ${quoted(cell)}: ${reading.unit.symbol} is a unit of ${reading.unit.kind}, not of ${about.kind}.${ounceHint(reading.unit, about.kind)}${grainHint(reading.unit, about.kind, call.system)}`,
      );
    case "unknown unit":
      return refuse(
        name,
        askInstead(cell, nearestUnitWord(reading.word, about.kind, call.system), numberWithUnit(about.kind)),
      );
    case "nothing":
      return refuse(
        name,
        isMoney(cell)
          ? `is ${quoted(cell)}, an amount of money; ${numberWithUnit(about.kind)}`
          : askInstead(cell, undefined, numberWithUnit(about.kind)),
      );
  }
}

/** Two measures share the word ounce; only in a strength is it fluid without being said. */
function ounceHint(unit: UnitDefinition, wanted: QuantityKind): string {
  return unit.symbol === "oz" && wanted === "volume" ? " A fluid ounce is written fl oz." : "";
}

/** Only an American shop's grain is sure to be one per US gallon. */
function grainHint(unit: UnitDefinition, wanted: QuantityKind, system: UnitSystem): string {
  if (!saysGrains(unit.symbol, wanted)) return "";
  return system === "imperial"
    ? " Grains per gallon are written °Clark (imperial gallon) or gpg (US gallon)."
    : " Grains per US gallon are written gpg.";
}

function numberWithUnit(kind: QuantityKind): string {
  return `write a number, or a number with one of ${knownUnits(kind)}.`;
}

function knownUnits(kind: QuantityKind): string {
  return unitTable
    .filter((unit) => unit.kind === kind)
    .map((unit) => unit.symbol)
    .join(", ");
}

/** A required quantity for which 0 makes no sense: blank and 0 are refused alike. */
export function quantity<Kind extends QuantityKind, const Name extends string>(
  name: Name,
  about: QuantityHelp<Kind>,
): Argument<Quantity<Kind>, Name> {
  return {
    name,
    help: about.help,
    unit: unitWords(about),
    excelType: "any",
    dimensionality: "scalar",
    optional: false,
    read: (input, call) => {
      const cell = singleCell(name, input);
      if (isBlankOrZero(cell)) refuse(name, "is blank or 0.");
      return quantityFrom(name, cell, about, call) as Quantity<Kind>;
    },
  };
}

/** A required column or row of quantities; blanks, zeros and a header on top are skipped. */
export function quantityList<Kind extends QuantityKind, const Name extends string>(
  name: Name,
  about: QuantityHelp<Kind>,
): Argument<readonly Quantity<Kind>[], Name> {
  return list(name, {
    help: about.help,
    unit: unitWords(about),
    read: (cell, call) => quantityFrom(oneOfThe(name), cell, about, call) as Quantity<Kind>,
  });
}

/**
 * A required quantity that can truly be 0, such as the hardness of a pure water. A bare 0 may be a
 * blank cell, so a true 0 is written with its unit.
 */
export function quantityOrWrittenZero<Kind extends QuantityKind, const Name extends string>(
  name: Name,
  about: QuantityHelp<Kind>,
): Argument<Quantity<Kind>, Name> {
  const argument = quantity(name, about);
  return {
    ...argument,
    read: (input, call) => {
      if (isBlankOrZero(singleCell(name, input))) {
        refuse(name, `is blank or 0. If it is truly none, write “0 ${bareUnitOf(about, call).symbol}”.`);
      }
      return argument.read(input, call);
    },
  };
}

/** A required quantity for which a bare 0 is a common answer; a cell that is blank for certain is refused. */
export function quantityOrNone<Kind extends QuantityKind, const Name extends string>(
  name: Name,
  about: QuantityHelp<Kind>,
): Argument<Quantity<Kind>, Name> {
  return {
    ...quantity(name, about),
    read: (input, call) => {
      const cell = singleCell(name, input);
      if (isBlank(cell)) refuse(name, "is blank. If it is truly none, write 0.");
      return quantityFrom(name, cell, about, call) as Quantity<Kind>;
    },
  };
}

/** An optional quantity; blank, 0 and left out all mean "not given". */
export function optionalQuantity<Kind extends QuantityKind, const Name extends string>(
  name: Name,
  about: QuantityHelp<Kind>,
): Argument<Quantity<Kind> | undefined, Name> {
  return {
    ...quantity(name, about),
    optional: true,
    read: (input, call) => {
      const cell = singleCell(name, input);
      return isBlankOrZero(cell) ? undefined : (quantityFrom(name, cell, about, call) as Quantity<Kind>);
    },
  };
}
