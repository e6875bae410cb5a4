import { describe, expect, it } from "vitest";

import { OutOfRange } from "../../../../src/core/limits/domain.ts";
import { reverseOsmosisSplit } from "../../../../src/core/water/reverse-osmosis-split.ts";

describe("reverse osmosis", () => {
  const example = reverseOsmosisSplit(400, 0.9, 0.9);

  it("needs 4444 of feed for 4000 of permeate at a recovery of 0.9 (Design of Reverse Osmosis Membrane, Example 1)", () => {
    expect(Math.abs(4000 * example.feedPerPermeate - 4444)).toBeLessThanOrEqual(0.5);
  });

  it("leaves 40 of 400 mg/L in the permeate and about 3643 in the reject water (same example, from rounded flows)", () => {
    expect(Math.abs(example.permeate - 40)).toBeLessThanOrEqual(0.01);
    expect(Math.abs(example.reject - 3643)).toBeLessThanOrEqual(4);
  });

  it("changes nothing without rejection, and concentrates by 1/(1 − recovery) at full rejection", () => {
    expect(reverseOsmosisSplit(400, 0.5, 0)).toEqual({ permeate: 400, reject: 400, feedPerPermeate: 2 });
    expect(reverseOsmosisSplit(400, 0.75, 1)).toEqual({ permeate: 0, reject: 1600, feedPerPermeate: 4 / 3 });
  });

  it.each([
    [400, 1, 0.9],
    [400, 0, 0.9],
    [400, 0.5, 1.01],
    [400, 0.5, -0.1],
    [-1, 0.5, 0.9],
  ])("of a feed of %d with a recovery of %d and a rejection of %d is refused", (feed, recovery, rejection) => {
    expect(() => reverseOsmosisSplit(feed, recovery, rejection)).toThrow(OutOfRange);
  });
});
