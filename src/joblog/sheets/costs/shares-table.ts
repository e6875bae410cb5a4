import { dividedBy, joined, largest, minus, plus, rounded, times, wholePart } from "../../formula/arithmetic.ts";
import { blankIf, when } from "../../formula/choices.ts";
import {
  all,
  any,
  equal,
  is,
  isAtMost,
  isBlank,
  isFilled,
  isNoNumber,
  isNumber,
  isOver,
  isUnder,
  startsWith,
  unequal,
} from "../../formula/conditions.ts";
import {
  above,
  below,
  countWhere,
  largestWhere,
  smallestWhere,
  sumWhere,
  upTo,
  type Where,
} from "../../formula/criteria.ts";
import { apply } from "../../formula/expression.ts";
import type { ColumnId, Row } from "../../formula/log-names.ts";
import { cellAtOrBlank, rowAt, thisLine } from "../../formula/lookups.ts";
import { printedFirst } from "../../layout/printed-first.ts";
import { columnsOf, keyInput, numberInput } from "../../model/columns.ts";
import type { ColumnDefinition, ComputedColumn, TableDefinition } from "../../model/definition.ts";
import { between } from "../../model/units-of.ts";
import { type careKinds, costStanding } from "../../model/words.ts";
import { bathRow } from "../baths/bath-row.ts";
import { claimRow } from "../job/claim-row.ts";
import { shareStatement } from "../statement/statement-keys.ts";
import { gapLine } from "./gap-line.ts";

const { computed, helper } = columnsOf<"shares">();

const itsLoads = ({ bath, claim }: Row<"shares">): Where<"loads"> => ({ bath, claim });

/** What a row's typed units say that the loads do not. */
const otherUnits = "the loads say ";

const inputs: readonly ColumnDefinition[] = [
  keyInput({
    id: "bath",
    label: "Bath",
    width: 14,
    required: true,
    from: ["baths", "bath"],
    help: "One row for each claim in each bath.",
  }),
  keyInput({
    id: "claim",
    label: "Claim",
    width: 14,
    required: true,
    from: ["claims", "claim"],
    help: "A claim that was in the bath.",
  }),
  numberInput({
    id: "units",
    label: "Units",
    limits: between(0, 1_000_000),
    format: "General",
    width: 9,
    help: "Only where the loads were not logged: counted by the basis of the bath, rework left out. Blank: from Loads.",
  }),
];

/**
 * Largest remainder, a step a column: whole cents for everyone, and the cents that are left over go to the largest
 * remainders, ties to the row further up. A bath with a row that cannot be read shares nothing out.
 */
const steps: readonly ComputedColumn[] = [
  computed(
    { id: "basis", label: "Shared by", type: "text", width: 19, help: "The bath's own basis, or else the shop's." },
    ({ bathRow }, { baths }) => cellAtOrBlank(baths.basisUsed, bathRow),
  ),
  computed(
    {
      id: "unitsUsed",
      label: "Units used",
      type: "number",
      format: "General",
      width: 9,
      help: "Typed units, or else those of its loads.",
    },
    ({ claim, units, logged }) =>
      blankIf([isBlank(claim)], when(isFilled(units), when(isNumber(units), units).otherwise("")).otherwise(logged)),
  ),
  computed(
    {
      id: "allUnits",
      label: "Units of all",
      type: "number",
      format: "General",
      width: 9,
      help: "Of all claims in the bath.",
    },
    ({ bath, bathRow }, { shares }) => blankIf([isBlank(bathRow)], sumWhere(shares, "unitsUsed", { bath })),
  ),
  computed(
    {
      id: "weight",
      label: "Part of all",
      type: "share",
      format: "0.0%",
      width: 9,
      help: "Its units divided by all units.",
    },
    ({ unitsUsed, allUnits, bathRow }, { baths }) =>
      blankIf(
        [isNoNumber(unitsUsed), isNoNumber(allUnits)],
        blankIf([equal(allUnits, 0), isOver(rowAt(baths, bathRow).shareGap, 0)], dividedBy(unitsUsed, allUnits)),
      ),
  ),
  computed(
    {
      id: "pool",
      label: "To share out",
      type: "money",
      format: "#,##0.00",
      width: 11,
      help: "Cost of the bath that its claims share.",
    },
    ({ bathRow }, { baths }) => cellAtOrBlank(baths.pool, bathRow),
  ),
  computed(
    {
      id: "exact",
      label: "Exact cents",
      type: "number",
      format: "0.0000000",
      width: 15,
      help: "Cents times its part of all; of a credit as well.",
    },
    ({ weight, pool }) =>
      blankIf(
        [isNoNumber(pool)],
        when(equal(pool, 0), 0).otherwise(
          blankIf([isNoNumber(weight)], rounded(times(rounded(times(apply("ABS", pool), 100), 0), weight), 7)),
        ),
      ),
  ),
  computed(
    {
      id: "whole",
      label: "Whole cents",
      type: "whole number",
      format: "0",
      width: 9,
      help: "Exact cents rounded down.",
    },
    ({ exact }) => blankIf([isBlank(exact)], wholePart(exact)),
  ),
  computed(
    {
      id: "remainder",
      label: "Remainder",
      type: "number",
      format: "0.0000000",
      width: 11,
      help: "Part of a cent that rounding down took away.",
    },
    ({ exact, whole }) => blankIf([isBlank(exact)], rounded(minus(exact, whole), 7)),
  ),
  computed(
    {
      id: "rank",
      label: "Rank",
      type: "whole number",
      format: "0",
      width: 7,
      help: "1 for the largest remainder in the bath; of equal ones the row further up comes first.",
    },
    ({ bath, remainder, line }, { shares }) =>
      blankIf(
        [isBlank(remainder)],
        plus(
          countWhere(shares, { bath, remainder: above(remainder) }),
          countWhere(shares, { bath, remainder, line: below(line) }),
          1,
        ),
      ),
  ),
  computed(
    {
      id: "share",
      label: "Share",
      type: "money",
      format: "#,##0.00",
      width: 11,
      help: "To the cent; the shares of a bath add up to its total exactly.",
    },
    ({ bath, pool, rank, whole }, { shares }) => {
      const left = minus(rounded(times(apply("ABS", pool), 100), 0), sumWhere(shares, "whole", { bath }));
      const cents = plus(whole, when(isAtMost(rank, left), 1).otherwise(0));
      return blankIf(
        [isNoNumber(rank)],
        rounded(dividedBy(times(cents, when(isUnder(pool, 0), -1).otherwise(1)), 100), 2),
      );
    },
  ),
];

