import { isShareInDoubt, ratioTakenForTime } from "../../src/core/units/bare-strength.ts";
import { nearestUnitWord } from "../../src/core/units/nearest-unit-word.ts";
import { isMoney } from "../../src/core/units/parse-money.ts";
import { parseStrength } from "../../src/core/units/parse-strength.ts";
import type { VolumeFraction } from "../../src/core/units/quantity.ts";
import { volumeFraction } from "../../src/core/units/quantity.ts";
import type { UnitSystem } from "../../src/core/units/unit-system.ts";
import type { Argument, CellValue } from "../define-function.ts";
import { ambiguityMessage, isBlankOrZero, refuse, singleCell } from "./read-cell.ts";
import { askInstead, plainNumber, quoted } from "./wording.ts";

const advice = "write 1+40, 1 in 40 or 2.5%";

function typedFraction(name: string, value: number): VolumeFraction {
  const parts = ratioTakenForTime(value);
  if (parts !== undefined) {
    refuse(
      name,
      `is ${plainNumber(value)}, the time of day that Excel makes of 1:${String(parts)}; write “1+${String(parts)}”, or “${plainNumber(100 * value)}%” if it is a share, as text.`,
    );
  }
  return fractionFrom(name, value);
}

function fractionFrom(name: string, value: number): VolumeFraction {
  if (value >= 1)
    refuse(
      name,
      `is ${plainNumber(value)}; a bare number is the share of the finished bath and lies below 1: ${advice}.`,
    );
  if (isShareInDoubt(value))
    refuse(
      name,
      `is ${plainNumber(value)}, which as a share is ${plainNumber(100 * value)} %; write “${plainNumber(value)}%” or “${plainNumber(100 * value)}%”, as text.`,
    );
  return volumeFraction(value);
}

function strengthFrom(
  name: string,
  cell: CellValue,
  system: UnitSystem,
  fractionOf: typeof fractionFrom,
): VolumeFraction {
  if (typeof cell === "number" && Number.isFinite(cell)) return fractionOf(name, cell);
  if (typeof cell !== "string") refuse(name, `must be a strength: ${advice}.`);
  const reading = parseStrength(cell, system);
  switch (reading.read) {
    case "strength":
      return reading.fraction;
    case "number":
      return fractionFrom(name, reading.value);
    case "ambiguous":
      return refuse(name, ambiguityMessage(cell, reading.readings));
    case "reversed":
      return refuse(
        name,
        `is ${quoted(cell)}, more concentrate than water; the concentrate stands first: write 1+${plainNumber(reading.parts / reading.water)}.`,
      );
    case "undecided":
      return refuse(name, `is ${quoted(cell)}; write US or imperial before the measure.`);
    case "weight":
      return refuse(
        name,
        `is ${quoted(cell)}, a weight; a strength is volume in volume: write fl oz, mL or another measure of volume.`,
      );
    case "unknown unit":
      return refuse(
        name,
        askInstead(cell, nearestUnitWord(reading.word, "volume", system), `${advice}, or 3 fl oz/gal, 25 mL/L.`),
      );
    case "nothing":
      return refuse(
        name,
        `is ${quoted(cell)}${isMoney(cell) ? ", an amount of money" : ""}; ${advice}, or 3 fl oz/gal, 25 mL/L.`,
      );
  }
}

function strengthRead<const Name extends string>(
  name: Name,
  help: string,
  fractionOf: typeof fractionFrom,
): Argument<VolumeFraction, Name> {
  return {
    name,
    help,
    unit: "share of the finished bath",
    excelType: "any",
    dimensionality: "scalar",
    optional: false,
    read: (input, call) => {
      const cell = singleCell(name, input);
      if (isBlankOrZero(cell)) refuse(name, "is blank or 0.");
      return strengthFrom(name, cell, call.system, fractionOf);
    },
  };
}

/** A required strength in any of the ways that labels use, as somebody types it. */
export function strengthArgument<const Name extends string>(name: Name, help: string): Argument<VolumeFraction, Name> {
  return strengthRead(name, help, typedFraction);
}

/** The strength of a bath as it stands: often a dose over a volume, which may come to any number, a time's too. */
export function reachedStrength<const Name extends string>(name: Name, help: string): Argument<VolumeFraction, Name> {
  return strengthRead(name, help, fractionFrom);
}

/** A strength that may be left out. */
function optionalStrength<const Name extends string>(
  name: Name,
  help: string,
): Argument<VolumeFraction | undefined, Name> {
  const given = strengthArgument(name, help);
  return {
    ...given,
    optional: true,
    read: (input, call) => (isBlankOrZero(singleCell(name, input)) ? undefined : given.read(input, call)),
  };
}

export const labelHighest = optionalStrength(
  "label_highest",
  "the label's highest strength, written as in DOSE; what comes to more is refused. Left out: not looked at",
);

export const rate = strengthArgument(
  "rate",
  'strength: "1+40" (1 part and 40 parts water; so is "1:40"), "1 in 40", "2.5%", "3 fl oz/gal" (of bath; oz alone is fluid too), "3 fl oz to 1 gal" (added to water), "25 mL/L", or a share such as 0.025',
);
