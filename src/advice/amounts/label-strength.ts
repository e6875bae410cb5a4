import { dose } from "../../../functions/charge/dose.ts";
import type { ColumnId } from "../../joblog/formula/log-names.ts";
import type { RowValue } from "../../joblog/model/definition.ts";
import type { LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import { soilGrades } from "../../joblog/model/words.ts";
import { askNumber } from "../ask.ts";
import { findRow } from "../bath-facts.ts";
import type { Finding } from "../finding.ts";
import type { LogContext } from "../log-context.ts";
import { figure } from "../wording/figures.ts";

const labelColumn: Readonly<Record<(typeof soilGrades)[number], ColumnId<"concentrates">>> = {
  light: "labelLight",
  medium: "labelMedium",
  heavy: "labelHeavy",
};

/** What a cell says of a strength: a number is a share of the bath, and the time that Excel makes of 1:40 is no strength at all. */
function strengthText(value: RowValue | undefined): string {
  if (typeof value !== "number") return value === undefined ? "" : String(value);
  return askNumber(dose, { volume: 1, rate: value }).known ? `${figure(100 * value, 4)}%` : "";
}

/** What the label says for the soil of the job. */
export function labelStrength(soil: string | undefined, concentrate: string, { log }: LogContext): string {
  const grade = soilGrades.find((one) => one === soil);
  if (grade === undefined) return "";
  const { cells = {} } = findRow(log, "concentrates", "concentrate", concentrate) ?? {};
  return strengthText(cells[labelColumn[grade]]);
}

/** Every strength that a label in the log names. */
export function labelStrengths(log: LogSnapshot): readonly string[] {
  const cells = Object.values(labelColumn).flatMap((column) =>
    log.rows.concentrates.map(({ cells: held }) => strengthText(held[column])),
  );
  return [...new Set(cells)].filter((text) => text !== "");
}

/** Shares of one strength, written in two ways, agree to this. */
const rounding = 0.005;

/** Said where the strength chosen is not what the label names for the soil of the job. */
export function soilFindings(
  soil: string | undefined,
  concentrate: string | undefined,
  strength: string | undefined,
  context: LogContext,
): readonly Finding[] {
  const named = concentrate === undefined ? "" : labelStrength(soil, concentrate, context);
  if (named === "" || strength === undefined || soil === undefined) return [];
  const { system } = context;
  const [wanted, label] = [strength, named].map((rate) => askNumber(dose, { volume: 1, rate, system }));
  if (wanted?.known !== true || label?.known !== true) return [];
  const ratio = wanted.value / label.value;
  if (Math.abs(ratio - 1) <= rounding) return [];
  return [
    {
      tone: "watch",
      text: `For ${soil} soil the label names ${named}; ${strength.trim()} is ${figure(ratio > 1 ? ratio : 1 / ratio, 1)} times as ${ratio > 1 ? "strong" : "weak"}.`,
    },
  ];
}
