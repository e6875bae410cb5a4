import { describe, expect, it } from "vitest";

import { functionsMetadata } from "../../../scripts/build/functions-metadata.ts";
import { readFunctions, startOf } from "../../../src/workbench/page/read-outside.ts";

describe("what reaches the workbench's page from outside", () => {
  it.each([
    ["", "demo"],
    ["?start=demo", "demo"],
    ["?start=empty", "empty"],
    ["?start=EMPTY", "demo"],
    ["?start=empty&start=demo", "empty"],
    ["?other=empty", "demo"],
  ])("an address that ends in %j opens the %s workbook", (search, start) => {
    expect(startOf(search)).toBe(start);
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
