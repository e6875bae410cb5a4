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
    const seen = new Set<string>();
    const double = new Map<string, string>();
    for (const { cells } of rows) {
      const number = cells[key];
      if (number === undefined) continue;
      const same = folded(String(number));
      if (seen.has(same)) double.set(same, String(number));
      seen.add(same);
    }
    return [...double.values()].map(
      (number) =>
        `${word}: two rows bear the number ${number}. Give one of them another on the sheet ${sheet}, so that nothing goes to the wrong one.`,
    );
  });
}
