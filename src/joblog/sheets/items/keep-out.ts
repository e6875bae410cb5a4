import { joined } from "../../formula/arithmetic.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { any, type Condition, holds, isBlank, isFilled, isNot, isOver } from "../../formula/conditions.ts";
import { countWhere } from "../../formula/criteria.ts";
import { apply, type Expression } from "../../formula/expression.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn } from "../../model/definition.ts";
import { betweenWords, harmlessPhrases, soughtHazards, soughtMetals } from "./keep-out-words.ts";

const { helper } = columnsOf<"items">();

const holdsAny = (text: Expression, sought: readonly string[]): Condition =>
  any(...sought.map((word) => holds(text, word)));

const without = (text: Expression, parts: readonly string[]): Expression =>
  parts.reduce<Expression>((rest, part) => apply("SUBSTITUTE", rest, part, " "), text);

/** Judged by the words of the line only, and only where the route is a bath. */
export const keepOut: readonly ComputedColumn[] = [
  helper(
    {
      id: "words",
      label: "Words",
      type: "text",
      width: 14,
      help: "Every text of the line, its words between blanks: what is looked through for metals and hazards.",
    },
    ({ item, material, condition, reasonText, note, route }) => {
      const texts = joined(" ", item, " ", material, " ", condition, " ", reasonText, " ", note, " ");
      return blankIf([isNot(route, "bath")], without(without(apply("LOWER", texts), betweenWords), harmlessPhrases));
    },
  ),
  helper(
    {
      id: "keepOut",
      label: "Keep out",
      type: "text",
      width: 14,
      help: "Metal that alkali attacks, or a hazard, by the words typed.",
    },
    ({ words, route }) =>
      blankIf(
        [isNot(route, "bath")],
        when(holdsAny(words, soughtHazards), "keep out of the tank: hazard")
          .when(holdsAny(words, soughtMetals), "keep out of alkali: metal")
          .otherwise(""),
      ),
  ),
  helper(
    {
      id: "inBath",
      label: "In a bath",
      type: "text",
      width: 14,
      help: "Why it should stay out of the bath that it is routed to.",
    },
    (item, { loads }) => {
      const { bath, route, pre1978 } = item;
      const claimsInBath = countWhere(loads, { bath, firstOfClaim: 1 });
      return blankIf(
        [isNot(route, "bath")],
        when(isFilled(item.keepOut), item.keepOut)
          .when(isNot(pre1978, "yes"), "")
          .when(isBlank(bath), "isolate: bath of its own")
          .when(isOver(claimsInBath, 1), "isolate: this bath is shared")
          .otherwise(""),
      );
    },
  ),
];
