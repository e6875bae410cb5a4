import { plainText } from "./plain-text.ts";

/** What a text turned out to be as a number. */
export type NumberReading =
  | { readonly read: "number"; readonly value: number }
  /** Could be a decimal or a thousands comma. */
  | { readonly read: "ambiguous"; readonly readings: readonly [number, number] }
  | { readonly read: "nothing" };

const decimalPoint = /^(?:\d+\.?\d*|\.\d+)$/;
const decimalComma = /^\d*,\d+$/;
const groupedBySpaces = /^[1-9]\d{0,2}(?: \d{3})+(?:[.,]\d+)?$/;
/** 1'500.25, as in Switzerland. */
const groupedByApostrophes = /^[1-9]\d{0,2}(?:'\d{3})+(?:[.,]\d+)?$/;
const groupedByCommas = /^[1-9]\d{0,2}(?:,\d{3})+(?:\.\d+)?$/;
/** 1,00,000: hundreds by three, all above by two, as in India. */
const groupedByTwos = /^[1-9]\d?(?:,\d{2})+,\d{3}(?:\.\d+)?$/;
/** 1.500 alone is one and a half. */
const groupedByDots = /^[1-9]\d{0,2}(?:(?:\.\d{3})+,\d+|(?:\.\d{3}){2,})$/;
const couldBeEither = /^[1-9]\d{0,2},\d{3}$/;
const fraction = /^(?:(\d+)[ -])?(\d+) ?\/ ?(\d+)$/;
const powerOfTen = /^(.*\d[.]?)(?:e([+-]?\d+)| ?[×x*·] ?10(?: ?\^ ?([+-]?\d+)|([⁺⁻]?[⁰¹²³⁴-⁹]+)))$/i;

const nothing: NumberReading = { read: "nothing" };

function number(value: number): NumberReading {
  return Number.isFinite(value) ? { read: "number", value } : nothing;
}

function withoutPower(text: string): NumberReading {
  if (decimalPoint.test(text)) return number(Number(text));
  if (couldBeEither.test(text)) {
    return { read: "ambiguous", readings: [Number(text.replace(",", ".")), Number(text.replace(",", ""))] };
  }
  if (decimalComma.test(text)) return number(Number(text.replace(",", ".")));
  if (groupedBySpaces.test(text) || groupedByApostrophes.test(text))
    return number(Number(text.replace(/[ ']/g, "").replace(",", ".")));
  if (groupedByCommas.test(text) || groupedByTwos.test(text)) return number(Number(text.replaceAll(",", "")));
  if (groupedByDots.test(text)) return number(Number(text.replaceAll(".", "").replace(",", ".")));
  return fractionIn(text);
}

/** 3/4, 1 1/2, and 1-1/2 as carpenters write it; beside a whole number only a part of one makes sense. */
function fractionIn(text: string): NumberReading {
  const [, whole, above, below] = fraction.exec(text) ?? [];
  const part = Number(above) / Number(below);
  if (above === undefined || !Number.isFinite(part)) return nothing;
  if (whole === undefined) return number(part);
  return part < 1 ? number(Number(whole) + part) : nothing;
}

/** The power's digits, superscript or plain. */
function exponentOf(parts: readonly (string | undefined)[]): string {
  return (parts[2] ?? parts[3] ?? parts[4] ?? "").normalize("NFKC").replace("−", "-");
}

/** 1e3, 1.5 × 10^3, 1,5·10³. */
function withPower(parts: readonly (string | undefined)[]): NumberReading {
  const power = 10 ** Number(exponentOf(parts));
  const mantissa = withoutPower(parts[1] ?? "");
  if (mantissa.read === "ambiguous")
    return { read: "ambiguous", readings: [mantissa.readings[0] * power, mantissa.readings[1] * power] };
  return mantissa.read === "number" ? number(Number(`${String(mantissa.value)}e${exponentOf(parts)}`)) : nothing;
}

function unsigned(text: string): NumberReading {
  const parts = powerOfTen.exec(text);
  return parts === null ? withoutPower(text) : withPower(parts);
}

function negated(reading: NumberReading): NumberReading {
  if (reading.read === "number") return { read: "number", value: -reading.value };
  if (reading.read === "ambiguous")
    return { read: "ambiguous", readings: [-reading.readings[0], -reading.readings[1]] };
  return reading;
}

/** Bookkeepers bracket what is below 0. */
const bracketed = /^\( ?(\d[^()]*?) ?\)$/;

/**
 * Reads a number as people write it: 1.5, 1,5, 1 500, 1'500, 1 1/2, ½, 1,500.25, 1e3, 1.5 × 10³, the digits of any
 * script, and (5) for -5. A lone comma before three digits is ambiguous and is reported with both readings.
 */
export function parseNumber(text: string): NumberReading {
  const tidy = plainText(text);
  const belowNone = bracketed.exec(tidy)?.[1];
  if (belowNone !== undefined) return negated(unsigned(belowNone));
  const reading = unsigned(tidy.replace(/^[+-] ?/, ""));
  return tidy.startsWith("-") ? negated(reading) : reading;
}
