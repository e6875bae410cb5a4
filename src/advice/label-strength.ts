import { dose } from "../../functions/charge/dose.ts";
import type { ColumnId } from "../joblog/formula/log-names.ts";
import type { RowValue } from "../joblog/model/definition.ts";
import type { LogSnapshot } from "../joblog/model/log-snapshot.ts";
import { soilGrades } from "../joblog/model/words.ts";
import { askNumber } from "./ask.ts";
import { findRow } from "./bath-facts.ts";
import type { LogContext } from "./log-context.ts";
import { figure } from "./wording/figures.ts";

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
