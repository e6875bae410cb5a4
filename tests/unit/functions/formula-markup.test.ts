import { describe, expect, it } from "vitest";

import { formulaNodes } from "../../../functions/reference/formula-markup.ts";

describe("a formula's markup", () => {
  it("tells names, numbers and signs apart", () => {
    expect(formulaNodes("V = 100.0869 · L")).toEqual([
      { tag: "mi", text: "V" },
      { tag: "mo", text: "=" },
      { tag: "mn", text: "100.0869" },
      { tag: "mo", text: "·" },
      { tag: "mi", text: "L" },
    ]);
  });

  it("makes a fraction of two groups, and of nothing else", () => {
    expect(formulaNodes("{a}/{b}")).toEqual([
      {
        tag: "mfrac",
        parts: [
          { tag: "mrow", parts: [{ tag: "mi", text: "a" }] },
          { tag: "mrow", parts: [{ tag: "mi", text: "b" }] },
        ],
      },
    ]);
    expect(formulaNodes("a/b").map(({ tag }) => tag)).toEqual(["mi", "mo", "mi"]);
  });

  it("lowers, raises, and does both", () => {
    expect(formulaNodes("V_d")).toEqual([
      {
        tag: "msub",
        parts: [
          { tag: "mi", text: "V" },
          { tag: "mi", text: "d" },
        ],
      },
    ]);
    expect(formulaNodes("z_i^2")[0]?.tag).toBe("msubsup");
    expect(formulaNodes("10^{r − B}")[0]).toMatchObject({ tag: "msup", parts: [{ text: "10" }, { tag: "mrow" }] });
  });

  it("keeps words in quotes as they are", () => {
    expect(formulaNodes('"   for 1+N"')).toEqual([{ tag: "mtext", text: "   for 1+N" }]);
  });

  it("refuses a brace without its partner", () => {
    expect(() => formulaNodes("{a")).toThrow(SyntaxError);
    expect(() => formulaNodes("a_")).toThrow(SyntaxError);
  });
});
