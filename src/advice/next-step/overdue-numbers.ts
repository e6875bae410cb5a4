import { jobLog } from "../../joblog/job-log.ts";
import type { AnyRow, LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import { folded } from "../../joblog/model/same-text.ts";

/** Rows that forms, receipts and formulas find by a number of their own. */
const numbered = jobLog.sheets.flatMap((sheet) =>
  sheet.tables.flatMap(({ id, entry, columns: [key] }) =>
    entry === undefined || key === undefined ? [] : [{ id, word: entry.word, key: key.id, sheet: sheet.name }],
  ),
);

/** Numbers that stand twice, as two people or a copied row make them: what belongs to one then goes to the other. */
export function doubleNumberSentences(log: LogSnapshot): readonly string[] {
  return numbered.flatMap(({ id, word, key, sheet }) => {
    const rows: readonly AnyRow[] = log.rows[id];
    const found = new Map<string, { readonly number: string; readonly places: number[] }>();
    for (const { cells, position } of rows) {
      const number = cells[key];
      if (number === undefined) continue;
      const same = folded(String(number));
      const known = found.get(same);
      found.set(same, { number: known?.number ?? String(number), places: [...(known?.places ?? []), position + 1] });
    }
    return [...found.values()]
      .filter(({ places }) => places.length > 1)
      .map(
        ({ number, places }) =>
          `${word}: lines ${places.slice(0, -1).join(", ")} and ${String(places.at(-1))} of the table on the sheet ${sheet} have the number ${number}. Renumber all but one, so that nothing goes to the wrong one.`,
      );
  });
}
