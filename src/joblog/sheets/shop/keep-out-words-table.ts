import { joined } from "../../formula/arithmetic.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { is, isBlank } from "../../formula/conditions.ts";
import { apply } from "../../formula/expression.ts";
import { columnsOf, textInput, wordInput } from "../../model/columns.ts";
import type { TableDefinition } from "../../model/definition.ts";
import { keepOutKinds, wordCounts } from "../../model/words.ts";
import { mark, usualKeepOutWords } from "../items/keep-out-words.ts";
import { betweenMarks } from "../items/words-between-marks.ts";

export const keepOutWordsTable: TableDefinition = {
  id: "keepOutWords",
  name: "KeepOutWords",
  caption: "Words by which a piece on the sheet Items stays out of the bath; add your own",
  emptyRows: usualKeepOutWords.length + 2,
  start: () => usualKeepOutWords,
  columns: [
    textInput({
      id: "word",
      label: "Word",
      width: 31,
      required: true,
      help: "Looked for in every text of a line on the sheet Items; capitals and hyphens make no difference.",
    }),
    wordInput({
      id: "kind",
      label: "Stands for",
      words: keepOutKinds,
      width: 26,
      required: true,
      help: "Metal that alkali attacks, or a hazard in any tank.",
    }),
    wordInput({
      id: "counts",
      label: "Counts as",
      words: wordCounts,
      width: 94,
      required: true,
      help: "A whole word, or also the beginning of a longer one.",
    }),
    columnsOf<"keepOutWords">().helper(
      {
        id: "sought",
        label: "Looked for",
        type: "text",
        width: 14,
        help: "The word in small letters, with the marks around it that it must have.",
      },
      ({ word, counts }) =>
        blankIf(
          [isBlank(word)],
          joined(mark, betweenMarks(apply("TRIM", word)), when(is(counts, "beginning"), "").otherwise(mark)),
        ),
    ),
  ],
};
