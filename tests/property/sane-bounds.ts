import type { CellInput, CellMatrix, CellValue, WorksheetFunction } from "../../functions/define-function.ts";

/** The cells of a call by their arguments' names; a blank, a 0 and what is left out are not there. */
export type Named = Readonly<Record<string, CellInput>>;

interface Bound {
  readonly low: number;
  readonly high: number;
}

/** Which cells of an answer a bound holds for, and what it is; cells without one are words or what was given. */
export type BoundOf = (given: Named, row: readonly CellValue[], column: number) => Bound | undefined;

const number = (given: Named, name: string): number | undefined => {
  const cell = given[name];
  return typeof cell === "number" && cell !== 0 ? cell : undefined;
};

const upTo = (high: number): Bound => ({ low: 0, high });
const countable = upTo(Number.MAX_VALUE);
const finite: Bound = { low: -Number.MAX_VALUE, high: Number.MAX_VALUE };
const readable: Bound = upTo(14.5);
const third = 1 / 3;
/** An estimate ends at ten times what was measured. */
const farthest = 10;

/** What a vessel, an opening dose or an earlier dose leaves room for; undefined where a text gives it. */
function roomFor(given: Named): Bound | undefined {
  const added = number(given, "added");
  // A bath is never more concentrate than water.
  const room = (number(given, "volume") ?? Number.MAX_VALUE) / 2;
  if ("added" in given) {
    const opening = number(given, "opening_dose");
    const share = number(given, "house_share") ?? third;
    if ("opening_dose" in given) return opening === undefined ? undefined : upTo(Math.min(room, opening * share));
    return added === undefined ? undefined : upTo(Math.min(room, added));
  }
  const known = number(given, "known_dose");
  if ("known_dose" in given) return known === undefined ? undefined : upTo(Math.min(room, known * farthest));
  const opening = number(given, "opening_dose");
  if ("opening_dose" in given) return opening === undefined ? undefined : upTo(Math.min(room, opening));
  const most = number(given, "volume");
  if ("volume" in given) return most === undefined ? undefined : upTo(most);
  // Geometry, and the water that a softener treats: nothing is poured by it.
  return "length" in given || "diameter" in given || "capacity_grains" in given ? countable : undefined;
}

/** In the table of doses the volume leads the row; in the table of top-ups the reading does. */
const volumes: BoundOf = (given, row, column) => {
  if (!("volumes" in given)) return roomFor(given);
  const [tank] = row;
  return typeof tank === "number" ? upTo(column === 0 ? Number.MAX_VALUE : tank) : undefined;
};

/** By definition: pound 0.45359237 kg, US gallon 3.785411784 L, imperial gallon 4.54609 L. */
const litersToGallonByPound = 3.785411784 / 0.45359237;
const massOfLiter: Readonly<Record<string, number>> = { US: litersToGallonByPound, metric: 1, imperial: 4.54609 };
/** Sodium bisulfate is the heaviest: 120.06 g to the equivalent, and a bath holds half an equivalent to the liter. */
const mostDryAcid = 0.5 * 0.12007;

/** Acid is weighed out to a bath that holds half an equivalent to the liter, or fills no more than half as much again. */
const acid: BoundOf = (given) => {
  const volume = number(given, "volume");
  if (volume === undefined) return undefined;
  const purity = number(given, "purity") ?? 100;
  const isDry = given["acid"] === "citric" || given["acid"] === "sodium bisulfate";
  const massOf = massOfLiter[String(given["system"] ?? "US")] ?? Number.NaN;
  return upTo(volume * (isDry ? (mostDryAcid * massOf * 100) / purity : 0.5));
};

/** By the unit that the catalogue gives a result; a unit that is not here has no bound yet, and the test says so. */
const boundsByUnit: Readonly<Record<string, BoundOf>> = {
  "US gal (US), L (metric), imperial gal (imperial)": volumes,
  "dry acids (citric, sodium bisulfate): lb (US), kg; liquid acids: US gal (US), L (metric), imperial gal (imperial)":
    acid,
  pH: () => readable,
  "pH, then US gal (US), L (metric), imperial gal (imperial)": (given, _row, column) =>
    column === 0 ? readable : roomFor(given),
  "temperature in the unit of the system, then pH": (_given, _row, column) => (column === 0 ? finite : readable),
  "index, in units of pH": () => ({ low: -14.5, high: 14.5 }),
  "pH per unit of the times: per day for dates, per hour for hours": () => finite,
  "share of the finished bath": () => upTo(1),
  "share of the blend": () => upTo(1),
  "share, 0 to 1": () => upTo(1),
  "mg/L as CaCO3": () => countable,
  "unit of the values": () => countable,
  "unit of the feed; the third is a ratio of volumes": () => countable,
  "unit of the additions": (given) => {
    const opening = number(given, "opening_dose");
    if ("opening_dose" in given) return opening === undefined ? undefined : upTo(opening);
    const additions = given["additions"];
    const amounts = Array.isArray(additions) ? additions.flat() : [additions ?? null];
    return upTo(
      farthest * amounts.reduce<number>((most, cell) => (typeof cell === "number" ? Math.max(most, cell) : most), 0),
    );
  },
  "unit of the opening dose": roomFor,
  "unit of the level loss": (given, _row, column) => {
    const loss = number(given, "level_loss");
    // A little more may have been carried out than the level fell.
    return loss === undefined ? undefined : upTo(column === 1 ? 1.5 * loss : loss);
  },
  "unit of the amount": (given, _row, column) =>
    column === 0 ? upTo(number(given, "amount") ?? Number.NaN) : undefined,
  "as asked": () => countable,
  "as each label says, per kg of water": () => finite,
  "the unit in “to”": () => finite,
  // An electrode's slope: the shop's own limits judge it, and nothing is poured by it.
  "%": () => finite,
  "unit of the times: days for dates, hours for hours": () => countable,
  "unit of the daily use": () => countable,
  "days with an issue": () => countable,
  kWh: () => countable,
  h: () => countable,
  "per US gal (US), per L (metric), per imperial gal (imperial)": () => countable,
  "currency of the total": () => finite,
};

/** Words and truth values have no unit and no bound. */
export function boundOf(fn: WorksheetFunction): BoundOf {
  const { unit } = fn.result;
  if (unit === undefined) return () => undefined;
  const bound = boundsByUnit[unit];
  if (bound === undefined) throw new RangeError(`Nothing bounds what ${fn.id} gives in ${unit}`);
  return bound;
}

const isBlankOrZero = (cell: CellInput): boolean => cell === null || cell === undefined || cell === "" || cell === 0;

export function namedCells(fn: WorksheetFunction, cells: readonly CellInput[]): Named {
  return Object.fromEntries(
    fn.arguments.flatMap(({ name }, index) => (isBlankOrZero(cells[index]) ? [] : [[name, cells[index]]])),
  );
}

export const rowsOf = (answer: CellValue | CellMatrix): CellMatrix => (Array.isArray(answer) ? answer : [[answer]]);
