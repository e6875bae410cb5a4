import { joined, minus, plus, rounded, sum } from "../../formula/arithmetic.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { all, equal, isBlank, isFilled, isNoNumber, isOver, unequal } from "../../formula/conditions.ts";
import { countWhere, otherThan, smallestWhere, sumWhere } from "../../formula/criteria.ts";
import type { Expression } from "../../formula/expression.ts";
import type { Log, Row } from "../../formula/log-names.ts";
import { cellAt } from "../../formula/lookups.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn } from "../../model/definition.ts";
import { type additionKinds, type costKinds, costStanding, shareBases } from "../../model/words.ts";

const amount = { type: "money", format: "#,##0.00", width: 11 } as const;

const { computed, helper } = columnsOf<"baths">();

/** What the claims of a bath share, unless all its loads were rework. */
const sharedCost = ({ additions, costLines }: Log, bath: Expression): Expression =>
  rounded(plus(sumWhere(additions, "cost", { bath, account: "claims" }), sumWhere(costLines, "shared", { bath })), 2);

const shopCost = ({ additions, costLines }: Log, bath: Expression): Expression =>
  plus(
    sumWhere(additions, "cost", { bath, account: "shop" }),
    sumWhere(costLines, "amount", { bath, account: "shop" }),
  );

/** First row of the bath, in a table of entries, that keeps its cost from being placed. */
function firstGap(
  id: string,
  label: string,
  help: string,
  firstOf: (log: Log, bath: Expression) => Expression,
): ComputedColumn {
  return helper({ id, label, type: "whole number", format: "0", width: 8, help }, ({ bath }, log) =>
    blankIf([isBlank(bath)], firstOf(log, bath)),
  );
}

/** What the bath cost, who pays it, and what keeps that from being final. */
export const bathCosts: readonly ComputedColumn[] = [
  computed(
    {
      id: "basisUsed",
      label: "Cost shared by",
      type: "text",
      words: shareBases,
      width: 19,
      help: "The bath's own basis, or else the shop's.",
    },
    ({ bath, shareBasis }, { named }) =>
      blankIf([isBlank(bath)], when(isFilled(shareBasis), shareBasis).otherwise(named.shareBasis)),
  ),
  computed(
    {
      id: "costInAll",
      label: "Cost in all",
      ...amount,
      help: "All additions and cost lines of the bath, whoever pays.",
    },
    ({ bath }, { additions, costLines }) =>
      blankIf(
        [isBlank(bath)],
        rounded(plus(sumWhere(additions, "cost", { bath }), sumWhere(costLines, "amount", { bath })), 2),
      ),
  ),
  computed(
    {
      id: "costDirect",
      label: "Of one claim alone",
      ...amount,
      help: "Cost lines that name the claim which pays them; they are not shared.",
    },
    ({ bath }, { costLines }) => blankIf([isBlank(bath)], rounded(sumWhere(costLines, "alone", { bath }), 2)),
  ),
  computed(
    {
      id: "pool",
      label: "To share out",
      ...amount,
      help: "On the account of claims, less what one claim pays alone; nothing where the bath had rework and nothing else.",
    },
    ({ bath, reworkOnly, onClaims }) => blankIf([isBlank(bath)], when(equal(reworkOnly, 1), 0).otherwise(onClaims)),
  ),
  computed(
    { id: "costShared", label: "Shared out", ...amount, help: "Sum of the claims' shares." },
    ({ bath }, { shares }) => blankIf([isBlank(bath)], rounded(sumWhere(shares, "share", { bath }), 2)),
  ),
  computed(
    {
      id: "costShop",
      label: "Paid by the shop",
      ...amount,
      help: "On the shop's account; all of it where the bath had rework and nothing else.",
    },
    ({ bath, reworkOnly, onClaims }, log) =>
      blankIf(
        [isBlank(bath)],
        rounded(plus(shopCost(log, bath), when(equal(reworkOnly, 1), onClaims).otherwise(0)), 2),
      ),
  ),
  computed(
    {
      id: "costOpen",
      label: "Not placed, must be 0.00",
      ...amount,
      help: "Cost minus what claims and shop pay: charged to no one yet.",
    },
    ({ bath, costInAll, costDirect, costShared, costShop }) =>
      blankIf([isBlank(bath)], rounded(minus(costInAll, costDirect, costShared, costShop), 2)),
  ),
  computed(
    {
      id: "costState",
      label: "Standing of its cost",
      type: "text",
      width: 34,
      help: "Placed to the cent, or provisional with the first row that keeps it so.",
    },
    ({ bath, costInAll, costOpen, openBecause }, { loads }) =>
      blankIf(
        [isBlank(bath), all(equal(costInAll, 0), equal(countWhere(loads, { bath }), 0))],
        when(isFilled(openBecause), joined(costStanding.provisional, openBecause))
          .when(unequal(costOpen, 0), joined(costStanding.provisional, "no claim has loads in it"))
          .otherwise(costStanding.placed),
      ),
  ),
];

const kindHelp = "What the claims share up to this kind, in the order of the statement's columns.";

