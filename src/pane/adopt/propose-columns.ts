import type { ColumnMap } from "./adopt-answers.ts";
import { type AdoptKind, type AdoptTable, columnsOf } from "./adopt-kinds.ts";
import { headingWords } from "./cell-words.ts";
import {
  amountWords,
  earlierWords,
  laterWords,
  strongWords,
  timeWords,
  unitWords,
  weakWords,
  wordsInTable,
  wordsOfColumn,
} from "./heading-words.ts";
import { type ExtraColumn, extraColumns } from "./sheet-views.ts";

function likeness(words: readonly string[], id: string, label: string, table: AdoptTable): number {
  const own = headingWords(label);
  // The number of a piece is headed "Item" in the log, and the piece itself in most sheets.
  const exact = id !== "id" && own.length > 0 && own.every((word) => words.includes(word)) ? 4 : 0;
  const among = (known: readonly string[] = []): number => words.filter((word) => known.includes(word)).length;
  const shared = among(wordsInTable[table]?.[id] ?? wordsOfColumn[id]);
  const strong = shared > 0 ? among(strongWords) : 0;
  // A heading with other words beside the known ones is a weaker sign: "pH before" is not "pH".
  return exact + 3 * shared + strong + 1.5 * among(weakWords[id]) - 0.5 * words.length;
}

const has = (heading: readonly string[], words: readonly string[]): boolean =>
  heading.some((word) => words.includes(word));

/** Columns that stand beside another of their kind: the afternoon's pH, the water beside the concentrate, units row by row. */
function proposeExtras(headings: readonly (readonly string[])[], kind: AdoptKind): Readonly<Record<string, number>> {
  const find = (fits: (heading: readonly string[]) => boolean): number => headings.findIndex(fits);
  const ofLater = (word: string): number =>
    headings.some((heading) => heading.includes(word) && !has(heading, laterWords))
      ? find((heading) => heading.includes(word) && has(heading, laterWords))
      : -1;
  const proposed: Readonly<Partial<Record<ExtraColumn["id"], number>>> = {
    unit: find((heading) => heading.length === 1 && has(heading, unitWords)),
    ...(kind.table === "readings"
      ? { ph2: ofLater("ph"), temperature2: Math.max(ofLater("temp"), ofLater("temperature")) }
      : {}),
    ...(kind.table === "additions"
      ? { amount2: find((heading) => heading.includes("water") && has(heading, amountWords)) }
      : {}),
  };
  const ids = extraColumns(kind.table).map(({ id }) => id);
  return Object.fromEntries(
    ids.flatMap((id) => {
      const at = proposed[id] ?? -1;
      return at < 0 ? [] : [[id, at] as const];
    }),
  );
}

/** "pH AM" is "pH". */
const withoutDaytime = (heading: readonly string[]): readonly string[] =>
  heading.length > 1 ? heading.filter((word) => !earlierWords.includes(word)) : heading;

/** Pairs the sheet's headings with the log's columns, the likest first; each is used once. */
export function proposeColumns(headings: readonly string[], kind: AdoptKind): ColumnMap {
  const words = headings.map(headingWords);
  const onlyTime = words.findIndex((one) => one.some((word) => timeWords.includes(word)) && !one.includes("date"));
  const hasDate = words.some((one) => one.includes("date") || one.includes("day"));
  const time = hasDate && onlyTime >= 0 ? onlyTime : undefined;
  const extras = proposeExtras(words, kind);
  const spoken = [...Object.values(extras), ...(time === undefined ? [] : [time])];
  const pairs = columnsOf(kind)
    .flatMap(({ id, label }) =>
      words.map((one, index) => ({
        id,
        index,
        likeness: spoken.includes(index) ? 0 : likeness(withoutDaytime(one), id, label, kind.table),
      })),
    )
    .filter((pair) => pair.likeness >= 1)
    .sort((a, b) => b.likeness - a.likeness);
  const map: Record<string, number> = { ...extras, ...(time === undefined ? {} : { time }) };
  for (const { id, index } of pairs) if (map[id] === undefined && !Object.values(map).includes(index)) map[id] = index;
  return map;
}
