import { describe, expect, it } from "vitest";
import { DomainError } from "../../../src/core/domain-error.ts";
import { OutOfRange } from "../../../src/core/domain.ts";
import { alkalinity, cubicMeters, kelvin, ph } from "../../../src/core/units/quantity.ts";
import { celsiusZero } from "../../../src/core/units/exact-constants.ts";
import { firstAddition, topUp } from "../../../src/core/bath/top-up.ts";
import { isPlainHydroxide } from "../../../src/core/solution/builder.ts";
import type { FallenBath } from "../../../src/core/bath/bath-model.ts";

const openingDose = cubicMeters(1);

function fallen(change: Partial<FallenBath> = {}): FallenBath {
  return {
    baseline: ph(11.3),
    reading: ph(10.8),
    temperature: kelvin(45 + celsiusZero),
    builder: { known: "word", word: "unknown" },
    alkalinity: undefined,
    loss: undefined,
    ...change,
  };
}

describe("a top-up", () => {
  it("of plain hydroxide has no width: half a point is 1 − 10^−0.5 of the opening dose", () => {
    const answer = topUp(openingDose, fallen({ builder: { known: "word", word: "hydroxide" } }));
    expect(answer.best).toBeCloseTo(1 - 10 ** -0.5, 5);
    expect([answer.low, answer.high]).toEqual([answer.best, answer.best]);
  });

  it("of an unknown builder is a band around the hydroxide answer", () => {
    const { low, best, high } = topUp(openingDose, fallen());
    expect(low).toBeLessThan(best);
    expect(best).toBeLessThan(high);
    expect(low).toBeLessThan(1 - 10 ** -0.5);
    expect(high).toBeGreaterThan(1 - 10 ** -0.5);
  });

  it("with an unknown loss lies in the middle of acid and dilution", () => {
    const acid = topUp(openingDose, fallen({ loss: "acid" }));
    const dilution = topUp(openingDose, fallen({ loss: "dilution" }));
    const either = topUp(openingDose, fallen());
    expect(either.best).toBeCloseTo((acid.best + dilution.best) / 2, 12);
    expect([either.low, either.high]).toEqual([Math.min(acid.low, dilution.low), Math.max(acid.high, dilution.high)]);
  });

  it("has a lower low edge in alkaline water, whose bicarbonate was part of the opening dose", () => {
    const pure = topUp(openingDose, fallen({ alkalinity: alkalinity(0.1) }));
    const softened = topUp(openingDose, fallen({ alkalinity: alkalinity(4) }));
    expect(softened.low).toBeLessThan(pure.low);
  });

  it("is nothing at or above the baseline", () => {
    expect(topUp(openingDose, fallen({ reading: ph(11.3) })).high).toBe(0);
    expect(topUp(openingDose, fallen({ reading: ph(11.5) })).best).toBe(0);
  });

  it("has no answer for an unknown builder that fell by more than one pH", () => {
    expect(() => topUp(openingDose, fallen({ reading: ph(10.2) }))).toThrow(expect.objectContaining({ refusal: "no-answer" }) as DomainError);
  });

  it("refuses a baseline that is not alkaline", () => {
    expect(() => topUp(openingDose, fallen({ baseline: ph(6.5), reading: ph(6) }))).toThrow(OutOfRange);
  });

  it("starts with the smaller of the best estimate and the house's share", () => {
    expect(firstAddition(openingDose, cubicMeters(0.7), 1 / 3)).toBeCloseTo(1 / 3, 12);
    expect(firstAddition(openingDose, cubicMeters(0.2), 1 / 3)).toBe(0.2);
  });
});

describe("a builder", () => {
  it("is plain hydroxide only where nothing in its list may buffer", () => {
    const listed = (...names: string[]) => isPlainHydroxide({ known: "components", components: names.map((name) => ({ name, percentByWeight: 5 })) });
    expect(listed("Sodium hydroxide", "water")).toBe(true);
    expect(listed("NaOH", "Na2CO3")).toBe(false);
    expect(listed("sodium metasilicate")).toBe(false);
    expect(listed("NaOH", "a trade secret")).toBe(false);
    expect(listed("water")).toBe(false);
  });
});
