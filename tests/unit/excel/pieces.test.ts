import { describe, expect, test } from "vitest";

import { inTrips } from "../../../src/excel/build/pieces.ts";

describe("columns in trips", () => {
  test("of a long log hold well under 5 MB each and every row once, in order", () => {
    const columns = Array.from({ length: 45 }, (_, index) => ({ item: index, rows: 3000, width: 320 }));
    const trips = inTrips([...columns, { item: 45, rows: 3000, width: 1994 }]);
    for (const trip of trips) {
      const characters = trip.reduce((sum, { item, rows }) => sum + rows * (item === 45 ? 1994 : 320), 0);
      expect(characters).toBeLessThanOrEqual(2_000_000);
    }
    for (let item = 0; item <= 45; item += 1) {
      const pieces = trips.flat().filter((piece) => piece.item === item);
      const rows = pieces.flatMap(({ first, rows: count }) => Array.from({ length: count }, (_, at) => first + at));
      expect(rows).toEqual(Array.from({ length: 3000 }, (_, at) => at));
    }
    expect(trips.length).toBeLessThan(40);
  });

  test("of a short log go in one", () => {
    expect(inTrips([1, 2, 3].map((item) => ({ item, rows: 10, width: 500 })))).toHaveLength(1);
  });

  test("a column without rows needs none", () => {
    expect(inTrips([{ item: "none", rows: 0, width: 10 }])).toEqual([]);
  });
});
