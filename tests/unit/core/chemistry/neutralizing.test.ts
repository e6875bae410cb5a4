import { describe, expect, it } from "vitest";

import { acidNames } from "../../../../src/core/bath/model/acid.ts";
import { acidTo } from "../../../../src/core/bath/model/acid-to.ts";
import { builderFromWord, builderWords, unknownBuilder } from "../../../../src/core/bath/model/builder.ts";
import { estimateAcidTo } from "../../../../src/core/bath/model/estimate-acid.ts";
import { titratedBath } from "../../../../src/core/bath/model/titrated-bath.ts";
import { alkalinities } from "../../../../src/core/chemistry/alkalinities.ts";
import { composition } from "../../../../src/core/chemistry/composition.ts";
import { phOf } from "../../../../src/core/chemistry/ph-of.ts";
import { equivalentsPerKilogram, ph } from "../../../../src/core/units/quantity.ts";
import { bathOf, celsius, onlyBath } from "./opened-baths.ts";

describe("acid to a pH", () => {
  const totals = composition({ sodium: 0.03, silicate: 0.005, carbonate: 0.004 });

  it.each(acidNames)("reaches it (%s)", (name) => {
    const needed = acidTo(totals, celsius(25), name, ph(7));
    expect(needed).toBeGreaterThan(0.02);
    expect(needed).toBeLessThan(0.04);
    expect(acidTo(totals, celsius(25), name, ph(6.5))).toBeGreaterThan(needed);
  });

  it("is what a titration with a strong acid finds", () => {
    const hydrochloric = acidTo(totals, celsius(25), "hydrochloric", ph(4.5));
    expect(hydrochloric / alkalinities(totals, celsius(25)).total).toBeCloseTo(1, 5);
  });

  it("is nothing below the target and has no answer where the acid is too weak", () => {
    expect(acidTo(composition({}), celsius(25), "citric", ph(9))).toBe(0);
    expect(() => acidTo(totals, celsius(25), "acetic", ph(1))).toThrow(/does not bring this solution to pH 1/);
  });

  it("grows with a titration that found more than the reading alone calls for", () => {
    const bath = bathOf(unknownBuilder, { baseline: ph(10.8) });
    const least = estimateAcidTo(bath, "citric", ph(7));
    const titrated = estimateAcidTo(bath, "citric", ph(7), equivalentsPerKilogram(0.03));
    expect(titrated.low).toBeGreaterThan(least.low);
    expect(titrated.high).toBeLessThan(0.03);
  });
});

describe("a titrated bath", () => {
  it.each(builderWords)("has both the pH that was read and the alkalinity that was titrated (%s)", (word) => {
    const bath = onlyBath(bathOf(builderFromWord(word), { baseline: ph(10.8) }));
    const totals = titratedBath(bath, equivalentsPerKilogram(0.03));
    expect(phOf(totals, bath.temperature)).toBeCloseTo(10.8, 3);
    expect(alkalinities(totals, bath.temperature).total).toBeCloseTo(0.03, 4);
  });

  it("is refused where the titration found less than the hydroxide of that pH", () => {
    const bath = onlyBath(bathOf(builderFromWord("silicate")));
    expect(() => titratedBath(bath, equivalentsPerKilogram(0.001))).toThrow(/check the titration/);
  });
});
