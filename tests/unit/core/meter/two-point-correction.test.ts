import fc from "fast-check";
import { describe, expect, it } from "vitest";

import { twoPointCorrected } from "../../../../src/core/meter/two-point-correction.ts";
import { ph } from "../../../../src/core/units/quantity.ts";

const corrected = (reading: number, buffer1: number, read1: number, buffer2: number, read2: number): number =>
  twoPointCorrected(ph(reading), { buffer: ph(buffer1), read: ph(read1) }, { buffer: ph(buffer2), read: ph(read2) });

describe("a reading corrected by two buffers", () => {
  it("follows a printed example with slope 0.96828 and offset 0.16052", () => {
    const line = (read: number): number => 0.96828 * read + 0.16052;
    expect(Math.abs(corrected(3.5, line(4), 4, line(7), 7) - 3.5495)).toBeLessThanOrEqual(0.0001);
  });

  it("gives each buffer its own pH, and leaves the reading of a right meter alone", () => {
    const reading = fc.double({ min: 1, max: 13, noNaN: true });
    fc.assert(
      fc.property(reading, (read) => {
        expect(corrected(read, 7, 7, 10.01, 10.01)).toBeCloseTo(read, 12);
      }),
    );
    expect(corrected(7.06, 7, 7.06, 10.01, 10.15)).toBe(7);
    expect(corrected(10.15, 7, 7.06, 10.01, 10.15)).toBeCloseTo(10.01, 12);
  });

  it("does not depend on which buffer comes first", () => {
    expect(corrected(11, 10.01, 10.15, 7, 7.06)).toBeCloseTo(corrected(11, 7, 7.06, 10.01, 10.15), 12);
  });

  it("needs two buffers that the meter told apart, in the right order", () => {
    expect(() => corrected(11, 7, 7.1, 7, 10)).toThrow(/same pH/);
    expect(() => corrected(11, 7, 7.1, 10, 7.1)).toThrow(/are the same/);
    expect(() => corrected(11, 7, 10.1, 10, 7.1)).toThrow(/which reading belongs/);
  });

  it("refuses a line that leads out of the scale", () => {
    expect(() => corrected(11, 7, 7, 10, 7.5)).toThrow(
      "Read 1 and read 2 differ by 0.5 and the buffers by 3; by that line the reading would be pH 31.",
    );
  });
});