/** Running sums, so that the parts of a share, each the difference of two rounded ones, add up to it to the cent. */
function upTo(id: string, label: string, amountOf: (row: Row<"baths">, log: Log) => Expression): ComputedColumn {
  return helper({ id, label, ...amount, help: kindHelp }, (row, log) =>
    blankIf([isNoNumber(row.pool)], when(equal(row.pool, 0), 0).otherwise(rounded(amountOf(row, log), 2))),
  );
}

const sharedLines = ({ costLines }: Log, { bath }: Row<"baths">, kind: (typeof costKinds)[number]): Expression =>
  sumWhere(costLines, "shared", { bath, kind });

const poured = ({ additions }: Log, { bath }: Row<"baths">, kind: (typeof additionKinds)[number]): Expression =>
  sumWhere(additions, "cost", { bath, kind, account: "claims" });

export const bathCostKinds: readonly ComputedColumn[] = [
  upTo("upToConcentrate", "Up to concentrate", (row, log) => poured(log, row, "concentrate")),
  upTo("upToWater", "Up to water", (row, log) =>
    plus(row.upToConcentrate, poured(log, row, "water"), sharedLines(log, row, "water")),
  ),
  upTo("upToLabor", "Up to labor", (row, log) => plus(row.upToWater, sharedLines(log, row, "labor"))),
  upTo("upToEnergy", "Up to energy", (row, log) => plus(row.upToLabor, sharedLines(log, row, "energy"))),
  upTo("upToSupplies", "Up to supplies", (row, log) => plus(row.upToEnergy, sharedLines(log, row, "supplies"))),
  upTo("upToDisposal", "Up to disposal", (row, log) => plus(row.upToSupplies, sharedLines(log, row, "disposal"))),
];

function postedTo(id: string, label: string, use: "claims" | "shop"): ComputedColumn {
  return helper(
    { id, label, ...amount, help: "Debit less credit in the journal, of this bath and this account." },
    ({ bath }, { journal }) =>
      blankIf(
        [isBlank(bath)],
        rounded(minus(sumWhere(journal, "debit", { bath, use }), sumWhere(journal, "credit", { bath, use })), 2),
      ),
  );
}

/** What the journal has of the bath, against what the log says now. */
export const bathPosted: readonly ComputedColumn[] = [
  computed(
    {
      id: "posted",
      label: "Posted",
      ...amount,
      help: "What the journal charged for the bath, less what was reversed.",
    },
    ({ bath, postedToClaims, postedToShop }, { journal }) =>
      blankIf([isBlank(bath), equal(countWhere(journal, { bath }), 0)], rounded(plus(postedToClaims, postedToShop), 2)),
  ),
  computed(
    {
      id: "postedOff",
      label: "Changed since posted",
      ...amount,
      help: "Cost now, less what was posted. Reverse and post again where it is not 0.00.",
    },
    ({ costInAll, posted }) => blankIf([isNoNumber(posted), equal(posted, 0)], rounded(minus(costInAll, posted), 2)),
  ),
];

export const bathCostHelpers: readonly ComputedColumn[] = [
  helper(
    {
      id: "onClaims",
      label: "On the claims' account",
      ...amount,
      help: "What the claims share, unless all loads were rework.",
    },
    ({ bath }, log) => blankIf([isBlank(bath)], sharedCost(log, bath)),
  ),
  helper(
    {
      id: "openBecause",
      label: "Open because of",
      type: "text",
      width: 14,
      help: "The first row that keeps the bath's cost from being placed; blank for none.",
    },
    ({ loadGap, lineGap, additionGap, shareGap }, { loads, costLines, additions, shares }) =>
      when(isOver(sum(shareGap), 0), joined("share of ", cellAt(shares.gap, shareGap)))
        .when(isOver(sum(loadGap), 0), joined("load ", cellAt(loads.gap, loadGap)))
        .when(isOver(sum(lineGap), 0), joined("cost line ", cellAt(costLines.gap, lineGap)))
        .when(isOver(sum(additionGap), 0), joined("addition ", cellAt(additions.gap, additionGap)))
        .otherwise(""),
  ),
  postedTo("postedToClaims", "Posted to claims", "claims"),
  postedTo("postedToShop", "Posted to the shop", "shop"),
  helper(
    {
      id: "reworkOnly",
      label: "Rework alone",
      type: "whole number",
      format: "0",
      width: 8,
      help: "1 where every load of the bath was rework: the shop pays it.",
    },
    ({ bath }, { loads }) =>
      blankIf(
        [isBlank(bath)],
        when(
          all(isOver(countWhere(loads, { bath }), 0), equal(countWhere(loads, { bath, rework: otherThan("yes") }), 0)),
          1,
        ).otherwise(0),
      ),
  ),
  firstGap("shareGap", "Share open", "Row in Shares that cannot be worked out; 0 for none.", ({ shares }, bath) =>
    smallestWhere(shares, "gapLine", { bath }),
  ),
  firstGap("loadGap", "Load open", "Row in Loads that no share counts; 0 for none.", ({ loads }, bath) =>
    smallestWhere(loads, "gapLine", { bath }),
  ),
  firstGap("lineGap", "Line open", "Row in CostLines that is charged to no one; 0 for none.", ({ costLines }, bath) =>
    smallestWhere(costLines, "gapLine", { bath }),
  ),
  firstGap("additionGap", "Addition open", "Row in Additions without account or price; 0 for none.", (log, bath) =>
    smallestWhere(log.additions, "gapLine", { bath }),
  ),
];
