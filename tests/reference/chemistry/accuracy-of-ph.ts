import { composition } from "../../../src/core/chemistry/composition.ts";
import { bicarbonate, boricAcid, dihydrogenPhosphate } from "../../../src/core/chemistry/constants/acid-constants.ts";
import { logKAt } from "../../../src/core/chemistry/constants/equilibrium-constant.ts";
import { waterIonization } from "../../../src/core/chemistry/constants/water-ionization.ts";
import { phOf } from "../../../src/core/chemistry/ph-of.ts";
import { solve } from "../../../src/core/chemistry/solve.ts";
import { kelvin } from "../../../src/core/units/quantity.ts";
import type { AccuracyRow } from "./accuracy-row.ts";
import { accuracyOf, program } from "./accuracy-row.ts";
import { potassiumHydroxidePH } from "./pitzer-hydroxide.ts";
import type { TableRow } from "./read-table.ts";
import { readTable } from "./read-table.ts";

export const temperatureOf = (row: TableRow, column = "celsius") => kelvin(row.number(column) + 273.15);
const pHOff = (row: TableRow): number => phOf(row.totals(), temperatureOf(row)) - row.number("pH");

/** Above this ionic strength the goal is wider. */
const strong = 0.3; // mol/kg

/** The weakest, a strong and the strongest solution that a concentrate of it may make, mol/kg. */
const hydroxideMolalities = [0.1, 0.35, 0.5];

/** How far the pH of potassium hydroxide is off at 25 °C; negative where ours is the lower. */
export interface PotassiumHydroxideError {
  readonly molality: number;
  readonly error: number;
}

/** Ours takes potassium for sodium, since a free metal ion's activity cancels in the pH. */
export function potassiumHydroxideErrors(): readonly PotassiumHydroxideError[] {
  const at25 = kelvin(298.15);
  return hydroxideMolalities.map((molality) => ({
    molality,
    error: phOf(composition({ potassium: molality }), at25) - potassiumHydroxidePH(molality, waterIonization(at25)),
  }));
}

function potassiumHydroxide(): AccuracyRow {
  return accuracyOf(
    {
      subject: "potassium hydroxide 0.1 to 0.5 mol/kg, 25 °C",
      against: "Pitzer's equation, fitted to measured activities",
      judge: "measurement",
      unit: "pH",
      goalLargest: 0.1,
    },
    potassiumHydroxideErrors().map(({ error }) => error),
  );
}

const measuredAcids = [
  ["phosphoric 2 Bates Acree", dihydrogenPhosphate],
  ["boric Manov", boricAcid],
  ["carbonic 2 Goldberg", bicarbonate],
] as const;

/** The measurements end at 60 °C; above it the table carries their functions on. */
function measuredConstants(): AccuracyRow {
  const rows = readTable("measured-acid-pK").filter((row) => row.number("celsius") <= 60);
  return accuracyOf(
    {
      subject: "acid constants of phosphate, borate and carbonate, 0 to 60 °C",
      against: "measured: Bates & Acree 1943, Manov 1944, Goldberg 2002",
      judge: "measurement",
      unit: "log10",
      goalLargest: 0.04,
    },
    measuredAcids.flatMap(([column, constant]) =>
      rows.map((row) => logKAt(constant, temperatureOf(row)) - row.number(column)),
    ),
  );
}

function pureSolutions(): readonly AccuracyRow[] {
  const rows = readTable("pure-solutions");
  const isStrong = (row: TableRow): boolean => row.number("ionicStrength") > strong;
  const hydroxide = rows.filter((row) => row.text("solution") === "NaOH" && row.number("molality") >= 0.1);
  return [
    accuracyOf(
      {
        subject: "pure solutions to ionic strength 0.3",
        ...program,
        unit: "pH",
        goalLargest: 0.03,
        goalRootMeanSquare: 0.015,
      },
      rows.filter((row) => !isStrong(row)).map(pHOff),
    ),
    accuracyOf(
      { subject: "pure solutions above ionic strength 0.3", ...program, unit: "pH", goalLargest: 0.05 },
      rows.filter(isStrong).map(pHOff),
    ),
    accuracyOf(
      {
        subject: "sodium hydroxide 0.1 to 0.5 mol/kg",
        against: "PHREEQC 3.8.8, pitzer.dat: fitted to measured activities",
        judge: "measurement",
        unit: "pH",
        goalLargest: 0.05,
      },
      hydroxide.map((row) => phOf(row.totals(), temperatureOf(row)) - row.number("pitzerPH")),
    ),
    potassiumHydroxide(),
  ];
}

