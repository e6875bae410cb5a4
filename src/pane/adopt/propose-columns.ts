import { type AdoptKind, columnsOf } from "./adopt-kinds.ts";
import { headingWords } from "./cell-words.ts";
import { timeWords, wordsOfColumn } from "./heading-words.ts";

/** Which of the sheet's columns, counted from 0, fills a column of the log; times that stand in a column of their own are under "time". */
export type ColumnMap = Readonly<Partial<Record<string, number>>>;

function likeness(words: readonly string[], id: string, label: string): number {
  const own = headingWords(label);
  const exact = own.length > 0 && own.every((word) => words.includes(word)) ? 4 : 0;
  const shared = words.filter((word) => (wordsOfColumn[id] ?? []).includes(word)).length;
  // A heading with other words beside the known ones is a weaker sign: "pH before" is not "pH".
  return exact + 3 * shared - 0.5 * words.length;
}

/** Pairs the sheet's headings with the log's columns, the likest first; each is used once. */
export function proposeColumns(headings: readonly string[], kind: AdoptKind): ColumnMap {
  const words = headings.map(headingWords);
  const onlyTime = words.findIndex((one) => one.some((word) => timeWords.includes(word)) && !one.includes("date"));
  const hasDate = words.some((one) => one.includes("date") || one.includes("day"));
  const time = hasDate && onlyTime >= 0 ? onlyTime : undefined;
  const pairs = columnsOf(kind)
    .flatMap(({ id, label }) =>
      words.map((one, index) => ({ id, index, likeness: index === time ? 0 : likeness(one, id, label) })),
    )
    .filter((pair) => pair.likeness >= 1)
    .sort((a, b) => b.likeness - a.likeness);
  const map: Record<string, number> = time === undefined ? {} : { time };
  for (const { id, index } of pairs) if (map[id] === undefined && !Object.values(map).includes(index)) map[id] = index;
  return map;
}
