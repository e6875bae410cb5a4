import { beforeAll, describe, expect, it } from "vitest";

import type { LogContent } from "../../../../src/joblog/model/definition.ts";
import type { LogSnapshot } from "../../../../src/joblog/model/log-snapshot.ts";
import { firstTwoDays } from "../../../demo/days/demo-week.ts";
import { demoBath as bath } from "../../../demo/demo-week-times.ts";
import { workedOut } from "../evaluate/worked-out.ts";

const having = (fields: LogContent["fields"]): LogContent => ({
  ...firstTwoDays,
  fields: { ...firstTwoDays.fields, ...fields },
});

const tried = ({ fields }: LogSnapshot): readonly unknown[] => [
  fields.bathTried,
  fields.volumeTried,
  fields.concentrateTried,
  fields.baselineTried,
  fields.temperatureTried,
  fields.openingTried,
  fields.dropTried,
  fields.builderTried,
];

describe("the sheet What-if with nothing typed into it", () => {
  let log: LogSnapshot;
  beforeAll(async () => {
    log = await workedOut(firstTwoDays);
  });

  it("starts with the figures of the bath that the charts begin with", () => {
    const [first] = log.rows.baths;
    expect(tried(log)).toEqual([
      bath,
      first?.cells.workingVolume,
      "CN-1",
      11.42,
      76.77,
      first?.cells.openingDose,
      first?.cells.dropUsed,
      "unknown",
    ]);
    expect(first?.cells.workingVolume).toBeTypeOf("number");
  });

  it("works the doses out for that bath's volume: volume divided by 29 at 1+28", () => {
    const dose = log.rows.whatIfDoses.find(({ cells }) => cells.strength === "1+28");
    expect(dose?.cells.full).toBeCloseTo(Number(log.fields.volumeTried) / 29, 9);
  });

  it("puts the shop's own waters side by side, as they were tested", () => {
    const waters = log.rows.whatIfShopWaters.map(({ cells }) => [cells.water, cells.hardness, cells.alkalinity]);
    expect(waters).toEqual([
      ["RO", 7, 5],
      ["SOFT", 9, 240],
      ["CITY", 325, 240],
    ]);
    const [ro, soft, city] = log.rows.whatIfShopWaters.map(({ cells }) => Number(cells.together));
    expect(Number(ro)).toBeLessThan(Number(soft));
    expect(Number(soft)).toBeLessThan(Number(city));
  });
});

it("what is typed counts before the bath's figures, each for itself", async () => {
  const log = await workedOut(having({ whatIfVolume: 29, whatIfBaseline: 11, whatIfDrop: 0.3 }));
  expect(tried(log).slice(0, 5)).toEqual([bath, 29, "CN-1", 11, 76.77]);
  expect(log.fields.dropTried).toBe(0.3);
  expect(log.rows.whatIfDoses.find(({ cells }) => cells.strength === "1+28")?.cells.full).toBeCloseTo(1, 9);
});

it("a concentrate that Job does not list is said, and no error stands on the sheet", async () => {
  const log = await workedOut(having({ whatIfConcentrate: "CN-9" }));
  expect(log.rows.whatIfShopWaters.map(({ cells }) => cells.forHardness)).toEqual(
    Array.from({ length: 3 }, () => "concentrate not on Job"),
  );
});

it("an empty log shows no figure that nobody typed", async () => {
  const { fields, rows } = await workedOut({ fields: {}, rows: {} });
  expect([fields.bathTried, fields.volumeTried, fields.baselineTried, fields.openingTried]).toEqual(
    Array.from({ length: 4 }),
  );
  expect(rows.whatIfDoses.every(({ cells }) => cells.full === undefined)).toBe(true);
  expect(rows.whatIfWaters.every(({ cells }) => cells.together === undefined)).toBe(true);
});
