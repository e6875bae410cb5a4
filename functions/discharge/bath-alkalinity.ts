import { bathAlkalinity as heldByBath } from "../../src/core/limits/domains.ts";
import { fromSi, toSi } from "../../src/core/units/convert.ts";
import { unitBySymbol } from "../../src/core/units/find-unit.ts";
import { parseNumber } from "../../src/core/units/parse-number.ts";
import type { Alkalinity } from "../../src/core/units/quantity.ts";
import type { UnitDefinition } from "../../src/core/units/unit-definition.ts";
import { quantity } from "../arguments/quantity-argument.ts";
import { isBlankOrZero, refuse, singleCell } from "../arguments/read-cell.ts";
import { plainNumber } from "../arguments/wording.ts";
import type { Argument, CallContext, CellInput, CellValue } from "../define-function.ts";

const name = "alkalinity";

/**
 * A bare number is mg/L, as ALKALINITY gives it. All but a very thin alkaline bath holds more than this many mg/L,
 * and hardly one as many meq/L; common practice, no source.
 */
const leastBare = 200;

const milligramsPerLiter = unitBySymbol("mg/L CaCO3", "alkalinity");
const milliequivalentsPerLiter = unitBySymbol("meq/L", "alkalinity");

function isBare(cell: CellValue): boolean {
  return typeof cell === "number" || (typeof cell === "string" && parseNumber(cell).read === "number");
}

/** Both readings of a number that is small for mg/L and usual for meq/L. */
function refuseSmall(given: number): never {
  const figure = plainNumber(given);
  const otherwise = plainNumber(fromSi(toSi(given, milliequivalentsPerLiter), milligramsPerLiter));
  refuse(
    name,
    `is ${figure}; a number alone is mg/L as CaCO3, and an alkaline bath holds more. If it is meq/L, write “${figure} meq/L” (${otherwise} mg/L); if it is truly mg/L, write “${figure} mg/L”.`,
  );
}

/** The next smaller unit in which titrations are told. */
function likelyMeant(figure: string, { symbol }: UnitDefinition): string {
  if (symbol === "meq/L") return ` If it is mg/L as CaCO3, write “${figure} mg/L”.`;
  return symbol === "eq/L" ? ` If it is meq/L, write “${figure} meq/L”.` : "";
}

/** More than a bath holds, in the unit given, and the unit that was likely meant. */
function refuseLarge(given: number, unit: UnitDefinition): never {
  const most = plainNumber(heldByBath.high);
  const mostMilligrams = plainNumber(fromSi(heldByBath.high, milligramsPerLiter));
  const figure = plainNumber(given);
  refuse(
    name,
    `is ${figure} ${unit.symbol}; no wash bath holds more than ${most} meq/L (${mostMilligrams} mg/L), and concentrate is never neutralized.${likelyMeant(figure, unit)}`,
  );
}

function checked(input: CellInput, read: Alkalinity, call: CallContext): Alkalinity {
  const unit = call.given.get(name) ?? milligramsPerLiter;
  const given = fromSi(read, unit);
  if (isBare(singleCell(name, input)) && given > 0 && given < leastBare) refuseSmall(given);
  if (read > heldByBath.high) refuseLarge(given, unit);
  return read;
}

function ofBath(help: string): Argument<Alkalinity, typeof name> {
  const plain = quantity(name, { kind: "alkalinity", help });
  return { ...plain, read: (input, call) => checked(input, plain.read(input, call), call) };
}

/** Alkalinity titrated to the pH wanted, straight from ALKALINITY or with its unit. */
export const alkalinityToTarget = ofBath(
  'titrated alkalinity of the bath to the pH wanted, as ALKALINITY gives it, or text such as "6.4 meq/L"; a number under 200 must say its unit',
);

const total = ofBath(
  'alkalinity of the bath titrated to pH 4.5, as ALKALINITY gives it, or text such as "13.65 meq/L"; a number under 200 must say its unit; if blank, you get a minimum only',
);

export const totalAlkalinity: Argument<Alkalinity | undefined, typeof name> = {
  ...total,
  optional: true,
  read: (input, call) => (isBlankOrZero(singleCell(name, input)) ? undefined : total.read(input, call)),
};
