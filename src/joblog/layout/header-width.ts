import type { ContentType } from "../model/definition.ts";

/**
 * Advance widths of DejaVu Sans Bold in hundredths of the type size, measured in a browser. It is the widest
 * of the faces that stand in for Arial (some 15 % wider), so what fits in it fits everywhere.
 */
const boldWidths: readonly (readonly [hundredths: number, letters: string])[] = [
  [34, "'ijl"],
  [38, ",. IJ/:;|"],
  [46, "-!()[]ft²³"],
  [50, 'r*_`°"'],
  [60, "?zcs"],
  [65, "Lvxy"],
  [69, "akoFTeE$0123456789"],
  [72, "hnuSYbdgpq"],
  [77, "CPZBAKRVXµ"],
  [83, "UGDHN#+<=>~"],
  [87, "OQ&"],
  [92, "w"],
  [104, "m%@M"],
  [110, "W"],
];

const widestLetter = 110;

const headerPoints = 10;

const pixelsPerPoint = 4 / 3;

/** Gap to the cell's edges, with the indent of words. */
const marginPixels = 15;

/** A width of n characters is 7 n + 5 pixels. */
const pixelsPerCharacter = 7;
const paddingPixels = 5;

function boldPixels(word: string): number {
  const hundredths = Array.from(word).reduce(
    (sum, letter) => sum + (boldWidths.find(([, letters]) => letters.includes(letter))?.[0] ?? widestLetter),
    0,
  );
  return (hundredths / 100) * headerPoints * pixelsPerPoint;
}

/** "2027-03-01 09:45" and "2027-03-01" on one line. */
const timeWidths: Readonly<Partial<Record<ContentType, number>>> = { "date and time": 18, date: 12 };

/** Fewest characters of a column in which no word of its header breaks and no date wraps. */
export function leastWidth(header: string, type: ContentType): number {
  const widest = Math.max(...header.split(" ").map(boldPixels));
  return Math.max(timeWidths[type] ?? 0, Math.ceil((widest + marginPixels - paddingPixels) / pixelsPerCharacter));
}