function table(name: string, subject: string): AccuracyRow {
  const question = { subject, ...program, unit: "pH", goalLargest: 0.03, goalRootMeanSquare: 0.015 } as const;
  return accuracyOf(question, readTable(name).map(pHOff));
}

function hardWater(): readonly AccuracyRow[] {
  const rows = readTable("wash-baths").filter((row) => row.has("pHWithSolids"));
  return [
    accuracyOf(
      { subject: "hard water with calcite and brucite", ...program, unit: "pH", goalLargest: 0.1 },
      rows.map((row) => phOf(row.totals(), temperatureOf(row), "calcite and brucite") - row.number("pHWithSolids")),
    ),
  ];
}

function bathFigures(): readonly AccuracyRow[] {
  const rows = readTable("wash-baths");
  const answers = rows.map((row) => ({ row, answer: solve(row.totals(), temperatureOf(row)) }));
  const off = (of: (one: (typeof answers)[number]) => number): readonly number[] => answers.map(of);
  const relative = (value: number, expected: number): number => value / expected - 1;
  return [
    accuracyOf(
      { subject: "alkalinity to pH 8.3", ...program, unit: "relative", goalLargest: 0.01 },
      off(({ row, answer }) => relative(answer.alkalinities.phenolphthalein * 1000, row.number("alkalinityTo8.3"))),
    ),
    accuracyOf(
      { subject: "alkalinity to pH 4.5", ...program, unit: "relative", goalLargest: 0.01 },
      off(({ row, answer }) => relative(answer.alkalinities.total * 1000, row.number("alkalinityTo4.5"))),
    ),
    accuracyOf(
      { subject: "ionic strength", ...program, unit: "relative", goalLargest: 0.02 },
      off(({ row, answer }) => relative(answer.ionicStrength, row.number("ionicStrength"))),
    ),
    accuracyOf(
      { subject: "buffer intensity", ...program, unit: "relative", goalLargest: 0.03 },
      off(({ row, answer }) => relative(answer.bufferIntensity, row.number("bufferIntensity"))),
    ),
    accuracyOf(
      { subject: "saturation index of calcite", ...program, unit: "log10", goalLargest: 0.1 },
      off(({ row, answer }) => (answer.calcite.saturationIndex ?? Number.NaN) - row.number("calciteIndex")),
    ),
    accuracyOf(
      { subject: "saturation index of brucite", ...program, unit: "log10", goalLargest: 0.1 },
      off(({ row, answer }) => (answer.brucite.saturationIndex ?? Number.NaN) - row.number("bruciteIndex")),
    ),
  ];
}

function standards(): AccuracyRow {
  const rows = readTable("buffer-standards").filter((row) => row.number("celsius") <= 60);
  const question = {
    subject: "primary buffer standards, 0 to 60 °C",
    against: "measured standards of NIST and IUPAC",
    judge: "measurement",
    unit: "pH",
    goalLargest: 0.03,
  } as const;
  return accuracyOf(question, rows.map(pHOff));
}

/** pH and what follows from one solution. */
export function accuracyOfPH(): readonly AccuracyRow[] {
  return [
    standards(),
    measuredConstants(),
    ...pureSolutions(),
    table("wash-baths", "wash baths, nothing precipitating"),
    table("titrations", "titrations with acid and carbon dioxide"),
    table("heated-baths", "heated baths"),
    ...hardWater(),
    ...bathFigures(),
  ];
}
