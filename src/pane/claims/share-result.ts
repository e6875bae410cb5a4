import { rowFacts, rowsOfBath } from "../../advice/bath-facts.ts";
import type { Finding } from "../../advice/finding.ts";
import { figure, money } from "../../advice/wording/figures.ts";
import type { ColumnId, FieldId } from "../../joblog/formula/log-names.ts";
import type { LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import { folded } from "../../joblog/model/same-text.ts";
import { shareBases } from "../../joblog/model/words.ts";
import { claimsInBath } from "./share-plan.ts";

interface ClaimShare {
  readonly claim: string;
  readonly units: number;
  readonly part: number | undefined;
  readonly share: number | undefined;
}

/** Who bears what of the bath that the log shares out, as its Costs sheet has it. */
export interface ShareResult {
  readonly bath: string;
  readonly basis: string;
  readonly shares: readonly ClaimShare[];
  readonly pool: number | undefined;
  readonly total: number | undefined;
  readonly difference: number | undefined;
  readonly shop: number | undefined;
  readonly findings: readonly Finding[];
}

/** The column of a load that counts by each basis. */
const countedBy: Readonly<Record<(typeof shareBases)[number], ColumnId<"loads">>> = {
  baskets: "counted",
  "soil-weighted baskets": "weighted",
  "basket-minutes": "basketMinutes",
};

function leftOut(log: LogSnapshot, bath: string, basis: string): readonly string[] {
  const listed = new Set(log.rows.shares.map(({ cells }) => folded(String(cells.claim ?? ""))));
  const known = shareBases.find((one) => one === basis);
  const column = known === undefined ? undefined : countedBy[known];
  return rowsOfBath(log, "loads", bath)
    .filter(
      ({ cells }) =>
        !listed.has(folded(String(cells.claim ?? ""))) || (column !== undefined && typeof cells[column] !== "number"),
    )
    .map(({ cells }) => String(cells.id ?? "a line without a number"));
}

function leftOutFinding(log: LogSnapshot, bath: string, basis: string): readonly Finding[] {
  const count = log.fields.loadsLeftOut;
  if (typeof count !== "number" || count === 0) return [];
  if (count < 0)
    return [
      { tone: "act", text: "A claim is listed twice among the shares. Delete one of its lines on the sheet Costs." },
    ];
  const lines = leftOut(log, bath, basis);
  return [
    {
      tone: "act",
      text: `${count === 1 ? "One load" : `${String(count)} loads`} of this bath ${count === 1 ? "is" : "are"} in no share${lines.length === 0 ? "" : ` (${lines.join(", ")})`}. Complete claim, soil and minutes on the sheet Loads, then share out again.`,
    },
  ];
}

/** A share that shows an error, or none, bears nothing, whatever the sums beside it say. */
function unworkedFinding({ rows, fields }: LogSnapshot, shares: readonly ClaimShare[]): readonly Finding[] {
  const pool = fields.poolTotal;
  const below = rows.shares.map(rowFacts).filter((row) => (row.number("units") ?? 0) < 0);
  const open = shares.filter(({ share }) => share === undefined).map(({ claim }) => claim);
  const why =
    below.length > 0
      ? `Units under 0 are typed for ${below.map((row) => row.text("claim") ?? "").join(", ")}: correct them on the sheet Costs.`
      : "Look at the sheet Costs.";
  const borne = typeof pool === "number" ? `${money(pool)} of this bath is` : "The cost of this bath is";
  const credit: readonly Finding[] =
    typeof pool === "number" && pool < 0
      ? [
          {
            tone: "watch",
            text: `The costs of this bath come to ${money(pool)}, less than nothing: a credit, or a slip in an amount. Look at the sheets Costs and Additions.`,
          },
        ]
      : [];
  return open.length === 0
    ? credit
    : [
        ...credit,
        { tone: "act", text: `${borne} not shared out: no share is worked out for ${open.join(", ")}. ${why}` },
      ];
}

function findingsOf(log: LogSnapshot, bath: string, basis: string, shares: readonly ClaimShare[]): readonly Finding[] {
  const { notAllocated, sharesCheck } = log.fields;
  const open: readonly Finding[] = [
    ...(shares.length === 0
      ? [{ tone: "act", text: "No claim has units of this bath yet, so nothing is shared out." } as const]
      : []),
    ...(typeof sharesCheck === "number" && sharesCheck !== 0
      ? [
          {
            tone: "act",
            text: `${money(sharesCheck)} is left over: a share is not worked out. Look at the sheet Costs.`,
          } as const,
        ]
      : []),
    ...unworkedFinding(log, shares),
    ...leftOutFinding(log, bath, basis),
    ...(typeof notAllocated === "string"
      ? [
          {
            tone: "act",
            text: `On the sheets Costs and Additions, ${notAllocated}. Type every amount as a number and choose every bath from the list.`,
          } as const,
        ]
      : []),
    ...(typeof notAllocated === "number" && notAllocated !== 0
      ? [
          {
            tone: "act",
            text: `${money(notAllocated)} is not charged to anyone yet. Give every cost line a bath and an account, and every addition an account (sheets Costs and Additions).`,
          } as const,
        ]
      : []),
    ...log.rows.shares.map(rowFacts).flatMap((row): readonly Finding[] => {
      const check = row.text("unitsCheck");
      // A bath whose loads were not logged is shared by typed units alone.
      return check?.startsWith("the loads") === true && claimsInBath(log, bath).length > 0
        ? [
            {
              tone: "watch",
              text: `${row.text("claim") ?? ""}: ${figure(row.number("units") ?? 0, 2)} units typed, ${check}. Empty the typed cell on the sheet Costs, or correct the loads.`,
            },
          ]
        : [];
    }),
  ];
  return open.length > 0
    ? open
    : [{ tone: "good", text: "Every cost of this bath is charged to someone, to the cent." }];
}

/** Undefined as long as no bath and basis are chosen in the log. */
export function shareResult(log: LogSnapshot): ShareResult | undefined {
  const { shareBath, shareBasis } = log.fields;
  if (shareBath === undefined || shareBasis === undefined) return undefined;
  const [bath, basis] = [String(shareBath), String(shareBasis)];
  const shares = log.rows.shares.map(rowFacts).flatMap((row): readonly ClaimShare[] => {
    const units = row.number("unitsUsed");
    return units === undefined || (units === 0 && (row.number("loads") ?? 0) === 0)
      ? []
      : [{ claim: row.text("claim") ?? "", units, part: row.number("weight"), share: row.number("share") }];
  });
  const amount = (field: FieldId): number | undefined => {
    const value = log.fields[field];
    return typeof value === "number" ? value : undefined;
  };
  return {
    bath,
    basis,
    shares,
    pool: amount("poolTotal"),
    total: amount("sharesTotal"),
    difference: amount("sharesCheck"),
    shop: amount("shopTotal"),
    findings: findingsOf(log, bath, basis, shares),
  };
}
