import { describe, expect, it } from "vitest";

import {
  pickedName,
  pickedOrder,
  pickedPlace,
  pickedTable,
  wordOfName,
  wordOfUse,
} from "../../../../src/pane/adopt/picked-answers.ts";

describe("what was picked for a sheet", () => {
  it("is an answer only where it is one of the options", () => {
    expect([pickedOrder("day first"), pickedOrder(""), pickedOrder("year first")]).toEqual([
      "day first",
      undefined,
      undefined,
    ]);
    expect([pickedTable("benchTests"), pickedTable("tanks")]).toEqual(["benchTests", undefined]);
    expect([pickedPlace("0"), pickedPlace("12"), pickedPlace(""), pickedPlace("-1"), pickedPlace("1.5")]).toEqual([
      0,
      12,
      undefined,
      undefined,
      undefined,
    ]);
  });

  it("tells a word of the log from an answer that is spelled the same", () => {
    for (const answer of [{ use: "new" }, { use: "use T1" }, "new", "leave out"] as const)
      expect(pickedName(wordOfName(answer))).toEqual(answer);
    expect(pickedName(wordOfUse("leave out"))).toEqual({ use: "leave out" });
    expect([pickedName(""), pickedName("keep"), wordOfName(undefined)]).toEqual([undefined, undefined, ""]);
  });
});
