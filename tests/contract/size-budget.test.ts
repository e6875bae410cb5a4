import { randomBytes } from "node:crypto";

import { describe, expect, it } from "vitest";

import { gzipSize, overBudget, sizeBudget } from "../../scripts/check-sizes.ts";

describe("the size budget", () => {
  it.each(Object.entries(sizeBudget))("lets %s grow to its %i bytes and not beyond", (name, allowed) => {
    expect(overBudget(name, randomBytes(allowed - 1000))).toBeUndefined();
    expect(overBudget(name, randomBytes(allowed))).toMatch(
      new RegExp(`^${name} has \\d+ bytes after gzip and may have ${String(allowed)}$`),
    );
  });

  it("counts what travels, not what is unpacked", () => {
    expect(gzipSize(Buffer.from("a".repeat(1_000_000)))).toBeLessThan(2_000);
  });
});
