import { findRow, rowFacts } from "../../advice/bath-facts.ts";
import type { Finding } from "../../advice/finding.ts";
import { money } from "../../advice/wording/figures.ts";
import type { LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import { isSameText } from "../../joblog/model/same-text.ts";
import { costStanding } from "../../joblog/model/words.ts";
import { claimsInBath } from "./share-plan.ts";

interface ClaimShare {
  readonly claim: string;
  readonly units: number | undefined;
  readonly part: number | undefined;
  readonly share: number | undefined;
}

/** Who bears what of a bath, as the log's sheets have it. */
export interface ShareResult {
  readonly bath: string;
  readonly basis: string | undefined;
  readonly shares: readonly ClaimShare[];
  /** Each sum of the bath by its name. */
  readonly sums: readonly (readonly [name: string, amount: number | undefined])[];
  readonly findings: readonly Finding[];
}

/** Why the bath's figures are provisional, in the words of its row on Baths. */
function standingFinding(state: string | undefined): Finding {
  if (state === costStanding.placed)
    return { tone: "good", text: "Every cost of this bath is charged to someone, to the cent." };
  if (state === undefined)
    return { tone: "plain", text: "This bath has no cost and no load yet, so nothing is shared out." };
  return state.startsWith(costStanding.provisional)
    ? {
        tone: "act",
        text: `${state.charAt(0).toUpperCase()}${state.slice(1)}. Complete it, and the shares follow.`,
      }
    : { tone: "act", text: `The log has not worked out the cost of this bath: ${state}. Look at the sheet Baths.` };
}

/** What is open in the whole log, of whichever bath. */
function logFindings({ fields }: LogSnapshot): readonly Finding[] {
  const { costNotPlaced, costOpen, loadAstray } = fields;
  return [
    ...(typeof costNotPlaced === "number" && costNotPlaced !== 0
      ? [
          {
            tone: "act",
            text: `${money(costNotPlaced)} of the log's costs is not charged to anyone yet${costOpen === undefined ? "" : `; the first row to complete is ${String(costOpen)}`}.`,
          } as const,
        ]
      : []),
    ...(loadAstray === undefined
      ? []
      : [
          {
            tone: "act",
            text: `Load ${String(loadAstray)}. It could be of any bath, so every claim's figure is provisional.`,
          } as const,
        ]),
  ];
}

/** What the Costs sheet shows of a bath, and of the whole log what is open. */
export function shareResult(log: LogSnapshot, bath: string): ShareResult | undefined {
  const row = findRow(log, "baths", "bath", bath);
  if (row === undefined) return undefined;
  const facts = rowFacts(row);
  const rows = log.rows.shares.filter(({ cells }) => isSameText(String(cells.bath ?? ""), bath)).map(rowFacts);
  const isLogged = claimsInBath(log, bath).length > 0;
  const checks = rows.flatMap((one): readonly Finding[] => {
    const said = one.text("check");
    const differs = said?.startsWith("the loads say") === true;
    // A bath whose loads were not logged is shared by typed units alone.
    return said === undefined || (differs && !isLogged)
      ? []
      : [
          {
            tone: differs ? "watch" : "act",
            text: `${one.text("claim") ?? "A row without a claim"}, on the sheet Costs: ${said}.`,
          },
        ];
  });
  const pool = facts.number("pool");
  const credit: readonly Finding[] =
    (pool ?? 0) < 0
      ? [
          {
            tone: "watch",
            text: `The costs to share come to ${money(pool ?? 0)}, less than nothing: a credit, or a slip in an amount. Look at the sheets Costs and Additions.`,
          },
        ]
      : [];
  return {
    bath,
    basis: facts.text("basisUsed"),
    shares: rows
      .filter((one) => one.number("unitsUsed") !== 0)
      .map((one) => ({
        claim: one.text("claim") ?? "",
        units: one.number("unitsUsed"),
        part: one.number("weight"),
        share: one.number("share"),
      })),
    sums: [
      ["Shared out", facts.number("costShared")],
      ["To share out", pool],
      ["Of one claim alone", facts.number("costDirect")],
      ["Paid by the shop", facts.number("costShop")],
      ["Not placed", facts.number("costOpen")],
    ],
    findings: [standingFinding(facts.text("costState")), ...credit, ...checks, ...logFindings(log)],
  };
}