/** What the journal charged the claim for the bath, against what the log says now. */
const posted: readonly ComputedColumn[] = [
  computed(
    {
      id: "posted",
      label: "Posted",
      type: "money",
      format: "#,##0.00",
      width: 11,
      help: "What the journal charged the claim for this bath, less what was reversed; blank where the bath is not posted.",
    },
    ({ bath, claim, bathPosted }, { journal }) => {
      const its: Where<"journal"> = { bath, claim, use: "claims" };
      return blankIf(
        [isNoNumber(bathPosted), equal(bathPosted, 0)],
        rounded(minus(sumWhere(journal, "debit", its), sumWhere(journal, "credit", its)), 2),
      );
    },
  ),
  computed(
    {
      id: "postedOff",
      label: "Changed since posted",
      type: "money",
      format: "#,##0.00",
      width: 11,
      help: "What the claim pays for this bath now, less what was posted.",
    },
    ({ bath, claim, posted: before, share }, { costLines }) =>
      blankIf(
        [isNoNumber(before), isNoNumber(share)],
        rounded(minus(plus(share, sumWhere(costLines, "alone", { bath, claim })), before), 2),
      ),
  ),
];

/** Who was in the bath in what order. */
const order: readonly ComputedColumn[] = [
  computed(
    {
      id: "entered",
      label: "Order in the bath",
      type: "whole number",
      format: "0",
      width: 8,
      help: "1 for the first claim in this bath, 2 for the second.",
    },
    (row, { loads }) => blankIf([isBlank(row.firstLoad)], sumWhere(loads, "entry", itsLoads(row))),
  ),
  computed(
    {
      id: "firstLoad",
      label: "First load",
      type: "date and time",
      width: 16,
      help: "When it first went into this bath.",
    },
    (row, { loads }) =>
      blankIf(
        [isBlank(row.claim)],
        when(equal(countWhere(loads, itsLoads(row)), 0), "").otherwise(smallestWhere(loads, "when", itsLoads(row))),
      ),
  ),
  computed(
    { id: "lastLoad", label: "Last load", type: "date and time", width: 16, help: "When it last went into this bath." },
    (row, { loads }) => blankIf([isBlank(row.firstLoad)], largestWhere(loads, "when", itsLoads(row))),
  ),
  computed(
    {
      id: "separation",
      label: "Skimmed or filtered before",
      type: "date and time",
      width: 16,
      help: "Last time before its first load, from Care; blank if never.",
    },
    ({ lastSkim, lastFilter }) =>
      blankIf([isBlank(lastSkim), equal(largest(lastSkim, lastFilter), 0)], largest(lastSkim, lastFilter)),
  ),
];

