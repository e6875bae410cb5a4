import { describe, expect, it } from "vitest";

import { callFormula } from "./call-formula.ts";
import { readTable } from "./chemistry/read-table.ts";
import { numberIn, readCsv, textIn } from "./read-csv.ts";

function at(name: string, celsius: number): number {
  return Number(callFormula(`=BATH.BUFFERPH("${name}","${celsius} C")`));
}

/**
 * pH(S) of the primary standards at 24 temperatures, as the open firmware of a pH-meter circuit carries the
 * NIST tables: a second copy beside ours, with temperatures between our points.
 */
const tabulated = readCsv("buffer-tables.csv").map(
  (row) => [textIn(row, "buffer"), numberIn(row, "celsius"), numberIn(row, "pH")] as const,
);

/** The copies differ by a unit of the last digit here and there; between points the curve may take the rounding along. */
const copiesDiffer = 0.0012;

describe("the standard buffers", () => {
  it.each(tabulated)("give %s at %s °C as %s", (name, celsius, printed) => {
    expect(Math.abs(at(name, celsius) - printed)).toBeLessThanOrEqual(copiesDiffer);
  });

  it("are, as far as the copy has them, those that judge the chemistry", () => {
    const names = new Map([
      ["phosphate 1:1 0.025+0.025", "phosphate"],
      ["phosphate 1:3.5 0.008695+0.03043", "phosphate 7.4"],
      ["borax 0.01", "borax"],
      ["carbonate 0.025+0.025", "carbonate"],
      ["Ca(OH)2 sat. at 25 (0.0203)", "lime"],
    ]);
    const copy = new Map(tabulated.map(([name, celsius, printed]) => [`${name} ${String(celsius)}`, printed]));
    const judges = readTable("buffer-standards").map((row) => ({
      printed: copy.get(`${names.get(row.text("buffer")) ?? ""} ${String(row.number("celsius"))}`),
      used: row.number("pH"),
    }));
    const both = judges.filter(({ printed }) => printed !== undefined);
    expect([both.length, judges.length]).toEqual([58, 65]);
    for (const { printed, used } of both)
      expect(Math.abs(used - (printed ?? Number.NaN))).toBeLessThanOrEqual(copiesDiffer);
  });

  it("let technical 7 run within 0.005 beside the certified phosphate, moved to 7.000 at 25 °C", () => {
    const moved = 7 - at("phosphate", 25);
    for (let celsius = 0; celsius <= 50; celsius += 1)
      expect(Math.abs(at("technical 7", celsius) - at("phosphate", celsius) - moved)).toBeLessThanOrEqual(0.005);
  });

  it("follow the formula of NBS Research Paper RP1690 (1946) for phthalate, 4.000 + 0.0000479 (t − 15)², from 10 to 40 °C", () => {
    for (let celsius = 10; celsius <= 40; celsius += 1) {
      expect(Math.abs(at("phthalate", celsius) - (4 + 0.0000479 * (celsius - 15) ** 2))).toBeLessThanOrEqual(0.005);
    }
  });
});
