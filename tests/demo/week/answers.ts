import { expect, it } from "vitest";

import { corrosive } from "../../../functions/discharge/corrosive.ts";
import { heatTime } from "../../../functions/heat/heat-time.ts";
import { topUpTitration } from "../../../functions/top-up/top-up-titration.ts";
import { unitConvert } from "../../../functions/units/unit-convert.ts";
import { ask, askNumber } from "../../../src/advice/ask.ts";
import { bathOne, bathTwo, march } from "../../../src/pane/demo/week-event.ts";
import { numberIn, readCsv, textIn } from "../../reference/read-csv.ts";
import { logAt, number, type PlayedWeek, reading, row, serial } from "./played-week.ts";

const answers = readCsv("../demo/week/expected-answers.csv");

function known(answer: ReturnType<typeof askNumber>): number {
  if (!answer.known) throw new Error(answer.why);
  return answer.value;
}

/** What the log, or the function that its formulas and forms call, makes of each fact of the list. */
type Ours = (week: PlayedWeek) => number;

const bath = (week: PlayedWeek, name: string, column: string): number =>
  number(row(week.log, "baths", { bath: name }), column);
const tank = (week: PlayedWeek, name: string, column: string): number =>
  number(row(week.log, "tanks", { tank: name }), column);
const morning = march(4, "08:15");
const cityWater = { kind: "water", water: "CITY" };

const byLevels: Ours = (week) => {
  const level = (when: string): number => number(reading(week.log, bathOne, when), "level");
  return (level(march(2, "16:45")) - level(march(3, "07:15"))) * tank(week, "T1", "volumePerDepth");
};

const agreeing: Readonly<Record<string, Ours>> = {
  "T1 working volume, gal": (week) => tank(week, "T1", "workingVolume"),
  "T2 working volume, gal": (week) => tank(week, "T2", "workingVolume"),
  "T1 dose at 1+28, gal": (week) => bath(week, bathOne, "baseDose"),
  "T1 dose at 1+28, US fl oz": (week) =>
    known(askNumber(unitConvert, { value: bath(week, bathOne, "baseDose"), from: "US gal", to: "US fl oz" })),
  "T1 baseline": (week) => bath(week, bathOne, "baseline"),
  "T1 trigger": (week) => bath(week, bathOne, "trigger"),
  "evaporated overnight by levels, gal": byLevels,
  "drift before the recalibration, pH a day": ({ log }) => {
    const check = row(log, "meterChecks", { when: serial(march(4, "08:05")) });
    return number(check, "error2") / (number(check, "when") - number(check, "since"));
  },
  "top-ups on Thursday, gal": (week) =>
    number(row(logAt(week, march(4, "17:00")), "baths", { bath: bathOne }), "topUpTotal"),
  "top-ups on Thursday, % of the opening dose": (week) =>
    100 * number(row(logAt(week, march(4, "17:00")), "baths", { bath: bathOne }), "topUpShare"),
  "R015, share of the opening dose by P titration": ({ log }) => {
    const [fresh] = log.rows.readings
      .map(({ cells }) => cells)
      .filter((cells) => cells.bath === bathOne && cells.pTitre !== undefined);
    return known(
      askNumber(topUpTitration, {
        opening_dose: 1,
        fresh_titer: number(fresh ?? {}, "pTitre"),
        titer_now: number(reading(log, bathOne, morning), "pTitre"),
      }),
    );
  },
  "hard city water, gal": ({ log }) => number(row(log, "additions", cityWater), "amount"),
  "its hardness, g CaCO3": ({ log }) => number(row(log, "additions", cityWater), "hardnessCarried"),
  "its bicarbonate, eq": ({ log }) => number(row(log, "additions", cityWater), "bicarbonateCarried"),
  "concentrate on the shop's account, gal": ({ log }) => number(row(log, "additions", { account: "shop" }), "amount"),
  "T1 pool for the claims": ({ log }) => number(row(log, "baths", { bath: "B-T1-0301" }), "pool"),
  "stock variance, gal": ({ log }) =>
    number(row(log, "stockMoves", { when: serial("2027-03-06T12:00"), kind: "count" }), "variance"),
};

interface Difference {
  readonly why: string;
  readonly ours: Ours;
  /** Ours less the list's figure. */
  readonly by: number;
  readonly within: number;
}

