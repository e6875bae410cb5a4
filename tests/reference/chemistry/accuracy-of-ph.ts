import { phOf } from "../../../src/core/chemistry/ph-of.ts";
import { solve } from "../../../src/core/chemistry/solve.ts";
import { kelvin } from "../../../src/core/units/quantity.ts";
import type { AccuracyRow } from "./accuracy-row.ts";
import { accuracyOf } from "./accuracy-row.ts";
import type { TableRow } from "./read-table.ts";
import { readTable } from "./read-table.ts";

const program = "PHREEQC 3.8.8, phreeqc.dat with heat capacities";

export const temperatureOf = (row: TableRow, column = "celsius") => kelvin(row.number(column) + 273.15);
const pHOff = (row: TableRow): number => phOf(row.totals(), temperatureOf(row)) - row.number("pH");

/** Above this ionic strength the goal is wider. */
const strong = 0.3; // mol/kg

function pureSolutions(): readonly AccuracyRow[] {
  const rows = readTable("pure-solutions");
  const isStrong = (row: TableRow): boolean => row.number("ionicStrength") > strong;
  const hydroxide = rows.filter((row) => row.text("solution") === "NaOH" && row.number("molality") >= 0.1);
  return [
    accuracyOf(
      {
        subject: "pure solutions to ionic strength 0.3",
        against: program,
        unit: "pH",
        goalLargest: 0.03,
        goalRootMeanSquare: 0.015,
      },
      rows.filter((row) => !isStrong(row)).map(pHOff),
    ),
    accuracyOf(
      { subject: "pure solutions above ionic strength 0.3", against: program, unit: "pH", goalLargest: 0.05 },
      rows.filter(isStrong).map(pHOff),
    ),
    accuracyOf(
      {
        subject: "sodium hydroxide 0.1 to 0.5 mol/kg",
        against: "PHREEQC 3.8.8, pitzer.dat",
        unit: "pH",
        goalLargest: 0.05,
      },
      hydroxide.map((row) => phOf(row.totals(), temperatureOf(row)) - row.number("pitzerPH")),
    ),
  ];
}

function table(name: string, subject: string): AccuracyRow {
  const question = { subject, against: program, unit: "pH", goalLargest: 0.03, goalRootMeanSquare: 0.015 } as const;
  return accuracyOf(question, readTable(name).map(pHOff));
}

function hardWater(): readonly AccuracyRow[] {
  const rows = readTable("wash-baths").filter((row) => row.has("pHWithSolids"));
  return [
    accuracyOf(
      { subject: "hard water with calcite and brucite", against: program, unit: "pH", goalLargest: 0.1 },
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
      { subject: "alkalinity to pH 8.3", against: program, unit: "relative", goalLargest: 0.01 },
      off(({ row, answer }) => relative(answer.alkalinities.phenolphthalein * 1000, row.number("alkalinityTo8.3"))),
    ),
    accuracyOf(
      { subject: "alkalinity to pH 4.5", against: program, unit: "relative", goalLargest: 0.01 },
      off(({ row, answer }) => relative(answer.alkalinities.total * 1000, row.number("alkalinityTo4.5"))),
    ),
    accuracyOf(
      { subject: "ionic strength", against: program, unit: "relative", goalLargest: 0.02 },
      off(({ row, answer }) => relative(answer.ionicStrength, row.number("ionicStrength"))),
    ),
    accuracyOf(
      { subject: "buffer intensity", against: program, unit: "relative", goalLargest: 0.03 },
      off(({ row, answer }) => relative(answer.bufferIntensity, row.number("bufferIntensity"))),
    ),
    accuracyOf(
      { subject: "saturation index of calcite", against: program, unit: "log10", goalLargest: 0.1 },
      off(({ row, answer }) => (answer.calcite.saturationIndex ?? Number.NaN) - row.number("calciteIndex")),
    ),
    accuracyOf(
      { subject: "saturation index of brucite", against: program, unit: "log10", goalLargest: 0.1 },
      off(({ row, answer }) => (answer.brucite.saturationIndex ?? Number.NaN) - row.number("bruciteIndex")),
    ),
  ];
}

function standards(): AccuracyRow {
  const rows = readTable("buffer-standards").filter((row) => row.number("celsius") <= 60);
  const question = {
    subject: "primary buffer standards, 0 to 60 °C",
    against: "NIST and IUPAC",
    unit: "pH",
    goalLargest: 0.03,
  } as const;
  return accuracyOf(question, rows.map(pHOff));
}

/** pH and what follows from one solution. */
export function accuracyOfPH(): readonly AccuracyRow[] {
  return [
    standards(),
    ...pureSolutions(),
    table("wash-baths", "wash baths, nothing precipitating"),
    table("titrations", "titrations with acid and carbon dioxide"),
    table("heated-baths", "heated baths"),
    ...hardWater(),
    ...bathFigures(),
  ];
}
