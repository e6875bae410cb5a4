import { findRow, rowFacts } from "../../joblog/bath-facts.ts";
import type { LogSnapshot } from "../../joblog/log-snapshot.ts";
import type { EntryContext } from "./entry-form.ts";
import { textsOf } from "./fields-of.ts";

const labelColumn: Readonly<Record<string, string>> = { light: "labelLight", medium: "labelMedium", heavy: "labelHeavy" };

/** What the label says for the soil of the job. */
export function labelStrength(soil: string | undefined, concentrate: string, { log }: EntryContext): string {
  const row = findRow(log, "concentrates", "concentrate", concentrate);
  return row === undefined ? "" : (rowFacts(row).text(labelColumn[soil ?? ""] ?? "") ?? "");
}

/** Every strength that a label in the log names. */
export function labelStrengths(log: LogSnapshot): readonly string[] {
  return [...new Set(Object.values(labelColumn).flatMap((column) => textsOf(log, "concentrates", column)))];
}
