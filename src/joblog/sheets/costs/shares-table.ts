import { share } from "../../../../functions/money/share.ts";
import { dividedBy, joined, largest, rounded, sum } from "../../formula/arithmetic.ts";
import { call } from "../../formula/calls.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { equal, is, isBlank, isFilled, isNoNumber, isNumber } from "../../formula/conditions.ts";
import {
  atLeast,
  countWhere,
  largestWhere,
  smallestWhere,
  sumWhere,
  upTo,
  type Where,
} from "../../formula/criteria.ts";
import { apply, type Expression } from "../../formula/expression.ts";
import type { ColumnId, Log, Row } from "../../formula/log-names.ts";
import { lineOf } from "../../formula/lookups.ts";
import { columnsOf, keyInput, numberInput } from "../../model/columns.ts";
import type { ComputedColumn, TableDefinition } from "../../model/definition.ts";
import { between } from "../../model/units-of.ts";
import { type careKinds, shareBases } from "../../model/words.ts";

const { computed } = columnsOf<"shares">();

const [byBaskets, bySoil, byMinutes] = shareBases;

/** The claim's loads of the bath to share out. */
const itsLoads = ({ claim }: Row<"shares">, { named }: Log): Where<"loads"> => ({ bath: named.shareBath, claim });

function units(id: string, label: string, of: ColumnId<"loads">, help: string): ComputedColumn {
  return computed({ id, label, type: "number", format: "General", width: 9, help }, (row, log) =>
    blankIf([isBlank(row.claim), isBlank(log.named.shareBath)], sumWhere(log.loads, of, itsLoads(row, log))),
  );
}

/** What there is of each basis. */
type ByBasis = Readonly<Record<"baskets" | "weightedBaskets" | "basketMinutes", Expression>>;

/** One of three by the basis chosen, blank where none is. */
function byBasis({ named: { shareBasis } }: Log, { baskets, weightedBaskets, basketMinutes }: ByBasis): Expression {
  return when(is(shareBasis, byBaskets), baskets)
    .when(is(shareBasis, bySoil), weightedBaskets)
    .when(is(shareBasis, byMinutes), basketMinutes)
    .otherwise("");
}

export const shares: TableDefinition = {
  id: "shares",
  name: "Shares",
  caption: "Each claim's share, and who was in the bath in what order",
  emptyRows: 3,
  columns: [
    keyInput({
      id: "claim",
      label: "Claim",
      width: 14,
      required: true,
      from: ["claims", "claim"],
      help: "Every claim that was in the bath, once.",
    }),
    numberInput({
      id: "units",
      label: "Units",
      limits: between(0, 1_000_000),
      format: "General",
      width: 9,
      help: "Only where the loads were not logged: counted by the basis chosen above, rework left out. Blank: from Loads.",
    }),
    computed(
      {
        id: "unitsUsed",
        label: "Units used",
        type: "number",
        format: "General",
        width: 9,
        help: "Typed units, or else those of the basis chosen.",
      },
      (row, log) =>
        blankIf(
          [isBlank(row.claim)],
          when(isFilled(row.units), when(isNumber(row.units), row.units).otherwise("")).otherwise(byBasis(log, row)),
        ),
    ),
    computed(
      {
        id: "weight",
        label: "Part of all",
        type: "share",
        format: "0.0%",
        width: 9,
        help: "This claim's units of all units.",
      },
      ({ unitsUsed }, { shares: all }) =>
        blankIf([isNoNumber(unitsUsed), equal(sum(all.unitsUsed), 0)], dividedBy(unitsUsed, sum(all.unitsUsed))),
    ),
    computed(
      {
        id: "share",
        label: "Share",
        type: "money",
        format: "#,##0.00",
        width: 11,
        help: "To the cent; the shares add up to the total exactly.",
      },
      ({ claim, unitsUsed }, { named, shares: all }) =>
        blankIf(
          [isBlank(claim), isNoNumber(unitsUsed), isNoNumber(named.poolTotal), equal(sum(all.unitsUsed), 0)],
          when(equal(rounded(named.poolTotal, 2), 0), 0).otherwise(
            apply(
              "INDEX",
              call(share, { total: named.poolTotal, weights: all.unitsUsed }),
              lineOf(claim, all.claim),
              1,
            ),
          ),
        ),
    ),
    computed(
      {
        id: "loads",
        label: "Loads counted",
        type: "whole number",
        format: "0",
        width: 9,
        help: "Its loads in this bath whose units are known, rework among them.",
      },
      (row, log) => {
        const known = (unitsKnown: Where<"loads">): Expression =>
          countWhere(log.loads, { ...itsLoads(row, log), ...unitsKnown });
        return blankIf(
          [isBlank(row.claim), isBlank(log.named.shareBath)],
          byBasis(log, {
            baskets: known({ counted: atLeast(0) }),
            weightedBaskets: known({ weighted: atLeast(0) }),
            basketMinutes: known({ basketMinutes: atLeast(0) }),
          }),
        );
      },
    ),
    units("baskets", "Baskets", "counted", "Of the claim's loads in this bath; rework is left out."),
    units("weightedBaskets", "Soil-weighted", "weighted", "Baskets times the weight of their soil."),
    units("basketMinutes", "Basket-minutes", "basketMinutes", "Baskets times their minutes in the bath."),
    computed(
      {
        id: "entered",
        label: "Order in the bath",
        type: "whole number",
        format: "0",
        width: 8,
        help: "1 for the first claim in this bath, 2 for the second.",
      },
      (row, log) => blankIf([isBlank(row.firstLoad)], sumWhere(log.loads, "entry", itsLoads(row, log))),
    ),
    computed(
      {
        id: "firstLoad",
        label: "First load",
        type: "date and time",
        width: 16,
        help: "When it first went into this bath.",
      },
      (row, log) =>
        blankIf(
          [isBlank(row.claim), isBlank(log.named.shareBath)],
          when(equal(countWhere(log.loads, itsLoads(row, log)), 0), "").otherwise(
            smallestWhere(log.loads, "when", itsLoads(row, log)),
          ),
        ),
    ),
    computed(
      {
        id: "lastLoad",
        label: "Last load",
        type: "date and time",
        width: 16,
        help: "When it last went into this bath.",
      },
      (row, log) => blankIf([isBlank(row.firstLoad)], largestWhere(log.loads, "when", itsLoads(row, log))),
    ),
    computed(
      {
        id: "separation",
        label: "Skimmed or filtered before",
        type: "date and time",
        width: 16,
        help: "Last time before its first load, from Care; blank if never.",
      },
      ({ firstLoad }, { care, named }) => {
        const last = (kind: (typeof careKinds)[number]): Expression =>
          largestWhere(care, "when", { bath: named.shareBath, kind, when: upTo(firstLoad) });
        const latest = largest(last("skim"), last("filter"));
        return blankIf([isBlank(firstLoad)], when(equal(latest, 0), "").otherwise(latest));
      },
    ),
    {
      ...computed(
        {
          id: "unitsCheck",
          label: "Typed units",
          type: "text",
          width: 30,
          help: "Where typed units differ from what the loads say.",
        },
        (row, log) => {
          const logged = byBasis(log, row);
          return blankIf(
            [isBlank(row.claim), isBlank(row.units)],
            when(isNoNumber(row.units), "no number")
              .when(equal(row.units, logged), "as logged")
              .otherwise(joined("the loads say ", logged)),
          );
        },
      ),
      unprinted: true,
    },
  ],
  signals: [
    { column: "unitsCheck", when: { startsWith: "the loads" }, look: "watch" },
    { column: "unitsCheck", when: { is: "no number" }, look: "act" },
  ],
};
