import { describe, expect, it } from "vitest";

import { verdictIfCelsius } from "../../../../src/core/bath/celsius-slip.ts";
import { builderFromWord } from "../../../../src/core/bath/model/builder.ts";
import type { TriggerQuestion } from "../../../../src/core/bath/trigger.ts";
import { verdict } from "../../../../src/core/bath/verdict.ts";
import { celsiusZero } from "../../../../src/core/units/exact-constants.ts";
import { alkalinity, kelvin, ph } from "../../../../src/core/units/quantity.ts";

function bath(baseline: number, celsius?: readonly [number, number], word = "unknown"): TriggerQuestion {
  const temperatures =
    celsius === undefined
      ? undefined
      : { baseline: kelvin(celsius[0] + celsiusZero), reading: kelvin(celsius[1] + celsiusZero) };
  return {
    baseline: ph(baseline),
    drop: 0.5,
    temperatures,
    builder: builderFromWord(word),
    alkalinity: alkalinity(0.1),
  };
}

describe("the verdict on a reading", () => {
  it("is top up at the trigger and below, also where 11.3 − 0.5 is not quite 10.8 in a double", () => {
    expect(verdict(ph(10.8), bath(11.3))).toBe("top up");
    expect(verdict(ph(10.4), bath(11.3))).toBe("top up");
  });

  it("is near within a tenth above the trigger and hold above that", () => {
    expect(verdict(ph(10.81), bath(11.3))).toBe("near");
    expect(verdict(ph(10.9), bath(11.3))).toBe("near");
    expect(verdict(ph(10.91), bath(11.3))).toBe("hold");
  });

  it("is above baseline beyond the 0.05 that a meter errs, and hold up to it", () => {
    expect(verdict(ph(11.35), bath(11.3))).toBe("hold");
    expect(verdict(ph(11.36), bath(11.3))).toBe("above baseline");
    expect(verdict(ph(13.9), bath(11.42))).toBe("above baseline");
  });

  it("measures a hot reading by what the bath's baseline is there", () => {
    expect(verdict(ph(10.58), bath(11.42, [25, 53.1]))).toBe("hold");
    expect(verdict(ph(11.2), bath(11.42, [25, 53.1]))).toBe("above baseline");
  });

  it("would be another in °C where °F was meant, and is none where the bath would stand above its baseline", () => {
    // 53 °F is 11.7 °C.
    const question = bath(11.42, [25, 11.7]);
    expect(verdict(ph(10.58), question)).toBe("top up");
    expect(verdictIfCelsius(ph(10.58), question, 53)).toBe("hold");
    // 68 °F is 20 °C, an ordinary room.
    expect(verdictIfCelsius(ph(11.3), bath(11.42, [25, 20]), 68)).toBeUndefined();
    expect(verdictIfCelsius(ph(10.58), bath(11.42, [25, 48.9]), 120)).toBeUndefined();
    expect(verdictIfCelsius(ph(10.58), bath(11.42), 53)).toBeUndefined();
  });

  it("does not take a hot reading for a weak bath", () => {
    expect(verdict(ph(10.58), bath(11.42, [25, 53.1]))).not.toBe("top up");
    expect(verdict(ph(10.83), bath(11.42, [25, 25]))).toBe("top up");
  });

  it("asks to read again where buffered baths and plain hydroxide would be judged differently", () => {
    expect(verdict(ph(10.2), bath(11.42, [25, 53.1]))).toBe("re-read");
    expect(verdict(ph(10.2), bath(11.42, [25, 53.1], "hydroxide"))).toBe("near");
  });

  it("judges a cold reading of a bath whose baseline was taken hot", () => {
    expect(verdict(ph(11.9), bath(11.3, [45, 25]))).toBe("hold");
    expect(verdict(ph(10.9), bath(11.3, [45, 25]))).toBe("top up");
    expect(verdict(ph(11.3), bath(11.3, [45, 25]))).toBe("re-read");
  });
});
