import { beforeAll, describe, expect, it } from "vitest";

import type { CellMatrix, CellValue } from "../../../../functions/define-function.ts";
import { evaluate } from "../../../../functions/evaluate.ts";
import { findFunction } from "../../../../functions/find-function.ts";
import { cautionsOfForm } from "../../../../src/core/safety/caution-places.ts";
import type { LogSnapshot } from "../../../../src/joblog/model/log-snapshot.ts";
import type { Draft } from "../../../../src/pane/record/entry-form.ts";
import { doseSketch } from "../../../../src/pane/try/dose-sketch.ts";
import { neutralizingSketch } from "../../../../src/pane/try/neutralizing-sketch.ts";
import type { Sketch, SketchAnswer } from "../../../../src/pane/try/sketch.ts";
import { sketches } from "../../../../src/pane/try/sketches.ts";
import { temperatureSketch } from "../../../../src/pane/try/temperature-sketch.ts";
import { topUpSketch } from "../../../../src/pane/try/top-up-sketch.ts";
import { watersSketch } from "../../../../src/pane/try/waters-sketch.ts";
import { argumentsOf } from "../../../reference/call-formula.ts";
import { demoLog } from "../../excel/log/demo-log.ts";

const bath = "B-T1-0301";

let log: LogSnapshot;

beforeAll(async () => {
  log = await demoLog("2027-03-02T17:00");
}, 90_000);

function work(sketch: Sketch, typed: Draft = {}, given: LogSnapshot | "no log" = log): SketchAnswer {
  const context = { log: given === "no log" ? undefined : given, system: "US", bath } as const;
  return sketch.work({ ...sketch.proposals(context), ...typed }, context);
}

const said = (answer: SketchAnswer): string => answer.findings.map(({ text }) => text).join("\n");

/** What a cell with that formula shows. */
function inCell(formula: string | undefined): CellValue | CellMatrix {
  const call = argumentsOf(formula ?? "");
  const fn = findFunction(call.id);
  if (fn === undefined) throw new RangeError(`no function ${call.id}`);
  return evaluate(fn, call.cells);
}

describe("trying out a dose", () => {
  // 121.175 gal / 29 = 4.178 gal; / 28 = 4.328 gal: definitions of the two readings.
  it("says both readings of a ratio with a colon, and gives the formula of the one it took", () => {
    const answer = work(doseSketch, { rate: "1:28" });
    expect(said(answer)).toContain("Concentrate: 4.18 gal (534.8 US fl oz).");
    expect(said(answer)).toContain("1 in 28 would be 4.33 gal");
    expect(inCell(answer.formula)).toBeCloseTo(121.175 / 29, 6);
  });

  it("says what a strength cannot be, in the function's own words", () => {
    expect(said(work(doseSketch, { rate: "40+1" }))).toMatch(/concentrate stands first/);
    expect(work(doseSketch, { rate: "40+1" }).formula).toBeUndefined();
  });

  it("works without a log", () => {
    expect(said(work(doseSketch, { volume: "60 gal", rate: "1 in 40" }, "no log"))).toContain("Concentrate: 1.5 gal");
  });
});

describe("waters side by side", () => {
  // 8.05 gal × 325 mg/L / 2.4 mg/mL is 1.09 gal with nothing covered by the label; here the whole bath less 60 mg/L.
  it("names the extra for hardness and for alkalinity of each water and of a blend", () => {
    const { table } = work(watersSketch, { labelHardness: "", first: "RO", second: "CITY", share: "50" });
    expect(table?.rows.map(([name]) => name)).toEqual(["RO", "SOFT", "CITY", "RO with 50% CITY"]);
    // 121.175 × 325 / 2400 = 16.41 gal; 121.175 × 240 / 50.043 / 254 = 2.288 gal (mass balances).
    expect(table?.rows[2]?.[2]).toBe("18.7 (16.41 + 2.29)");
    expect(table?.rows[3]?.[1]).toBe("166, 123 mg/L");
  });

  it("asks for waters where the log has none with both figures", () => {
    expect(said(work(watersSketch, {}, "no log"))).toMatch(/Enter the waters/);
  });
});

describe("trying out temperatures, top-ups and acid", () => {
  it("asks on which scale 53 was read, as the cell would", () => {
    expect(said(work(temperatureSketch, { ph: "10.58", from: "53" }))).toMatch(/write “53 C” \(127\.4 °F\) or “53 F”/);
    expect(said(work(topUpSketch, { temperature: "53" }))).toMatch(/write “53 C” \(127\.4 °F\) or “53 F”/);
  });

  it("does not ask for a top-up on a hot reading of the demo bath", () => {
    const answer = work(temperatureSketch, { ph: "10.58", from: "127.6" });
    expect(said(answer)).toContain("Against the baseline: hold.");
    expect(inCell(answer.formula)).toBeGreaterThan(11.1);
  });

  it("proposes a third of the opening dose first, and the formula spills the same range", () => {
    const answer = work(topUpSketch, { reading: "10.83", baseline: "11.42" });
    expect(said(answer)).toContain("First addition 1.39 gal");
    const [row] = inCell(answer.formula) as CellMatrix;
    expect(row?.[3]).toBeCloseTo(121.175 / 29 / 3, 2);
  });

  it("calls the acid from a reading a minimum and stages it, 60, 30 and 10 %", () => {
    const answer = work(neutralizingSketch, { ph: "11.22", titrated: "" });
    expect(said(answer)).toMatch(/^At least .* titrate it\.$/);
    const needed = inCell(answer.formula);
    if (typeof needed !== "number") throw new TypeError("ACIDTO gave no number");
    expect(Number(answer.table?.rows[0]?.[1])).toBeCloseTo(0.6 * needed, 1);
    expect(said(work(neutralizingSketch, { ph: "11.22", titrated: "13.65 meq/L" }))).toMatch(/^About /);
  });

  it("keeps its cautions where something can hurt", () => {
    for (const sketch of sketches.filter(({ id }) => ["dose", "waters", "top-up", "neutralizing"].includes(id)))
      expect(cautionsOfForm(sketch.step ?? "")?.first.length, sketch.id).toBeGreaterThan(1);
  });
});
