import { depth as depthUnit, leastLevel, volume as volumeUnit } from "../../joblog/model/units-of.ts";
import { findRow, type RowFacts, rowFacts } from "../bath-facts.ts";
import { bathFacts } from "../bath-values.ts";
import type { FieldProblem } from "../filled-fields.ts";
import type { Finding } from "../finding.ts";
import type { LogContext } from "../log-context.ts";
import { amount as amountFigure, figure } from "../wording/figures.ts";

/** The tank that a bath stands in. */
export function tankOf(context: LogContext, bath: string | undefined): RowFacts<"tanks"> | undefined {
  const tank = bathFacts(context.log, bath)?.text("tank");
  const row = tank === undefined ? undefined : findRow(context.log, "tanks", "tank", tank);
  return row === undefined ? undefined : rowFacts(row);
}

/** A tank has room above its fill line, but hardly more than this share of what it holds there (common practice, no source). */
const freeboard = 0.1;

/** What went in or came out: 0 is nothing to record, and no tank gives or takes more than it holds. */
export function amountProblems(
  key: string,
  label: string,
  given: number | undefined,
  atLine: number | undefined,
  { system }: LogContext,
): readonly FieldProblem[] {
  if (given === undefined) return [];
  if (given === 0) return [{ key, message: `${label}: 0 is nothing to record. Allowed: more than 0.` }];
  if (atLine === undefined || given <= atLine * (1 + freeboard)) return [];
  const unit = volumeUnit[system];
  return [
    {
      key,
      message: `${label}: ${amountFigure(given)} ${unit} is more than the tank holds, ${amountFigure(atLine)} ${unit} at its fill line.`,
    },
  ];
}

/** What the tank of a bath holds at its fill line. */
export function heldBy(context: LogContext, bath: string | undefined): number | undefined {
  return tankOf(context, bath)?.number("workingVolume");
}

/** Nobody is asked for it where a level is typed: it is measured once. */
export const whereHeight = "Enter the tank's inside height under More, Shop, Tanks, and the log can check this.";

/** Said where a rim was measured that lies under the fill line. */
export function rimFindings(height: number | undefined, fillDepth: number): readonly Finding[] {
  return height !== undefined && height < fillDepth
    ? [{ tone: "act", text: "The inside height ends below the fill line: measure both from the floor." }]
    : [];
}

/** A tank is deeper than its fill line, but never by so much: under two thirds full it would be another tank (common practice, no source). */
const rim = 1.5;

/** No liquid stands above the rim. */
export function levelProblems(
  key: string,
  label: string,
  level: number | undefined,
  bath: string | undefined,
  context: LogContext,
): readonly FieldProblem[] {
  const tank = tankOf(context, bath);
  const [line, height] = [tank?.number("fillDepth"), tank?.number("height")];
  if (level === undefined || line === undefined || level <= (height ?? line * rim)) return [];
  const unit = depthUnit[context.system];
  const at =
    height === undefined
      ? `its fill line is at ${figure(line, 1)} ${unit}. Check the level and the tank. ${whereHeight}`
      : `its inside height is ${figure(height, 1)} ${unit}. Check the level and the tank.`;
  return [
    {
      key,
      message: `${label}: ${figure(level, 1)} ${unit} is above the tank's rim; ${at}`,
    },
  ];
}

/** A level that stands above the fill line is possible, and likely a slip. */
export function levelDoubts(
  level: number | undefined,
  bath: string | undefined,
  context: LogContext,
): readonly string[] {
  const tank = tankOf(context, bath);
  const line = tank?.number("fillDepth");
  if (level === undefined || line === undefined || level < line + leastLevel[context.system]) return [];
  const unit = depthUnit[context.system];
  return [
    `A level of ${figure(level, 1)} ${unit} is ${figure(level - line, 1)} ${unit} above the fill line. Is that right?${tank?.number("height") === undefined ? ` ${whereHeight}` : ""}`,
  ];
}
