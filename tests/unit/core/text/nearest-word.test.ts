import { describe, expect, it } from "vitest";

import { editDistance, nearestWord } from "../../../../src/core/text/nearest-word.ts";

describe("the distance of two words", () => {
  /** kitten to sitting is 3 by Levenshtein's own count; a swap of neighbors counts once (Damerau). */
  it.each([
    ["kitten", "sitting", 3],
    ["", "abc", 3],
    ["abc", "", 3],
    ["same", "same", 0],
    ["citirc", "citric", 1],
    ["ca", "abc", 3],
  ])("is, from “%s” to “%s”, %d", (from, to, distance) => {
    expect(editDistance(from, to)).toBe(distance);
    expect(editDistance(to, from)).toBe(distance);
  });
});

describe("the nearest word", () => {
  const words = ["unknown", "hydroxide", "silicate", "carbonate", "phosphate"] as const;

  it.each([
    ["hidroxide", "hydroxide"],
    ["Carbonat", "carbonate"],
    ["phospate", "phosphate"],
    ["silcate", "silicate"],
    ["hydro", "hydroxide"],
  ])("to “%s” is %s", (written, meant) => {
    expect(nearestWord(written, words)).toBe(meant);
  });

  it.each(["soap", "", "x", "borax", "z".repeat(100_000)])("is none to “%s”", (written) => {
    expect(nearestWord(written, words)).toBeUndefined();
  });
});
