import type { FieldId } from "../../joblog/formula/log-names.ts";
import { jobLog } from "../../joblog/job-log.ts";
import type { FieldDefinition, InputColumn } from "../../joblog/model/definition.ts";
import { findField } from "../../joblog/model/references.ts";

/** The shop's own limits, in the groups in which a person looks for them. */
export const limitGroups = [
  { legend: "Top-ups", ids: ["usualDrop", "tolerance", "temperatureGap", "houseShare", "topUpGrowth", "topUpLimit"] },
  { legend: "Readings and bath life", ids: ["readingHours", "bathLife"] },
  { legend: "Meter", ids: ["meterCheckDays", "meterLimit", "slopeLow", "slopeHigh"] },
  { legend: "Shares of a bath's cost", ids: ["shareBasis", "weightLight", "weightMedium", "weightHeavy"] },
  { legend: "Items", ids: ["economicShare"] },
  { legend: "Discharge", ids: ["sewerLow", "sewerHigh", "permit"] },
] as const satisfies readonly { readonly legend: string; readonly ids: readonly FieldId[] }[];

export type LimitId = (typeof limitGroups)[number]["ids"][number];

export const limitIds: readonly LimitId[] = limitGroups.flatMap(({ ids }): readonly LimitId[] => ids);

export const limitOf = (id: string): FieldDefinition => findField(jobLog, id);

/** A named cell as a column that a form can show. */
export function limitColumn(id: string): InputColumn {
  const { label, type, unit, limits, choices, help } = limitOf(id);
  return {
    id,
    role: "input",
    required: false,
    label,
    type,
    width: 10,
    help,
    ...(unit === undefined ? {} : { unit }),
    ...(limits === undefined ? {} : { limits }),
    ...(choices === undefined ? {} : { choices }),
  };
}
