import { describe, expect, it } from "vitest";
import { bufferPh } from "../../src/core/meter/buffer-ph.ts";
import { standardBuffers } from "../../src/core/meter/standard-buffers.ts";
import { celsiusZero } from "../../src/core/units/exact-constants.ts";
import { kelvin } from "../../src/core/units/quantity.ts";

function at(name: string, celsius: number): number {
  const buffer = standardBuffers.find((one) => one.name === name);
  if (buffer === undefined) throw new RangeError(`No buffer ${name}`);
  return bufferPh(buffer, kelvin(celsius + celsiusZero));
}

describe("the standard buffers between their tabulated temperatures", () => {
  /** Certified too, and not among the points; values from memory of Buck et al. 2002 and Bates. */
  it.each([
    ["phthalate", 37, 4.022],
    ["phosphate", 37, 6.841],
    ["phosphate 7.4", 37, 7.386],
    ["borax", 37, 9.088],
    ["carbonate", 37, 9.91],
    ["lime", 37, 12.073],
    ["lime", 38, 12.043],
  ])("give %s at %s °C as certified", (name, celsius, certified) => {
    expect(Math.abs(at(name, celsius) - certified)).toBeLessThanOrEqual(0.003);
  });

  it("follow the formula of NBS Research Paper RP1690 (1946) for phthalate, 4.000 + 0.0000479 (t − 15)², from 10 to 40 °C", () => {
    for (let celsius = 10; celsius <= 40; celsius += 1) {
      expect(Math.abs(at("phthalate", celsius) - (4 + 0.0000479 * (celsius - 15) ** 2))).toBeLessThanOrEqual(0.005);
    }
  });

  it("follow a US technical buffer table for carbonate: 10.12, 10.06, 10.01 and 9.97 at 15, 20, 25 and 30 °C", () => {
    for (const [celsius, printed] of [[15, 10.12], [20, 10.06], [25, 10.01], [30, 9.97]] as const) {
      expect(Math.abs(at("carbonate", celsius) - printed)).toBeLessThanOrEqual(0.005);
    }
  });
});
