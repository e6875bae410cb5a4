import type { ColumnId } from "../../joblog/formula/log-names.ts";
import type { RowValue } from "../../joblog/model/definition.ts";
import type { AnyRow, LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import { folded, isSameText } from "../../joblog/model/same-text.ts";

export const leftOut = "(left out: it names another claim)";

/** What a claim is known by, beside its reference. */
const known: readonly ColumnId<"claims">[] = ["loss", "insurer", "adjuster", "note", "policy", "owner", "lossAddress"];

/** A letter or two stand in too many words to tell anything. */
const shortest = 3;

const isLetterOrDigit = (character: string | undefined): boolean =>
  character !== undefined && /[\p{L}\p{N}]/u.test(character);

/** Whether the phrase stands in the text, not only as a part of a longer word. */
function holds(text: string, phrase: string): boolean {
  for (let at = text.indexOf(phrase); at >= 0; at = text.indexOf(phrase, at + 1)) {
    if (!isLetterOrDigit(text[at - 1]) && !isLetterOrDigit(text[at + phrase.length])) return true;
  }
  return false;
}

const plain = (value: RowValue | undefined): string =>
  folded(
    String(value ?? "")
      .trim()
      .replaceAll(/\s+/gu, " "),
  );

/** References of claims wherever one is typed, also of a claim that Job does not list. */
function references({ rows }: LogSnapshot): readonly string[] {
  const tables: readonly (readonly AnyRow[])[] = Object.values(rows);
  return tables.flatMap((table) => table.map(({ cells }) => plain(cells["claim"])));
}

/** Tells whether a text names a claim other than this one: its reference, owner, policy and whatever else Job says of it. */
export function othersNamed(log: LogSnapshot, claim: string): (text: string) => boolean {
  const isOwn = (cell: RowValue | undefined): boolean => isSameText(String(cell ?? "").trim(), claim.trim());
  const facts = (own: boolean): readonly string[] =>
    log.rows.claims
      .filter(({ cells }) => isOwn(cells.claim) === own)
      .flatMap(({ cells }) => known.map((id) => plain(cells[id])).filter(({ length }) => length >= shortest));
  const mine = new Set([plain(claim), ...facts(true)]);
  const theirs = new Set([...references(log), ...facts(false)].filter((phrase) => phrase !== "" && !mine.has(phrase)));
  return (text) => {
    const read = plain(text);
    return !mine.has(read) && [...theirs].some((phrase) => holds(read, phrase));
  };
}