/** When the bath was last cared for in this way before the claim's first load. */
function caredFor(id: string, label: string, kind: (typeof careKinds)[number]): ComputedColumn {
  return helper(
    { id, label, type: "date and time", width: 16, help: "Before its first load, from Care; 0 if never." },
    ({ bath, firstLoad }, { care }) =>
      blankIf([isBlank(firstLoad)], largestWhere(care, "when", { bath, kind, when: upTo(firstLoad) })),
  );
}

const check: ComputedColumn = computed(
  {
    id: "check",
    label: "Check",
    type: "text",
    width: 26,
    help: "What keeps the bath from being shared out, or where typed units differ from what the loads say.",
  },
  ({ bath, bathRow, claim, claimRow, unitsCheck }, { shares }) =>
    blankIf(
      [all(isBlank(bath), isBlank(claim))],
      when(isBlank(bathRow), "bath not on Baths")
        .when(isBlank(claimRow), "claim not on Job")
        .when(isOver(countWhere(shares, { bath, claim }), 1), "listed twice")
        .otherwise(unitsCheck),
    ),
);

const helpers: readonly ComputedColumn[] = [
  bathRow,
  claimRow,
  helper(
    { id: "line", label: "Row", type: "whole number", format: "0", width: 7, help: "Position in this table." },
    ({ bath, claim }, { shares }) => blankIf([all(isBlank(bath), isBlank(claim))], thisLine(shares.line)),
  ),
  helper(
    {
      id: "logged",
      label: "Units of its loads",
      type: "number",
      format: "General",
      width: 9,
      help: "By the basis of the bath; rework is left out.",
    },
    (row, { loads }) => blankIf([isBlank(row.claim)], sumWhere(loads, "units", itsLoads(row))),
  ),
  helper(
    { id: "unitsCheck", label: "Units check", type: "text", width: 20, help: "What is wrong with typed units." },
    ({ units, logged }) =>
      when(isBlank(units), "")
        .when(isNoNumber(units), "units are no number")
        .when(isUnder(units, 0), "units under 0")
        .when(unequal(units, logged), joined(otherUnits, logged))
        .otherwise(""),
  ),
  caredFor("lastSkim", "Skimmed last", "skim"),
  caredFor("lastFilter", "Filtered last", "filter"),
  helper(
    {
      id: "bathPosted",
      label: "Bath posted",
      type: "money",
      format: "#,##0.00",
      width: 11,
      help: "What was posted for the whole bath.",
    },
    ({ bathRow }, { baths }) => cellAtOrBlank(baths.posted, bathRow),
  ),
  helper(
    { id: "gap", label: "Not shared", type: "text", width: 26, help: "Claim and why its bath is not shared out." },
    (row) => blankIf([isBlank(row.check), startsWith(row.check, otherUnits)], joined(row.claim, ": ", row.check)),
  ),
  gapLine<"shares">(({ gap }, { shares }) => [gap, shares.gap]),
  helper(
    {
      id: "unworked",
      label: "Not worked out",
      type: "whole number",
      format: "0",
      width: 8,
      help: "1 where the share of a claim is no number.",
    },
    ({ claim, share }) => blankIf([isBlank(claim)], when(isNumber(share), 0).otherwise(1)),
  ),
  helper(
    {
      id: "openLine",
      label: "Open row",
      type: "whole number",
      format: "0",
      width: 8,
      help: "Position of the row, as long as the cost of its bath is not placed to the cent.",
    },
    ({ bathRow, claim, line }, { baths }) =>
      blankIf(
        [isBlank(claim)],
        when(isBlank(bathRow), line)
          .when(
            any(isBlank(rowAt(baths, bathRow).costState), is(rowAt(baths, bathRow).costState, costStanding.placed)),
            "",
          )
          .otherwise(line),
      ),
  ),
  shareStatement,
];

/** The steps between its part and the share are for the screen, and so is who came when. */
const printed: readonly ColumnId<"shares">[] = [
  "bath",
  "claim",
  "units",
  "basis",
  "unitsUsed",
  "pool",
  "weight",
  "share",
  "check",
];

export const shares: TableDefinition = {
  id: "shares",
  name: "Shares",
  caption: "Each claim's share of each bath, and who was in it in what order",
  emptyRows: 3,
  columns: printedFirst([...inputs, ...steps, ...posted, ...order, check, ...helpers], printed),
  signals: [
    { column: "postedOff", when: { isNot: 0 }, look: "act" },
    { column: "check", when: { startsWith: otherUnits }, look: "watch" },
    ...["bath", "claim", "listed", "units"].map((beginning) => ({
      column: "check",
      when: { startsWith: beginning },
      look: "act" as const,
    })),
  ],
};
