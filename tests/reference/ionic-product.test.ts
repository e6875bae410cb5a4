import { describe, expect, it } from "vitest";
import { celsiusZero } from "../../src/core/units/exact-constants.ts";
import { ionicProductExponent } from "../../src/core/solution/ionic-product.ts";
import { kelvin } from "../../src/core/units/quantity.ts";
import { numberIn, readCsv, textIn } from "./read-csv.ts";

const rows = readCsv("ionic-product-of-water.csv");
const at = (celsius: number): number => ionicProductExponent(kelvin(celsius + celsiusZero));

describe("pKw of water", () => {
  it("reproduces IAPWS R11-07 from 0 to 100 °C at its printed digits", () => {
    expect(rows.length).toBeGreaterThan(20);
    for (const row of rows) {
      expect(Math.abs(at(numberIn(row, "celsius")) - numberIn(row, "iapws_r11_07"))).toBeLessThanOrEqual(1e-4);
    }
  });

  it("stays within 0.017 of the table of Marshall and Franck (1981), an older fit", () => {
    const printed = rows.filter((row) => textIn(row, "marshall_franck_table") !== "");
    expect(printed.length).toBe(5);
    for (const row of printed) {
      expect(Math.abs(at(numberIn(row, "celsius")) - numberIn(row, "marshall_franck_table"))).toBeLessThanOrEqual(0.017);
    }
  });

  it("is 13.995 at 25 °C, as both print", () => {
    expect(at(25)).toBeCloseTo(13.995, 3);
  });
});
