import { describe, expect, it } from "vitest";

import { titratedTopUp } from "../../../../src/core/bath/titrated-top-up.ts";

describe("a top-up by titration", () => {
  it("is the share of the fresh bath's own alkali that is gone", () => {
    expect(titratedTopUp(4, { fresh: 10, now: 6, blank: 2 })).toBe(2);
    expect(titratedTopUp(4, { fresh: 10, now: 11, blank: 2 })).toBe(0);
  });

  it("is the whole opening dose where the bath titrates as its water does, and refused below that", () => {
    expect(titratedTopUp(4, { fresh: 10, now: 2, blank: 2 })).toBe(4);
    expect(() => titratedTopUp(4, { fresh: 10, now: 1.9, blank: 2 })).toThrow(/larger than the titration now/);
  });
});
