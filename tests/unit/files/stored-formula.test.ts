import { describe, expect, it } from "vitest";

import { storedFormula } from "../../../src/files/stored-formula.ts";

describe("the stored spelling of a formula", () => {
  it("drops the equals sign and prefixes add-in functions", () => {
    expect(storedFormula('=BATH.DOSE(A1,"1+28")')).toBe('_xldudf_BATH_DOSE(A1,"1+28")');
  });

  it("turns further dots into underscores", () => {
    expect(storedFormula("=1+BATH.READINGS.SUMMARY(A1)")).toBe("1+_xldudf_BATH_READINGS_SUMMARY(A1)");
  });

  it("prefixes functions that came after the file format", () => {
    expect(storedFormula("=MAXIFS(A1:A3,B1:B3,1)-MINIFS(A1:A3,B1:B3,1)-MAX(A1:A3)")).toBe(
      "_xlfn.MAXIFS(A1:A3,B1:B3,1)-_xlfn.MINIFS(A1:A3,B1:B3,1)-MAX(A1:A3)",
    );
  });

  it("leaves text between quotes alone, doubled quotes too", () => {
    expect(storedFormula('=IF(A1="","see BATH.DOSE(1)","say ""MAXIFS(""")')).toBe(
      'IF(A1="","see BATH.DOSE(1)","say ""MAXIFS(""")',
    );
  });

  it("leaves other functions and names as they are", () => {
    expect(storedFormula("=ROUND(Pool.Total,2)")).toBe("ROUND(Pool.Total,2)");
  });
});
