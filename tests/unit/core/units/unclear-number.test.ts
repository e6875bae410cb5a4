import { describe, expect, it } from "vitest";

import { unclearNumber } from "../../../../src/core/units/unclear-number.ts";

describe("a number without its unit", () => {
  it.each([
    ["hardness", 1, 50],
    ["alkalinity", 0.01, 20],
    ["temperature", 32, 59.9],
  ] as const)("of %s is unclear from %f to %f, ends included", (kind, low, high) => {
    for (const value of [low, (low + high) / 2, high]) expect(unclearNumber(kind, value, "US")).toBeDefined();
  });

  it.each([
    ["hardness", 0.99],
    ["hardness", 50.1],
    ["hardness", -18],
    ["alkalinity", 0],
    ["alkalinity", 20.1],
    ["temperature", 31.9],
    ["temperature", 60],
    ["temperature", 77],
  ] as const)("of %s is clear at %f", (kind, value) => {
    expect(unclearNumber(kind, value, "US")).toBeUndefined();
  });

  it("of temperature is clear in a shop of °C: 53 is a bath and 77 no slip of °F that a bath could have", () => {
    expect(unclearNumber("temperature", 53, "metric")).toBeUndefined();
    expect(unclearNumber("temperature", 53, "imperial")).toBeUndefined();
  });

  // 18 × 17.118 mg/L, 18 × 17.848 mg/L, 18 × 14.254 mg/L; 4.8 × 50.043 mg/L; 53 × 9/5 + 32 °F.
  it("is told in both readings, the slip first and what it comes to", () => {
    expect(unclearNumber("hardness", 18, "US")).toEqual({ readings: ["18 gpg", "18 mg/L"], slip: "308 mg/L" });
    expect(unclearNumber("hardness", 18, "metric")).toEqual({ readings: ["18 °dH", "18 mg/L"], slip: "321 mg/L" });
    expect(unclearNumber("hardness", 18, "imperial")).toEqual({ readings: ["18 °Clark", "18 mg/L"], slip: "257 mg/L" });
    expect(unclearNumber("alkalinity", 4.8, "metric")).toEqual({
      readings: ["4.8 meq/L", "4.8 mg/L"],
      slip: "240 mg/L",
    });
    expect(unclearNumber("temperature", 53, "US")).toEqual({ readings: ["53 C", "53 F"], slip: "127.4 °F" });
  });
});
