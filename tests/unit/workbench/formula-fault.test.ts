import * as library from "@odoo/o-spreadsheet";
import { beforeAll, describe, expect, it } from "vitest";

import type { Host } from "../../../src/workbench/host/create-host.ts";
import { formulaFault } from "../../../src/workbench/host/formulas/formula-fault.ts";
import { testHost } from "./test-host.ts";

let host: Host;

beforeAll(() => {
  host = testHost();
});

const faultOf = (text: string): string | undefined =>
  formulaFault(library, host.model, host.model.getters.getActiveSheetId(), text);

describe("a formula that is typed into a cell", () => {
  it.each([
    ["=BATH.TWICE()", "Too few arguments for BATH.TWICE: it needs number, and was given none."],
    ["=1+BATH.SHOW()", "Too few arguments for BATH.SHOW: it needs first, and was given none."],
    ["=BATH.TWICE(1,2,3)", "Too many arguments for BATH.TWICE: it takes 1 at most and was given 3."],
    ["=ROUND(1)*ROUND()", "Too few arguments for ROUND: it needs value, and was given none."],
    ["=1+", "This formula is not complete, or a part of it is not understood."],
  ])("%s is refused with the reason", (text, words) => {
    expect(faultOf(text)).toBe(words);
  });

  it.each(["=BATH.TWICE(2)", "=BATH.SHOW(1)", "=NOSUCH()", "=SUM(Sales[Rate])", "=1/0", "BATH.TWICE()", ""])(
    "%s is taken",
    (text) => {
      expect(faultOf(text)).toBeUndefined();
    },
  );
});
