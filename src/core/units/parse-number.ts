/** What a text turned out to be as a number. */
export type NumberReading =
  | { readonly read: "number"; readonly value: number }
  /** Could be a decimal or a thousands comma. */
  | { readonly read: "ambiguous"; readonly readings: readonly [number, number] }
  | { readonly read: "nothing" };

const vulgarFractions: Readonly<Record<string, string>> = {
  "½": "1/2", "¼": "1/4", "¾": "3/4", "⅓": "1/3", "⅔": "2/3", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8",
};

const plain = /^\d*\.?\d+(e[+-]?\d+)?$|^\d+\.$/i;
const decimalComma = /^\d*,\d+$/;
const groupedBySpaces = /^\d{1,3}( \d{3})+([.,]\d+)?$/;
const groupedByCommas = /^[1-9]\d{0,2}(,\d{3})+(\.\d+)?$/;
const groupedByDots = /^[1-9]\d{0,2}(\.\d{3})+,\d+$/;
const couldBeEither = /^[1-9]\d{0,2},\d{3}$/;
const fraction = /^(?:(\d+) )?(\d+) ?\/ ?(\d+)$/;

function unsigned(text: string): NumberReading {
  if (couldBeEither.test(text)) {
    return { read: "ambiguous", readings: [Number(text.replace(",", ".")), Number(text.replace(",", ""))] };
  }
  if (plain.test(text)) return { read: "number", value: Number(text) };
  if (decimalComma.test(text)) return { read: "number", value: Number(text.replace(",", ".")) };
  if (groupedBySpaces.test(text)) return { read: "number", value: Number(text.replaceAll(" ", "").replace(",", ".")) };
  if (groupedByCommas.test(text)) return { read: "number", value: Number(text.replaceAll(",", "")) };
  if (groupedByDots.test(text)) return { read: "number", value: Number(text.replaceAll(".", "").replace(",", ".")) };
  const parts = fraction.exec(text);
  if (parts === null || Number(parts[3]) === 0) return { read: "nothing" };
  return { read: "number", value: Number(parts[1] ?? 0) + Number(parts[2]) / Number(parts[3]) };
}

/**
 * Reads a number as people write it: 1.5, 1,5, 1 500, 1 1/2, 1,500.25. A lone comma before three
 * digits is ambiguous and is reported with both readings.
 */
export function parseNumber(text: string): NumberReading {
  const tidy = text
    .replace(/[½¼¾⅓⅔⅛⅜⅝⅞]/g, (sign) => ` ${vulgarFractions[sign] ?? sign}`)
    .replace(/[\s\u00a0\u2009\u202f]+/g, " ")
    .replace(/[−–]/g, "-")
    .trim();
  const negative = tidy.startsWith("-");
  const reading = unsigned(tidy.replace(/^[+-] ?/, ""));
  if (reading.read === "number") {
    if (!Number.isFinite(reading.value)) return { read: "nothing" };
    return { read: "number", value: negative ? -reading.value : reading.value };
  }
  if (reading.read === "ambiguous" && negative) {
    return { read: "ambiguous", readings: [-reading.readings[0], -reading.readings[1]] };
  }
  return reading;
}
