import { dividedBy, joined, plus, rounded, times } from "../../formula/arithmetic.ts";
import { blankIf, when } from "../../formula/choices.ts";
import {
  all,
  equal,
  is,
  isBlank,
  isFilled,
  isNoNumber,
  isNumber,
  isOver,
  isUnder,
  unequal,
} from "../../formula/conditions.ts";
import { below, countWhere } from "../../formula/criteria.ts";
import { lineOf, rowAt } from "../../formula/lookups.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn } from "../../model/definition.ts";
import { shareBases } from "../../model/words.ts";
import { bathRow } from "../baths/bath-row.ts";
import { gapLine } from "../costs/gap-line.ts";
import { claimRow } from "../job/claim-row.ts";
import { loadStatement } from "../statement/statement-keys.ts";

const { computed, helper } = columnsOf<"loads">();

/** What a load counts for by each of the three bases of a share. */
export const loadUnits: readonly ComputedColumn[] = [
  computed(
    {
      id: "counted",
      label: "Baskets counted",
      type: "number",
      format: "General",
      width: 9,
      help: "Baskets that a share counts: none for a rework.",
    },
    ({ baskets, rework }) => blankIf([isNoNumber(baskets)], when(is(rework, "yes"), 0).otherwise(baskets)),
  ),
  computed(
    {
      id: "weighted",
      label: "Weighted by soil",
      type: "number",
      format: "General",
      width: 9,
      help: "Baskets counted, times the weight of the soil from the Shop sheet.",
    },
    ({ counted, soil }, { named }) =>
      blankIf(
        [isBlank(counted), isBlank(soil)],
        times(
          counted,
          when(is(soil, "light"), named.weightLight)
            .when(is(soil, "medium"), named.weightMedium)
            .otherwise(named.weightHeavy),
        ),
      ),
  ),
  computed(
    {
      id: "basketMinutes",
      label: "Basket minutes",
      type: "number",
      format: "General",
      width: 9,
      help: "Baskets counted, times the minutes in the bath.",
    },
    ({ counted, minutes }) => blankIf([isBlank(counted), isNoNumber(minutes)], times(counted, minutes)),
  ),
];

/** Units by the basis of its bath. */
const unitsOfBath: ComputedColumn = helper(
  {
    id: "units",
    label: "Units",
    type: "number",
    format: "General",
    width: 9,
    help: "What its bath's cost is shared by; blank where the row does not say enough.",
  },
  ({ bathRow, counted, weighted, basketMinutes }, { baths }) => {
    const { basisUsed } = rowAt(baths, bathRow);
    const [byBaskets, bySoil, byMinutes] = shareBases;
    return blankIf(
      [isBlank(bathRow)],
      when(is(basisUsed, byBaskets), counted)
        .when(is(basisUsed, bySoil), weighted)
        .when(is(basisUsed, byMinutes), basketMinutes)
        .otherwise(""),
    );
  },
);

