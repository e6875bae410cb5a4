import { asText, joined, rounded, wholePart } from "../../formula/arithmetic.ts";
import { blankIf } from "../../formula/choices.ts";
import { isBlank, isNoNumber, isNot, unequal } from "../../formula/conditions.ts";
import { below, countWhere, sumWhere } from "../../formula/criteria.ts";
import { lineOf, matchIn, rowAt } from "../../formula/lookups.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn } from "../../model/definition.ts";

const { helper } = columnsOf<"additions">();

/**
 * What left the shelf, day by day. A concentrate's issue of a day stands on one of its rows only, so
 * that the median of the days can be picked by ranks, without array formulas.
 */
export const additionIssues: readonly ComputedColumn[] = [
  helper(
    {
      id: "concentrate",
      label: "Concentrate",
      type: "text",
      width: 12,
      help: "Of the bath, where it is concentrate that was added.",
    },
    (addition, { baths }) =>
      blankIf(
        [isBlank(addition.bathRow), isNot(addition.kind, "concentrate"), isNoNumber(addition.when)],
        asText(rowAt(baths, addition.bathRow).concentrate),
      ),
  ),
  helper({ id: "day", label: "Day", type: "date", width: 11, help: "Day of the issue from the shelf." }, (addition) =>
    blankIf([isBlank(addition.concentrate)], wholePart(addition.when)),
  ),
  helper(
    {
      id: "issueKey",
      label: "Concentrate and day",
      type: "text",
      width: 14,
      help: "By which the first row of a day is found.",
    },
    ({ concentrate, day }) => blankIf([isBlank(concentrate)], joined(concentrate, "|", day)),
  ),
  helper(
    {
      id: "dayIssue",
      label: "Issued that day",
      type: "number",
      format: "0.000",
      width: 9,
      help: "All of the concentrate that day, on one of its rows.",
    },
    ({ issueKey }, { additions }) => {
      const stoodBefore = unequal(matchIn(issueKey, additions.issueKey), lineOf(issueKey, additions.issueKey));
      // Compared by text of 15 digits below: a sum must not lie beside the number that it shows.
      const issued = rounded(sumWhere(additions, "amount", { issueKey }), 6);
      return blankIf([isBlank(issueKey)], blankIf([stoodBefore], issued));
    },
  ),
  helper(
    {
      id: "daysBelow",
      label: "Days below",
      type: "whole number",
      format: "0",
      width: 8,
      help: "Days on which less of this concentrate was issued: gives the median.",
    },
    ({ concentrate, dayIssue }, { additions }) =>
      blankIf([isBlank(dayIssue)], countWhere(additions, { concentrate, dayIssue: below(dayIssue) })),
  ),
];
