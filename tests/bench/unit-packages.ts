import configureMeasurements from "convert-units";

import { evaluate } from "../../functions/evaluate.ts";
import { unitConvert } from "../../functions/units/unit-convert.ts";
import { unitPackages } from "../property/units-of-packages.ts";

type ConvertUnitsWord = Parameters<ReturnType<typeof configureMeasurements>["from"]>[0];

/** What convert-units calls the units that all packages know. */
const convertUnitsWords: Readonly<Record<string, ConvertUnitsWord>> = {
  m: "m",
  cm: "cm",
  mm: "mm",
  in: "in",
  ft: "ft",
  "m²": "m2",
  "cm²": "cm2",
  "in²": "in2",
  "ft²": "ft2",
  "m³": "m3",
  L: "l",
  mL: "ml",
  "in³": "in3",
  "ft³": "ft3",
  "US gal": "gal",
  "US qt": "qt",
  "US pt": "pnt",
  "US cup": "cup",
  "US fl oz": "fl-oz",
  kg: "kg",
  g: "g",
  mg: "mg",
  lb: "lb",
  oz: "oz",
  K: "K",
  "°C": "C",
  "°F": "F",
  J: "J",
  kJ: "kJ",
  kWh: "kWh",
  W: "W",
  kW: "kW",
};

interface Conversion {
  readonly from: string;
  readonly to: string;
}

interface Rival {
  readonly name: string;
  /** Its conversion of the pairs, each with the package's own words for the units. */
  readonly prepare: (pair: Conversion, kind: string) => (value: number) => number;
}

const others = unitPackages.filter(({ name }) => name === "mathjs" || name === "js-quantities");

function wordIn(words: Readonly<Record<string, string>> | undefined, unit: string): string {
  const word = words?.[unit];
  if (word === undefined) throw new RangeError(`No word for ${unit}`);
  return word;
}

const rivals: readonly Rival[] = [
  {
    name: "UNITCONVERT through evaluate",
    prepare:
      ({ from, to }) =>
      (value) =>
        evaluate(unitConvert, [value, from, to]) as number,
  },
  ...others.map(({ name, units, convert }): Rival => ({
    name,
    prepare: ({ from, to }, kind) => {
      const [source, target] = [wordIn(units[kind], from), wordIn(units[kind], to)];
      return (value) => convert(value, source, target);
    },
  })),
  {
    name: "convert-units",
    prepare: ({ from, to }) => {
      const [source, target] = [wordIn(convertUnitsWords, from), wordIn(convertUnitsWords, to)] as [
        ConvertUnitsWord,
        ConvertUnitsWord,
      ];
      return (value) => configureMeasurements(value).from(source).to(target);
    },
  },
];

/** Every pair of units of one kind that all packages know. */
function sharedPairs(): readonly { readonly kind: string; readonly pair: Conversion }[] {
  const [first] = others;
  return Object.entries(first?.units ?? {}).flatMap(([kind, words]) => {
    const known = Object.keys(words).filter(
      (unit) => unit in convertUnitsWords && others.every(({ units }) => units[kind]?.[unit] !== undefined),
    );
    return known.flatMap((from) => known.filter((to) => to !== from).map((to) => ({ kind, pair: { from, to } })));
  });
}

/** Long enough for the compiler to have settled. */
const warmUpMilliseconds = 500;
const rounds = 100;

/** Nanoseconds of one conversion: the quickest round over all pairs, since other work on the machine only adds. */
function nanosecondsOf(conversions: readonly ((value: number) => number)[]): number {
  let sum = 0;
  const round = (value: number): number => {
    const start = performance.now();
    for (const convert of conversions) sum += convert(value + 0.5);
    return performance.now() - start;
  };
  const end = performance.now() + warmUpMilliseconds;
  while (performance.now() < end) round(1);
  const quickest = Math.min(...Array.from({ length: rounds }, (_, index) => round(index + 1)));
  if (!Number.isFinite(sum)) throw new Error("The conversions came to nothing");
  return (quickest * 1e6) / conversions.length;
}

/** Prints what one conversion costs in a cell's function and in three packages, over the same pairs of units. */
export function benchUnits(): void {
  const pairs = sharedPairs();
  const times = rivals.map(({ name, prepare }) => ({
    name,
    each: nanosecondsOf(pairs.map(({ kind, pair }) => prepare(pair, kind))),
  }));
  const [ours, ...theirs] = times.map(({ each }) => each);
  console.log(`\nconversions between ${String(pairs.length)} pairs of units, ns each`);
  for (const { name, each } of times) console.log(`${name.padEnd(30)} ${each.toFixed(0).padStart(8)}`);
  console.log(
    `the fastest package takes ${(Math.min(...theirs) / (ours ?? Number.NaN)).toFixed(1)} times as long as UNITCONVERT (goal 10)`,
  );
}
