import type { FilledFields } from "../../../../advice/filled-fields.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import type { ReleaseFacts } from "../../../../advice/release-facts.ts";
import { amount, figure } from "../../../../advice/wording/figures.ts";
import type { ColumnId } from "../../../../joblog/formula/log-names.ts";
import { acidUnitOf } from "./release-findings.ts";

const stages = ["stage1", "stage2", "stage3"] as const;

/** From so many times the need on, a unit or a digit is more likely wrong than the estimate (common practice, no source). */
const manyTimes = 3;

/** Asked where a stage brings the acid to many times what the log worked out. */
export function acidDoubts(
  filled: FilledFields<ColumnId<"releases">>,
  release: ReleaseFacts,
  { system }: LogContext,
): readonly string[] {
  if (stages.every((stage) => filled.number(stage) === undefined)) return [];
  const needed = release.number("acidNeeded");
  const poured = stages.reduce((sum, stage) => sum + (release.number(stage) ?? 0), 0);
  if (needed === undefined || needed === 0 || poured < manyTimes * needed) return [];
  const unit = acidUnitOf(release.text("acid"))?.[system] ?? "";
  return [
    `${amount(poured)} ${unit} of acid is ${figure(poured / needed, 0)} times the ${amount(needed)} ${unit} worked out. Was so much poured?`,
  ];
}