/** Why no share counts a load. */
const loadGap: readonly ComputedColumn[] = [
  helper(
    { id: "gapWhy", label: "Why not shared", type: "text", width: 15, help: "What keeps a share from counting it." },
    ({ id, bath, claim, bathRow, claimRow, when: moment, units }, { shares }) =>
      when(all(isBlank(id), isBlank(bath), isBlank(claim)), "")
        .when(isBlank(bathRow), "bath missing")
        .when(isBlank(claimRow), "claim missing")
        .when(isNoNumber(moment), "time missing")
        .when(isNoNumber(units), "units missing")
        .when(equal(countWhere(shares, { bath, claim }), 0), "no line in Shares")
        .otherwise(""),
  ),
  helper(
    {
      id: "gap",
      label: "Not shared",
      type: "text",
      width: 26,
      help: "Load and why no share counts it; blank if one does.",
    },
    ({ id, gapWhy }) => blankIf([isBlank(gapWhy)], joined(id, ": ", gapWhy)),
  ),
  helper(
    {
      id: "missing",
      label: "Missing",
      type: "text",
      width: 16,
      help: "What the row lacks, or a bath not in use then.",
    },
    ({ bathRow, when: moment, outOfUse, baskets, soil, minutes }) =>
      blankIf(
        [isBlank(bathRow)],
        when(isNoNumber(moment), "missing: when")
          .when(isFilled(outOfUse), outOfUse)
          .when(isNoNumber(baskets), "missing: baskets")
          .when(isBlank(soil), "missing: soil")
          .when(isNoNumber(minutes), "missing: minutes")
          .otherwise(""),
      ),
  ),
  helper(
    { id: "outOfUse", label: "Out of use", type: "text", width: 16, help: "Whether the bath was not in use then." },
    ({ bathRow, when: moment }, { baths }) => {
      const { opened, closed } = rowAt(baths, bathRow);
      return blankIf(
        [isBlank(bathRow), isNoNumber(moment)],
        when(all(isNumber(opened), isUnder(moment, opened)), "bath not yet open then")
          .when(all(isNumber(closed), isOver(moment, closed)), "bath closed by then")
          .otherwise(""),
      );
    },
  ),
  gapLine<"loads">(({ gap }, { loads }) => [gap, loads.gap]),
  helper(
    {
      id: "astrayLine",
      label: "Row of no bath",
      type: "whole number",
      format: "0",
      width: 8,
      help: "Position of a load without a bath: it could be of any.",
    },
    ({ bathRow, gap, gapLine: line }) => when(all(isFilled(gap), isBlank(bathRow)), line).otherwise(""),
  ),
];

/** What a row leaves open, in words. */
export const loadCheck: ComputedColumn = computed(
  {
    id: "check",
    label: "Check",
    type: "text",
    width: 16,
    help: "What is missing or does not fit; blank where nothing is.",
  },
  (load) =>
    blankIf(
      [all(isBlank(load.id), isBlank(load.bath), isBlank(load.claim))],
      when(isBlank(load.claimRow), "claim missing: cost not shared")
        .when(isBlank(load.bathRow), "bath missing")
        .when(isFilled(load.missing), load.missing)
        .when(isFilled(load.gap), "no line in Shares: cost not shared")
        .when(is(load.rework, "yes"), "rework: not billed twice")
        .otherwise(""),
    ),
);

/** Positions, and who came into a bath in what order. */
export const loadHelpers: readonly ComputedColumn[] = [
  bathRow,
  claimRow,
  // Loads entered at the same minute still need an order: a row's position is far below a second. COUNTIFS compares
  // by text of 15 digits, so there are no more than ten behind the point.
  helper(
    {
      id: "order",
      label: "Order",
      type: "number",
      format: "0.0000000000",
      width: 16,
      help: "Time of the load with its row as the last digits, so that no two are the same.",
    },
    (load, { loads }) =>
      blankIf(
        [isBlank(load.bathRow), isBlank(load.claimRow), isNoNumber(load.when)],
        rounded(plus(rounded(load.when, 5), dividedBy(lineOf(load.when, loads.when), 10_000_000_000)), 10),
      ),
  ),
  helper(
    {
      id: "firstOfClaim",
      label: "First of claim",
      type: "whole number",
      format: "0",
      width: 8,
      help: "1 where it is the claim's first load in this bath.",
    },
    ({ bath, claim, order }, { loads }) =>
      blankIf(
        [isBlank(order)],
        when(equal(countWhere(loads, { bath, claim, order: below(order) }), 0), 1).otherwise(0),
      ),
  ),
  helper(
    {
      id: "entry",
      label: "Claim came in as",
      type: "whole number",
      format: "0",
      width: 9,
      help: "On a claim's first load in a bath: 1 for the first claim in it, 2 for the second.",
    },
    ({ bath, firstOfClaim, order }, { loads }) =>
      blankIf([unequal(firstOfClaim, 1)], plus(countWhere(loads, { bath, firstOfClaim: 1, order: below(order) }), 1)),
  ),
  helper(
    {
      id: "entryKey",
      label: "Bath and order",
      type: "text",
      width: 16,
      help: "Bath and place in its order of claims, by which Costs finds them.",
    },
    ({ bath, entry }) => blankIf([isBlank(entry)], joined(bath, "|", entry)),
  ),
  unitsOfBath,
  ...loadGap,
  loadStatement,
];
