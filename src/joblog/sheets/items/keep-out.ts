import { joined } from "../../formula/arithmetic.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { any, type Condition, holds, isBlank, isFilled, isNot, isOver } from "../../formula/conditions.ts";
import { countWhere } from "../../formula/criteria.ts";
import { apply, type Expression } from "../../formula/expression.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn } from "../../model/definition.ts";
import { amphotericStarts, amphotericWords, neverInTank } from "./item-standing.ts";

const { helper } = columnsOf<"items">();

const holdsAny = (text: Expression, words: readonly string[]): Condition =>
  any(...words.map((word) => holds(text, word)));

/** Every word of it between blanks. */
function spacedOut(text: Expression): Expression {
  const withoutCommas = apply("SUBSTITUTE", text, ",", " ");
  return joined(" ", apply("SUBSTITUTE", withoutCommas, "-", " "), " ");
}

/** Judged by the words of the line only, and only where the route is a bath. */
export const keepOut: readonly ComputedColumn[] = [
  helper(
    {
      id: "keepOut",
      label: "Keep out",
      type: "text",
      width: 14,
      help: "Metal that alkali attacks, or a hazard, by the words typed.",
    },
    ({ item, material, route }) => {
      const isMetal = any(
        holdsAny(material, amphotericWords),
        holdsAny(
          spacedOut(material),
          amphotericStarts.map((word) => ` ${word} `),
        ),
      );
      const isHazard = holdsAny(joined(item, " ", material), neverInTank);
      return blankIf(
        [isNot(route, "bath")],
        when(isMetal, "keep out of alkali: metal").when(isHazard, "keep out of the tank: hazard").otherwise(""),
      );
    },
  ),
  helper(
    {
      id: "inBath",
      label: "In a bath",
      type: "text",
      width: 14,
      help: "What speaks against the bath it is meant for.",
    },
    (item, { loads }) => {
      const { bath, route, pre1980 } = item;
      const claimsInBath = countWhere(loads, { bath, firstOfClaim: 1 });
      return blankIf(
        [isNot(route, "bath")],
        when(isFilled(item.keepOut), item.keepOut)
          .when(isNot(pre1980, "yes"), "")
          .when(isBlank(bath), "isolate: bath of its own")
          .when(isOver(claimsInBath, 1), "isolate: this bath is shared")
          .otherwise(""),
      );
    },
  ),
];
