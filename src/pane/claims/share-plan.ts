import { findRow, rowsOfBath } from "../../advice/bath-facts.ts";
import type { Finding } from "../../advice/finding.ts";
import { missingShares, visitsIn } from "../../advice/share-rows.ts";
import type { LogEdit } from "../../excel/record/log-edit.ts";
import type { LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import { isSameText } from "../../joblog/model/same-text.ts";
import { shareBases } from "../../joblog/model/words.ts";

/** What sharing a bath out would change in the log, and what the person should know before. */
export interface SharePlan {
  /** Absent where the log shares this bath out this way already. */
  readonly changes?: LogEdit;
  readonly findings: readonly Finding[];
}

type Basis = (typeof shareBases)[number];

/** By what the log shares a bath out: the bath's own basis, or else the shop's. */
export function basisOf(log: LogSnapshot, bath: string): Basis | undefined {
  const said = findRow(log, "baths", "bath", bath)?.cells.shareBasis ?? log.fields.shareBasis;
  return shareBases.find((basis) => basis === said);
}

/** The claims that had loads in a bath, in the order in which they came in. */
export function claimsInBath(log: LogSnapshot, bath: string): readonly string[] {
  return visitsIn(rowsOfBath(log, "loads", bath)).map(({ claim }) => claim);
}

/**
 * Gives the bath its basis and lists every claim that was in it. Units that were typed by the basis before
 * would count for the wrong ones, so they are emptied.
 */
export function sharePlan(log: LogSnapshot, bath: string, basis: Basis): SharePlan {
  const row = findRow(log, "baths", "bath", bath);
  const missing = missingShares(log).filter((one) => isSameText(String(one.row.bath), bath));
  const another = row !== undefined && basisOf(log, bath) !== basis;
  const typed = another
    ? log.rows.shares.filter(({ cells }) => isSameText(String(cells.bath ?? ""), bath) && cells.units !== undefined)
    : [];
  const spoken = typed.map(({ cells }) => `${String(cells.claim ?? "")}: ${String(cells.units)}`).join(", ");
  const findings: readonly Finding[] = [
    ...(claimsInBath(log, bath).length === 0
      ? [
          {
            tone: "watch",
            text: "No load of this bath is in the log. Record its loads, or type each claim and its units on the sheet Costs.",
          } as const,
        ]
      : []),
    ...(missing.length === 0
      ? []
      : [
          {
            tone: "watch",
            text: `Not among the shares yet: ${missing.map((one) => String(one.row.claim)).join(", ")}.`,
          } as const,
        ]),
    ...(typed.length === 0
      ? []
      : [
          {
            tone: "watch",
            text: `Typed units will be emptied (${spoken}): they were counted by ${basisOf(log, bath) ?? "no basis"}.`,
          } as const,
        ]),
  ];
  if (!another && missing.length === 0) return { findings };
  return {
    findings,
    changes: {
      changes: [
        ...(another
          ? [
              {
                table: "baths" as const,
                position: row.position,
                cells: {
                  bath: { before: row.cells.bath, after: row.cells.bath },
                  shareBasis: { before: row.cells.shareBasis, after: basis },
                },
              },
            ]
          : []),
        ...typed.map(({ position, cells }) => ({
          table: "shares" as const,
          position,
          cells: {
            bath: { before: cells.bath, after: cells.bath },
            claim: { before: cells.claim, after: cells.claim },
            units: { before: cells.units, after: undefined },
          },
        })),
      ],
      rows: missing,
    },
  };
}
