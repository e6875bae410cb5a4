import { rowsOfBath } from "../../advice/bath-facts.ts";
import type { Finding } from "../../advice/finding.ts";
import type { LogEdit } from "../../excel/record/log-edit.ts";
import type { LogSnapshot, SnapshotRow } from "../../joblog/model/log-snapshot.ts";
import { folded } from "../../joblog/model/same-text.ts";

/** What sharing a bath out would change in the log, and what the person should know before. */
export interface SharePlan {
  /** Absent where the log shares this bath out this way already. */
  readonly changes?: LogEdit;
  readonly findings: readonly Finding[];
}

const claimOf = ({ cells }: SnapshotRow<"loads">): string => String(cells.claim ?? "");

/** The claims that had loads in a bath, in the order in which they came in. */
export function claimsInBath(log: LogSnapshot, bath: string): readonly string[] {
  const claims = rowsOfBath(log, "loads", bath).map(claimOf);
  return claims.filter(
    (claim, index) => claim !== "" && claims.findIndex((one) => folded(one) === folded(claim)) === index,
  );
}

/**
 * Sets the bath and the basis and lists every claim that was in the bath. Units that were typed for the
 * bath and basis before would count for the wrong ones, so they are emptied.
 */
export function sharePlan(log: LogSnapshot, bath: string, basis: string): SharePlan {
  const { shareBath, shareBasis } = log.fields;
  const listed = new Set(log.rows.shares.map((row) => folded(claimOf(row))));
  const missing = claimsInBath(log, bath).filter((claim) => !listed.has(folded(claim)));
  const another = bath !== shareBath || basis !== shareBasis;
  const typed = another ? log.rows.shares.filter(({ cells }) => cells.units !== undefined) : [];
  const spoken = typed.map((row) => `${claimOf(row)}: ${String(row.cells.units)}`).join(", ");
  const findings: readonly Finding[] = [
    ...(claimsInBath(log, bath).length === 0
      ? [
          {
            tone: "watch",
            text: "No load of this bath is in the log. Record its loads, or type each claim's units on the sheet Costs.",
          } as const,
        ]
      : []),
    ...(missing.length === 0 ? [] : [{ tone: "plain", text: `Shared among: ${missing.join(", ")}.` } as const]),
    ...(typed.length === 0
      ? []
      : [
          {
            tone: "watch",
            text: `Units typed for ${String(shareBath ?? "another bath")} by ${String(shareBasis ?? "no basis")} will be emptied (${spoken}): they do not count for this choice.`,
          } as const,
        ]),
  ];
  if (!another && missing.length === 0) return { findings };
  return {
    findings,
    changes: {
      fields: { shareBath: { before: shareBath, after: bath }, shareBasis: { before: shareBasis, after: basis } },
      changes: typed.map(({ position, cells }) => ({
        table: "shares",
        position,
        cells: { units: { before: cells.units, after: undefined } },
      })),
      rows: missing.map((claim) => ({ table: "shares", row: { claim } })),
    },
  };
}
