import { piecesOf } from "./formulas/formula-pieces.ts";

/** Excel's limit. */
const longest = 31;

/** The typographic apostrophe looks the same and means nothing in a formula. */
const apostrophe = "’";

/**
 * New names for sheets whose names the grid cannot take: it forbids an apostrophe, which ends a sheet's name in a formula.
 * By the old name; sheets that keep theirs have no entry.
 */
export function namesWithoutApostrophe(names: readonly string[]): ReadonlyMap<string, string> {
  const taken = new Set(names.map((name) => name.toLowerCase()));
  const renamed = new Map<string, string>();
  for (const name of names) {
    if (!name.includes("'")) continue;
    const plain = name.replaceAll("'", apostrophe);
    let chosen = plain;
    for (let count = 2; taken.has(chosen.toLowerCase()); count += 1) {
      const ending = ` ${String(count)}`;
      chosen = plain.slice(0, longest - ending.length) + ending;
    }
    taken.add(chosen.toLowerCase());
    renamed.set(name, chosen);
  }
  return renamed;
}

/** A formula, rule or range with sheets called by their new names. */
export function withSheetsRenamed(formula: string, renamed: ReadonlyMap<string, string>): string {
  if (renamed.size === 0 || !formula.includes("'")) return formula;
  const byLower = new Map([...renamed].map(([from, to]) => [from.toLowerCase(), to]));
  const pieces = piecesOf(formula);
  return pieces
    .map(({ kind, text }, index) => {
      if (kind !== "quoted name" || pieces[index + 1]?.text.startsWith("!") !== true) return text;
      const names = text.slice(1, -1).replaceAll("''", "'").split(":");
      return `'${names.map((name) => byLower.get(name.toLowerCase()) ?? name.replaceAll("'", "''")).join(":")}'`;
    })
    .join("");
}
