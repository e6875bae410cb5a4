import fc from "fast-check";
import { describe, expect, it } from "vitest";

import type { CellInput, CellValue } from "../../functions/define-function.ts";
import { evaluate } from "../../functions/evaluate.ts";
import { findFunction } from "../../functions/find-function.ts";
import { DomainError } from "../../src/core/limits/domain-error.ts";
import type { UnitSystem } from "../../src/core/units/unit-system.ts";
import { unitSystems } from "../../src/core/units/unit-system.ts";
import { runs } from "../setup/random-runs.ts";

/** By definition: inch 2.54 cm, US gallon 231 cubic inches, imperial gallon 4.54609 L, pound 0.45359237 kg. */
const inCentimeters: Readonly<Record<UnitSystem, number>> = { US: 2.54, metric: 1, imperial: 2.54 };
const inLiters: Readonly<Record<UnitSystem, number>> = { US: 3.785411784, metric: 1, imperial: 4.54609 };
const inKilograms: Readonly<Record<UnitSystem, number>> = { US: 0.45359237, metric: 1, imperial: 1 };

function spill(id: string, ...cells: readonly CellInput[]): readonly CellValue[] {
  const fn = findFunction(id);
  if (fn === undefined) throw new RangeError(`No function ${id}`);
  const answer = evaluate(fn, cells);
  return Array.isArray(answer) ? answer.flat() : [answer];
}

const number = (id: string, ...cells: readonly CellInput[]): number => Number(spill(id, ...cells)[0]);

/** A bare number may be in another unit where it is low. */
const labFigure = (tested: number): string => `${String(tested)} mg/L`;

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

/** One job of a shop, in centimeters, liters and degrees Celsius. */
const job = fc.record({
  length: between(60, 250),
  width: between(40, 120),
  depth: between(30, 90),
  displaced: between(1, 40),
  parts: fc.integer({ min: 10, max: 64 }),
  /** mg/L as CaCO3 */
  hardness: between(1, 500),
  alkalinity: between(1, 250),
  builder: fc.constantFrom("hydroxide", "silicate", "carbonate", "phosphate", "unknown"),
  baseline: between(10.4, 11.2),
  fall: between(0.2, 0.8),
  cool: between(15, 30),
  hot: between(40, 70),
  /** Loads, and liters that each carries out. */
  loads: fc.integer({ min: 1, max: 30 }),
  dragged: between(0.2, 1.5),
  /** meq/L */
  spent: between(5, 30),
});

type Job = typeof job extends fc.Arbitrary<infer Drawn> ? Drawn : never;
type Story = Readonly<Record<string, number | string>>;

