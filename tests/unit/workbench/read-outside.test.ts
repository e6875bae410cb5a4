import { describe, expect, it } from "vitest";

import { functionsMetadata } from "../../../scripts/build/functions-metadata.ts";
import { latenessOf, readFunctions, startOf } from "../../../src/workbench/page/read-outside.ts";

describe("what reaches the workbench's page from outside", () => {
  it.each([
    ["", undefined],
    ["?start=demo", { fresh: "demo" }],
    ["?start=empty", { fresh: "empty" }],
    ["?start=EMPTY", undefined],
    ["?start=empty&start=demo", { fresh: "empty" }],
    ["?other=empty", undefined],
    ["?log=a1", { log: "a1" }],
    ["?log=a1&start=empty", { log: "a1" }],
  ])("an address that ends in %j asks to start with %o", (search, start) => {
    expect(startOf(search)).toEqual(start);
  });

  it("the description of the functions comes through whole, and is refused where it is none", () => {
    const metadata = functionsMetadata("https://example.com/bathsheet");
    const { functions, enums } = readFunctions(metadata);
    expect(functions.map(({ parameters }) => parameters.length)).toEqual(
      metadata.functions.map(({ parameters }) => parameters.length),
    );
    expect(enums).toEqual(metadata.enums);
    expect(() => readFunctions({ functions: [{ id: "DOSE", name: "DOSE" }] })).toThrow(
      "functions.json is damaged at functions, 1, parameters.",
    );
    expect(() => readFunctions(null)).toThrow("functions.json is damaged.");
  });
});

describe("how functions answer", () => {
  it("is at once unless the address says otherwise", () => {
    expect(latenessOf("?start=demo")).toBeUndefined();
    expect(latenessOf("?answers=sometimes")).toBeUndefined();
    expect(latenessOf("?answers=late")).toEqual({ until: "any of them", seed: 1, within: 60 });
    expect(latenessOf("?answers=late&seed=7")?.seed).toBe(7);
    expect(latenessOf("?answers=late&seed=some")?.seed).toBe(1);
  });
});
