import { DomainError } from "../../src/core/limits/domain-error.ts";
import { saysGrains } from "../../src/core/units/find-unit.ts";
import { nearestUnitWord } from "../../src/core/units/nearest-unit-word.ts";
import type { Conversion } from "../../src/core/units/unit-conversion.ts";
import { convert, unitsMeant } from "../../src/core/units/unit-conversion.ts";
import { anyNumber, word } from "../arguments/arguments.ts";
import { inWords, quoted } from "../arguments/wording.ts";
import type { CallContext } from "../define-function.ts";
import { defineFunction } from "../define-function.ts";

function unknownUnit(argument: string, word: string): string {
  const nearest = nearestUnitWord(word);
  const question = nearest === undefined ? "" : ` did you mean ${quoted(nearest)}?`;
  return `${inWords(argument)} is ${quoted(word)}, not a known unit;${question} BATH.UNITS() lists all.`;
}

/** A label's ounces are fluid, but a unit named oz is a weight. */
function ounceHint(from: string, to: string): string {
  return [from, to].some((word) => /^oz\b/i.test(word.trim()))
    ? " oz alone is a weight; a fluid ounce is written fl oz."
    : "";
}

function grainHint(from: string, to: string): string {
  return [from, to].some((word) => saysGrains(word, "hardness")) ? " Grains per gallon are written gpg." : "";
}

function converted(value: number, from: string, to: string, call: CallContext): Conversion {
  try {
    return convert(value, from, to);
  } catch (refusal) {
    const [unit] = unitsMeant(from);
    if (unit !== undefined) call.given.set("value", unit);
    throw refusal;
  }
}

export const unitConvert = defineFunction({
  id: "UNITCONVERT",
  category: "Units and strength",
  summary: "Converts a number from one unit to another of the same kind.",
  arguments: [
    anyNumber("value", "the number to convert"),
    word("from", 'its unit, such as "gpg", "US gal", "°F", "%"; BATH.UNITS lists all'),
    word("to", "the unit wanted, of the same kind"),
  ],
  result: { excelType: "number", dimensionality: "scalar", unit: "the unit in “to”", help: "the converted number" },
  examples: [
    {
      formula: '=BATH.UNITCONVERT(1,"gpg","mg/L CaCO3")',
      cells: [1, "gpg", "mg/L CaCO3"],
      result: 17.118,
      tolerance: 0.0005,
      source: "1 grain of 64.79891 mg per US gallon of 3.785411784 L, both by definition",
    },
    {
      formula: '=BATH.UNITCONVERT(131,"°F","°C")',
      cells: [131, "°F", "°C"],
      result: 55,
      tolerance: 1e-9,
      source: "(131 − 32) × 5/9, by definition",
    },
  ],
  notes: [
    "A bare gallon, quart, pint or fluid ounce is a US one; write “imperial gal” for the other.",
    "oz alone is a weight here, so oz/gal is weight per volume; write fl oz/gal for a strength. In STRENGTH and DOSE, which take no weights, oz is fluid.",
    "g/L of a substance and eq/L are not converted into one another: that needs the substance.",
    "A value of 0 is converted, since 0 °C is a temperature; a blank cell that Excel hands over as 0 is converted too.",
    "Sizes of temperature differences have their own units, Δ°C and Δ°F.",
  ],
  source: "Factors from exact definitions; molar mass of CaCO3 100.0869 g/mol.",
  compute: ([value, from, to], call) => {
    const conversion = converted(value, from, to, call);
    switch (conversion.converted) {
      case "value":
        return conversion.value;
      case "unknown":
        throw new DomainError("invalid", unknownUnit(conversion.word === from ? "from" : "to", conversion.word));
      case "different kinds":
        throw new DomainError(
          "invalid",
          `${inWords("from")} is ${quoted(from)}, a unit of ${conversion.from}, and ${inWords("to")} is ${quoted(to)}, one of ${conversion.to}; they do not convert.${ounceHint(from, to)}${grainHint(from, to)}`,
        );
    }
  },
});