/** Charge, threshold, top-up, meter, make-up, cost, neutralizing and heat, as one shop types them; told in liters, kilograms and degrees Celsius. */
function toldIn(system: UnitSystem, shop: Job): Story {
  const cell = {
    length: (centimeters: number) => centimeters / inCentimeters[system],
    volume: (liters: number) => liters / inLiters[system],
  };
  const degrees = (celsius: number): number => (system === "US" ? celsius * 1.8 + 32 : celsius);
  const liters = (result: number): number => result * inLiters[system];

  const volume = number(
    "TANKVOLUME",
    cell.length(shop.length),
    cell.length(shop.width),
    cell.length(shop.depth),
    cell.volume(shop.displaced),
    system,
  );
  const dose = number("DOSE", volume, `1+${String(shop.parts)}`, null, system);
  const bath = [shop.builder, degrees(shop.cool), labFigure(shop.alkalinity)] as const;
  const reading = shop.baseline - shop.fall;
  const [low, best, high, first] = spill(
    "TOPUPRANGE",
    dose,
    shop.baseline,
    reading,
    ...bath,
    null,
    null,
    null,
    null,
    system,
  ).map(Number);
  const verdict = String(
    spill(
      "VERDICT",
      reading,
      shop.baseline,
      0.5,
      degrees(shop.cool),
      degrees(shop.hot),
      shop.builder,
      labFigure(shop.alkalinity),
      system,
    )[0],
  );
  const [cardTemperature, cardTrigger] = spill(
    "TRIGGERCARD",
    shop.baseline,
    0.5,
    degrees(shop.cool),
    [[degrees(shop.hot)]],
    shop.builder,
    labFigure(shop.alkalinity),
    system,
  ).map(Number);
  const [evaporated, carriedOut, replaced] = spill(
    "MAKEUP",
    cell.volume(50),
    shop.loads,
    cell.volume(shop.dragged),
    null,
    `1+${String(shop.parts)}`,
  ).map(Number);
  const price = number("UNITPRICE", 139, cell.volume(20), system);

  return {
    volume: liters(volume),
    dose: liters(dose),
    "dose for hardness": liters(number("HARDNESSDOSE", volume, labFigure(shop.hardness), 2.4, null, system)),
    "dose for alkalinity": liters(number("ALKALINITYDOSE", volume, labFigure(shop.alkalinity), 1, system)),
    strength: number("STRENGTHOF", dose, volume),
    trigger: number(
      "TRIGGER",
      shop.baseline,
      0.5,
      degrees(shop.cool),
      degrees(shop.hot),
      shop.builder,
      labFigure(shop.alkalinity),
      system,
    ),
    "temperature on the card":
      system === "US" ? ((cardTemperature ?? Number.NaN) - 32) / 1.8 : (cardTemperature ?? Number.NaN),
    "trigger on the card": cardTrigger ?? Number.NaN,
    verdict: verdict.replace(/ at .*/, ""),
    "top-up, low": liters(low ?? Number.NaN),
    "top-up, best": liters(best ?? Number.NaN),
    "top-up, high": liters(high ?? Number.NaN),
    "first addition": liters(first ?? Number.NaN),
    "next addition": liters(
      number(
        "NEXTADD",
        first ?? Number.NaN,
        reading,
        reading + 0.15,
        shop.baseline,
        ...bath,
        0.04,
        dose,
        null,
        null,
        null,
        null,
        system,
      ),
    ),
    buffer: number("BUFFERPH", "borax", degrees(shop.cool), system),
    slope: number("METERSLOPE", "phosphate", 3, "borax", -131, degrees(shop.cool), system),
    evaporated: liters(evaporated ?? Number.NaN),
    "carried out": liters(carriedOut ?? Number.NaN),
    "concentrate carried out": liters(replaced ?? Number.NaN),
    "strength left": number("DRAGOUT", volume, cell.volume(shop.dragged), shop.loads),
    cost: price * dose,
    "dry acid": inKilograms[system] * number("ACIDFOR", volume, `${String(shop.spent)} meq/L`, "citric", null, system),
    "liquid acid": liters(
      number("ACIDTO", volume, reading, 8.5, "hydrochloric", shop.builder, degrees(shop.cool), null, null, system),
    ),
    release: String(spill("DISCHARGECHECK", 8.5, 6, 9, degrees(shop.cool), system)[0]),
    heat: number("HEATENERGY", volume, degrees(shop.cool), degrees(shop.hot), system),
    hours: number("HEATTIME", volume, degrees(shop.cool), degrees(shop.hot), 9, 0.9, system),
  };
}

/** The story, or why it has none: a bath past topping up is refused, and in every system alike. */
function toldOrRefused(system: UnitSystem, shop: Job): Story {
  try {
    return toldIn(system, shop);
  } catch (error) {
    if (error instanceof DomainError && error.message.includes("times the opening dose"))
      return { refused: error.message };
    throw error;
  }
}

describe("one job in US, metric and imperial units", () => {
  it("tells one story", () => {
    fc.assert(
      fc.property(job, (shop) => {
        const [expected, ...others] = unitSystems.map((system) => toldOrRefused(system, shop));
        for (const [what, value] of Object.entries(expected ?? {})) {
          for (const story of others) {
            const other = story[what];
            if (typeof value === "number")
              expect(Math.abs(Number(other) - value), what).toBeLessThanOrEqual(1e-9 * Math.max(1e-3, Math.abs(value)));
            else expect([what, other]).toEqual([what, value]);
          }
        }
      }),
      runs(60),
    );
  });
});
