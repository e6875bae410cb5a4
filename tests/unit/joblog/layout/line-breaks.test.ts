import { describe, expect, it } from "vitest";

import { linesOf } from "../../../../src/joblog/layout/line-breaks.ts";

describe("breaking a text into lines", () => {
  it("breaks at spaces and fills each line up to its length", () => {
    expect(linesOf("mix, then read the bath", 10)).toEqual(["mix, then", "read the", "bath"]);
    expect(linesOf("abcde fghij", 11)).toEqual(["abcde fghij"]);
  });

  it("gives a word that is too long a line of its own and loses nothing", () => {
    const text = "a Sequestering capacity";
    expect(linesOf(text, 8)).toEqual(["a", "Sequestering", "capacity"]);
    expect(linesOf(text, 8).join(" ")).toBe(text);
  });
});
