import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { createContext, runInContext } from "node:vm";

import { beforeAll, describe, expect, it } from "vitest";

import { catalogue } from "../../functions/catalogue.ts";
import { references } from "../../functions/references.ts";
import { functionsBundle } from "../../rspack.config.ts";
import { bundle } from "../../scripts/build/bundle.ts";
import { overBudget } from "../../scripts/check-sizes.ts";

type CellFunction = (...cells: readonly unknown[]) => unknown;

class CellError {
  readonly code: string;
  readonly message: string | undefined;

  constructor(code: string, message?: string) {
    this.code = code;
    this.message = message;
  }
}

let source = "";
let registered: Map<string, CellFunction>;

/** What a host with nothing but `CustomFunctions` sees right after the script has run. */
function runBundle(): Map<string, CellFunction> {
  const functions = new Map<string, CellFunction>();
  const CustomFunctions = {
    associate: (id: string, fn: CellFunction) => functions.set(id, fn),
    Error: CellError,
    ErrorCode: { invalidValue: "#VALUE!", notAvailable: "#N/A" },
  };
  runInContext(source, createContext({ CustomFunctions }));
  return functions;
}

function call(id: string, ...cells: readonly unknown[]): unknown {
  const fn = registered.get(id);
  if (fn === undefined) throw new RangeError(`${id} was not registered`);
  return fn(...cells);
}

function refusalOf(id: string, ...cells: readonly unknown[]): CellError {
  try {
    call(id, ...cells);
  } catch (thrown) {
    if (thrown instanceof CellError) return thrown;
    throw thrown;
  }
  throw new RangeError(`${id} was not refused`);
}

beforeAll(async () => {
  const folder = await mkdtemp(path.join(tmpdir(), "functions-"));
  const configuration = functionsBundle("production");
  await bundle({ ...configuration, output: { ...configuration.output, path: folder } });
  source = await readFile(path.join(folder, "functions.js"), "utf8");
  await rm(folder, { recursive: true });
  registered = runBundle();
});

describe("the functions bundle with nothing but a global CustomFunctions", () => {
  it("registers every id while it loads", () => {
    expect([...registered.keys()].sort()).toEqual(catalogue.map(({ id }) => id).sort());
  });

  it("names no part of a page, of Office or of Node", () => {
    expect(source).not.toMatch(/\b(?:document|window|Office|Excel\.run|process|require)\b(?=[.(])/);
  });

  it("leaves out what only a reader needs: help, notes, examples, formulas in print, sources and cautions", () => {
    const inPrint = [
      ...Object.values(references).flatMap(({ symbols, source: says, cautions }) => [
        ...symbols,
        ...(says.length > 40 ? [says] : []),
        ...cautions.map(({ text }) => text),
      ]),
      ...catalogue.flatMap(({ summary, notes, examples, source: says }) => [
        summary,
        ...notes,
        ...examples.map(({ formula }) => formula),
        ...(says.length > 40 ? [says] : []),
      ]),
    ];
    expect(inPrint.length).toBeGreaterThan(100);
    expect(inPrint.filter((words) => source.includes(words) || source.includes(JSON.stringify(words)))).toEqual([]);
  });

  it("stays within its size budget, since every cell waits for it", () => {
    expect(source.length).toBeGreaterThan(5_000);
    expect(overBudget("functions.js", Buffer.from(source))).toBeUndefined();
  });

  it("answers a cell, also when Excel adds its invocation object", () => {
    expect(call("DOSE", 29, "1+28", null)).toBe(1);
    expect(call("DOSE", 29, "1+28", null, null, { functionName: "DOSE" })).toBe(1);
  });

  it("takes a single cell that arrives as a range, and a formatted number by its plain value", () => {
    expect(call("DOSE", [[29]], [["1+28"]], null)).toBe(1);
    expect(call("DOSE", { type: "Double", basicValue: 29, numberFormat: "0.0" }, "1+28")).toBe(1);
  });

  it("refuses with #VALUE! and a message that names the argument", () => {
    const refusal = refusalOf("DOSE", 0, "1+28", null);
    expect(refusal.code).toBe("#VALUE!");
    expect(refusal.message).toBe("Volume is blank or 0.");
  });

  it("says #N/A where no answer exists", () => {
    expect(refusalOf("NEXTADD", 1, 10.8, 10.81, 11.3).code).toBe("#N/A");
  });

  it("never lets a blank leave as null, which a cell would show as 0", () => {
    const spill = call("SHARE", 10, [["Claim"], [1]]);
    expect(JSON.stringify(spill)).toBe('[[""],[10]]');
  });
});