const differing: Readonly<Record<string, Difference>> = {
  "evaporated overnight, gal": {
    why: "the list has what the invented bath really lost; the log has levels read to a tenth of an inch, half a gallon here",
    ours: byLevels,
    by: -0.06,
    within: 0.01,
  },
  "R015, share of the opening dose by hydroxide alone": {
    why: "the list counts a pH of 0.59 as hydroxide alone; the log takes the sample from 26 °C to the baseline's 24.9 °C, which makes it 0.55, and counts what an unknown builder and the water's alkalinity hold back",
    ours: ({ log }) =>
      number(reading(log, bathOne, morning), "topUpBest") / number(row(log, "baths", { bath: bathOne }), "openingDose"),
    by: 0.052,
    within: 0.003,
  },
  "T1 heated from 62 to 130 °F without loss, h": {
    why: "the list takes 8.345 lb in every gallon; the function takes the density of water at 62 °F and its heat up to 130 °F",
    ours: (week) =>
      known(
        askNumber(heatTime, {
          volume: tank(week, "T1", "workingVolume"),
          from: 62,
          to: 130,
          kilowatts: tank(week, "T1", "heater"),
          system: "US",
        }),
      ),
    by: -0.009,
    within: 0.002,
  },
  "citric acid for T1, kg": {
    why: "the list knows what the invented bath takes to pH 8.5, 3.32 eq; the log knows its pH and its titration to 4.5, and reckons 3.64 eq with an unknown builder: 10 % more, and stages are read anyway",
    ours: ({ log }) =>
      known(
        askNumber(unitConvert, {
          value: number(row(log, "releases", { bath: bathOne }), "acidNeeded"),
          from: "lb",
          to: "kg",
        }),
      ),
    by: 0.0204,
    within: 0.001,
  },
  "R013 without drift, linear between checks": {
    why: "the list takes the error of the 10.01 buffer, 0.14; the log draws the line through 0.06 at 7 and 0.14 at 10.01 on to 11.00, which makes it 0.162: 0.022 × 51.33 / 72.08 hours more",
    ours: ({ log }) => number(reading(log, bathOne, march(3, "11:20")), "phCorrected"),
    by: -0.02,
    within: 0.001,
  },
  "R014 without drift, linear between checks": {
    why: "as of R013: 0.161 at 10.96, which is 0.021 × 56.5 / 72.08 hours more",
    ours: ({ log }) => number(reading(log, bathOne, march(3, "16:30")), "phCorrected"),
    by: -0.02,
    within: 0.001,
  },
  "T2 baseline without drift": {
    why: "the list takes off the 0.11 that its invented meter was high by; the log only has the two checks, and the line through their buffers drawn on to 11.59 gives 0.13 at that time",
    ours: (week) => bath(week, bathTwo, "baseline"),
    by: -0.02,
    within: 0.001,
  },
};

/** Digits behind the point as the list prints them. */
const digitsOf = (text: string): number => (text.split(".")[1] ?? "").length;

export function holdsAnswers(week: () => PlayedWeek): void {
  it("every fact of the list is either met to its digits or its difference is named", () => {
    expect([...Object.keys(agreeing), ...Object.keys(differing)].sort()).toEqual(
      answers.map((one) => textIn(one, "fact")).sort(),
    );
  });

  it.each(answers.filter((one) => textIn(one, "fact") in agreeing))("$fact is $answer", (one) => {
    const digits = digitsOf(textIn(one, "answer"));
    const ours = agreeing[textIn(one, "fact")]?.(week()) ?? Number.NaN;
    expect(Number(ours.toFixed(digits))).toBe(numberIn(one, "answer"));
  });

  it.each(answers.filter((one) => textIn(one, "fact") in differing))(
    "$fact is not $answer, for a reason and by so much",
    (one) => {
      const difference = differing[textIn(one, "fact")];
      if (difference === undefined) throw new RangeError(textIn(one, "fact"));
      const by = difference.ours(week()) - numberIn(one, "answer");
      expect(Math.abs(by - difference.by), `${String(by)}; ${difference.why}`).toBeLessThan(difference.within);
    },
  );

  it("the range for R015 holds both the estimate by hydroxide alone and what the bath then took", () => {
    const { log } = week();
    const cells = reading(log, bathOne, morning);
    const dose = bath(week(), bathOne, "openingDose");
    for (const share of [0.743, 0.76]) {
      expect(share * dose).toBeGreaterThan(number(cells, "topUpLow"));
      expect(share * dose).toBeLessThan(number(cells, "topUpHigh"));
    }
  });

  it("neat concentrate of pH 12.9 is corrosive waste if discarded, the spent bath is not", () => {
    expect(ask(corrosive, { ph: 12.9 })).toEqual({ known: true, value: true });
    expect(row(week().log, "releases", { bath: bathOne })["corrosive"]).toBe("no");
  });
}
