import { describe, expect, test } from "vitest";

import { ordersIn, readDay, readMoment, readTime } from "../../../../src/pane/adopt/read-moment.ts";

/** Excel's own serial numbers, by its documentation: 1 January 2008 is 39448, noon is a half. */
const newYear = 39448;

describe("dates of a shop's sheet", () => {
  test.each([
    [39448, 39448, undefined],
    [39448.5, 39448, 0.5],
    ["2008-01-01", newYear, undefined],
    ["2008-01-01T12:00", newYear, 0.5],
    ["2008/1/1 6:00 PM", newYear, 0.75],
    ["1/1/2008", newYear, undefined],
    ["1/1/08, 12:00 pm", newYear, 0.5],
    ["Jan 1, 2008 12:00 AM", newYear, 0],
    ["1 January 2008", newYear, undefined],
    ["1-Jan-08", newYear, undefined],
    ["Tue 1/1/2008", newYear, undefined],
    [" 1/31/2008 ", newYear + 30, undefined],
    ["31.1.2008", newYear + 30, undefined],
  ])("%s is a day", (value, day, time) => {
    expect(readDay(value, undefined)).toEqual({ read: "day", day, time });
  });

  test.each([
    "31/31/2008",
    "2008-02-30",
    "13/13/08",
    "yesterday",
    "~1/1/2008",
    "1/1",
    "",
    "1/1/2008 25:00",
    "1/1/2008 13:00 PM",
    true,
    undefined,
    Number.NaN,
    -3,
  ])("%s is none", (value) => {
    expect(readDay(value, undefined)).toEqual({ read: "nothing" });
  });

  test("3/1/2027 is asked about, and read as the person says", () => {
    expect(readDay("3/1/2027", undefined)).toEqual({ read: "ambiguous" });
    expect(readDay("3/1/2027", "month first")).toEqual(readDay("2027-03-01", undefined));
    expect(readDay("3/1/2027", "day first")).toEqual(readDay("2027-01-03", undefined));
  });

  test("a day that the chosen order does not have is not turned round", () => {
    expect(readDay("3/14/2027", "day first")).toEqual({ read: "nothing" });
  });

  test("the other dates of a column speak for an order", () => {
    expect(ordersIn(["3/1/2027", "3/14/2027", 46450])).toEqual({ proven: ["month first"], ambiguous: true });
    expect(ordersIn(["3/14/2027", "14/3/2027"])).toEqual({ proven: ["month first", "day first"], ambiguous: false });
    expect(ordersIn(["2027-03-01", "3 Mar 2027"])).toEqual({ proven: [], ambiguous: false });
  });
});

describe("times of a shop's sheet", () => {
  test.each([
    ["14:05", 14 / 24 + 5 / 1440],
    ["2:05 PM", 14 / 24 + 5 / 1440],
    ["12:00 am", 0],
    ["9 a.m.", 9 / 24],
    [0.25, 0.25],
    ["noon", 0.5],
    ["12 noon", 0.5],
    ["10h30", 10.5 / 24],
    ["10 h", 10 / 24],
    ["9.30 pm", 21.5 / 24],
    ["1150", 11 / 24 + 50 / 1440],
    [1150, 11 / 24 + 50 / 1440],
    ["0930", 9.5 / 24],
    [930, 9.5 / 24],
  ])("%s is one", (value, time) => {
    expect(readTime(value)).toBeCloseTo(time, 12);
  });

  test.each(["24:00", "9", 9, "midnight", "13 pm", "9:75", 1175, "2430", "99999", "9.30", 9.3, 1.5, -0.1, ""])(
    "%s is none",
    (value) => {
      expect(readTime(value)).toBeUndefined();
    },
  );

  test("stand with the date, beside it, or are the same for all; never twice and never midnight by default", () => {
    const rules = { order: undefined, usualTime: undefined };
    expect(readMoment(newYear, { value: 0.5 }, rules)).toEqual({ moment: 39448.5 });
    expect(readMoment(newYear, { value: "12:00" }, rules)).toEqual({ moment: 39448.5 });
    expect(readMoment(newYear, { value: "" }, rules)).toEqual({ why: "the time is blank" });
    expect(readMoment(newYear, undefined, { ...rules, usualTime: 0.5 })).toEqual({ moment: 39448.5 });
    expect(readMoment(39448.5, { value: "13:00" }, rules)).toEqual({
      why: expect.stringContaining("another beside it") as string,
    });
    expect(readMoment(5, undefined, { ...rules, usualTime: 0.5 })).toEqual({
      why: 'the date "5" is before the year 2000',
    });
  });
});

describe("a time with a point", () => {
  test.each([
    ["9.30", "clock", 9.5 / 24],
    [9.3, "clock", 9.5 / 24],
    [9.05, "clock", 9 / 24 + 5 / 1440],
    ["9.5", "hours", 9.5 / 24],
    [9.3, "hours", 9.3 / 24],
    [9.75, "hours", 9.75 / 24],
  ] as const)("%s by the %s", (value, way, time) => {
    expect(readTime(value, way)).toBeCloseTo(time, 12);
  });

  test("is no time of the clock beyond 59 minutes, nor with one digit of them", () => {
    expect([
      readTime(9.75, "clock"),
      readTime("9.3", "clock"),
      readTime("25.10", "clock"),
      readTime(24.5, "hours"),
    ]).toEqual([undefined, undefined, undefined, undefined]);
  });

  test("is asked about", () => {
    const rules = { order: undefined, usualTime: undefined };
    expect(readMoment(newYear, { value: 9.3 }, rules)).toEqual({ why: 'the time "9.3" can be read two ways' });
    expect(readMoment(newYear, { value: 9.3 }, { ...rules, dotTime: "clock" })).toEqual({
      moment: newYear + 9.5 / 24,
    });
  });
});

describe("the edges of what can be read", () => {
  test("Excel's last day takes a time, and nothing stands after it", () => {
    expect(readDay(2_958_465.5, undefined)).toEqual({ read: "day", day: 2_958_465, time: 0.5 });
    expect(readDay(2_958_466, undefined)).toEqual({ read: "nothing" });
  });

  test("a whole day is no time of day, and no minute has a 61st second", () => {
    expect(readTime(1)).toBeUndefined();
    expect(readTime("1:00:60")).toBeUndefined();
    expect(readTime("1:60")).toBeUndefined();
  });
});
