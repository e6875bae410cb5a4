import { describe, expect, test } from "vitest";

import { catalogue } from "../../../functions/catalogue.ts";
import type { TrendPoint } from "../../../src/advice/readings/trend-points.ts";
import { callOf, searchFunctions } from "../../../src/pane/functions/function-search.ts";
import { chartScale } from "../../../src/pane/now/chart-scale.ts";

const point = (when: number, ph: number): TrendPoint => ({
  when,
  ph,
  asRead: ph,
  temperature: 77,
  verdict: "hold",
  comparable: true,
});

describe("searching the functions", () => {
  test("an empty search lists all of them in their order", () => {
    expect(searchFunctions(catalogue, " ")).toEqual(catalogue);
  });

  test("a name, with or without BATH., comes first", () => {
    expect(searchFunctions(catalogue, "bath.dose")[0]?.id).toBe("DOSE");
    expect(searchFunctions(catalogue, "trigger")[0]?.id).toBe("TRIGGER");
  });

  test("every word must be mentioned", () => {
    expect(searchFunctions(catalogue, "dose zebra")).toEqual([]);
  });

  test("a call shows optional arguments in brackets", () => {
    const dose = catalogue.find((fn) => fn.id === "DOSE");
    expect(dose === undefined ? "" : callOf(dose)).toBe("BATH.DOSE(volume, rate, [label_highest], [system])");
  });
});

describe("the scale of the trend", () => {
  const size = { width: 300, height: 150 };

  test("there is none without readings", () => {
    expect(chartScale({ points: [], baseline: 11.42, trigger: 10.92 }, size)).toBeUndefined();
  });

  test("every reading, the baseline and the trigger lie inside the drawing, higher pH higher up", () => {
    const points = [point(1, 11.42), point(2, 11.3), point(3, 10.58)];
    const scale = chartScale({ points, baseline: 11.42, trigger: 10.92 }, size);
    if (scale === undefined) throw new Error("no scale");
    for (const { when, ph } of points) {
      expect(scale.x(when)).toBeGreaterThanOrEqual(scale.left);
      expect(scale.x(when)).toBeLessThanOrEqual(scale.right);
      expect(scale.y(ph)).toBeGreaterThanOrEqual(0);
      expect(scale.y(ph)).toBeLessThanOrEqual(size.height);
    }
    expect(scale.y(11.42)).toBeLessThan(scale.y(10.92));
    expect(scale.ticks.length).toBeGreaterThanOrEqual(3);
    expect(scale.ticks.length).toBeLessThanOrEqual(8);
  });

  test("a single reading stands in the middle", () => {
    const scale = chartScale({ points: [point(5, 11)], baseline: undefined, trigger: undefined }, size);
    expect(scale?.x(5)).toBe(((scale?.left ?? 0) + (scale?.right ?? 0)) / 2);
  });
});
