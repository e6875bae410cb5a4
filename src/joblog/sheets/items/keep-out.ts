import { joined } from "../../formula/arithmetic.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { type Condition, equal, holds, is, isBlank, isFilled, isNot, isOver } from "../../formula/conditions.ts";
import { countWhere } from "../../formula/criteria.ts";
import type { Expression } from "../../formula/expression.ts";
import type { Log } from "../../formula/log-names.ts";
import { bothHold, countOfRows } from "../../formula/row-conditions.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn } from "../../model/definition.ts";
import type { keepOutKinds } from "../../model/words.ts";
import { harmlessPhrases, mark, marked } from "./keep-out-words.ts";
import { betweenMarks, without } from "./words-between-marks.ts";

const { helper } = columnsOf<"items">();

/** A blank line of the list would be found in every text; a word of no kind keeps a piece out of any tank. */
function holdsAny(text: Expression, kind: (typeof keepOutKinds)[number], { keepOutWords }: Log): Condition {
  const { sought } = keepOutWords;
  const isOfKind = kind === "metal" ? is(keepOutWords.kind, "metal") : isNot(keepOutWords.kind, "metal");
  return isOver(countOfRows(bothHold(bothHold(isFilled(sought), isOfKind), holds(text, sought))), 0);
}

const nothingListed = ({ keepOutWords }: Log): Condition => equal(countOfRows(isFilled(keepOutWords.sought)), 0);

/** Judged by the words of the line only, and only where the route is a bath. */
export const keepOut: readonly ComputedColumn[] = [
  helper(
    {
      id: "allWords",
      label: "All words",
      type: "text",
      width: 14,
      help: "Every text of the line in small letters, its words between marks.",
    },
    ({ item, material, condition, reasonText, note, route }) => {
      const texts = joined(mark, item, mark, material, mark, condition, mark, reasonText, mark, note, mark);
      return blankIf([isNot(route, "bath")], betweenMarks(texts));
    },
  ),
  helper(
    {
      id: "words",
      label: "Words",
      type: "text",
      width: 14,
      help: "The same without phrases that name no metal and no hazard: what is looked through for both.",
    },
    ({ allWords }) => blankIf([isBlank(allWords)], without(allWords, harmlessPhrases.map(marked))),
  ),
  helper(
    {
      id: "keepOut",
      label: "Keep out",
      type: "text",
      width: 14,
      help: "Metal that alkali attacks, or a hazard, by the words typed and the list on the sheet Shop.",
    },
    ({ words }, log) =>
      blankIf(
        [isBlank(words)],
        when(holdsAny(words, "hazard", log), "keep out of the tank: hazard")
          .when(holdsAny(words, "metal", log), "keep out of alkali: metal")
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
    (item, log) => {
      const { loads } = log;
      const { bath, route, pre1978 } = item;
      const claimsInBath = countWhere(loads, { bath, firstOfClaim: 1 });
      return blankIf(
        [isNot(route, "bath")],
        when(isFilled(item.keepOut), item.keepOut)
          .when(nothingListed(log), "no words listed on Shop: look yourself")
          .when(isNot(pre1978, "yes"), "")
          .when(isBlank(bath), "isolate: bath of its own")
          .when(isOver(claimsInBath, 1), "isolate: this bath is shared")
          .otherwise(""),
      );
    },
  ),
];
