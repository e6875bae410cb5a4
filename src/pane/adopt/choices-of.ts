import type { InputColumn } from "../../joblog/model/definition.ts";
import { isKeyText } from "../../joblog/model/key-text.ts";
import type { AnyRow, LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import type { AdoptAnswers, NameAnswer } from "./adopt-answers.ts";

/** The words that a choice column takes, from the log's description or from its rows; undefined for other columns. */
export function choicesOf({ choices }: InputColumn, log: LogSnapshot): readonly string[] | undefined {
  if (choices === undefined) return undefined;
  if (choices.kind === "fixed") return choices.choices;
  const rows: readonly AnyRow[] = log.rows[choices.table];
  return rows.flatMap(({ cells }) => cells[choices.column] ?? []).map(String);
}

const tablesOfEvents: readonly AdoptAnswers["table"][] = ["readings", "additions", "loads", "benchTests"];

/** Whether the column names rows that adopting can add: claims, and baths where the sheet says when. */
export function canBeNew({ choices }: InputColumn, table: AdoptAnswers["table"]): boolean {
  return (
    choices?.kind === "column" &&
    (choices.table === "claims" || (choices.table === "baths" && tablesOfEvents.includes(table)))
  );
}

export const nameKey = (text: string): string => text.toLowerCase();

/** What a word of the sheet stands for: the log's own word in whatever letters, else as the person answered. */
export function answerFor(
  text: string,
  column: InputColumn,
  answers: AdoptAnswers,
  log: LogSnapshot,
): NameAnswer | undefined {
  const known = choicesOf(column, log)?.find((choice) => nameKey(choice) === nameKey(text));
  if (known !== undefined) return { use: known };
  const answer = answers.names[column.id]?.[nameKey(text)];
  return answer === "new" && !(canBeNew(column, answers.table) && isKeyText(text)) ? undefined : answer;
}
