import { folded } from "./same-text.ts";

/** A longer number is a bar code or a slip, and nothing to count on from. */
const numbered = /^(|.*\D)(\d{1,9})$/;

/** The next `count` running numbers after those that are taken, in the style of the highest one: after R009 comes R010. */
export function numbersAfter(taken: readonly string[], letter: string, count: number): readonly string[] {
  let prefix = letter;
  let digits = 3;
  let highest = 0;
  for (const id of taken) {
    const parts = numbered.exec(id);
    const value = Number(parts?.[2] ?? 0);
    if (parts === null || value < highest) continue;
    highest = value;
    prefix = parts[1] ?? prefix;
    digits = (parts[2] ?? "").length;
  }
  return Array.from({ length: count }, (_, index) => prefix + String(highest + 1 + index).padStart(digits, "0"));
}

/**
 * The numbers wanted, or new ones in place of those that are taken: between the moment when a form proposed a number
 * and the moment when it is written, another person may have used it.
 */
export function freeNumbers(
  wanted: readonly (string | undefined)[],
  taken: readonly string[],
  letter: string,
): readonly (string | undefined)[] {
  const used = new Set(taken.map(folded));
  const inUse = [...taken, ...wanted.filter((id) => id !== undefined)];
  return wanted.map((id) => {
    if (id === undefined) return undefined;
    const free = used.has(folded(id)) ? (numbersAfter(inUse, letter, 1)[0] ?? id) : id;
    used.add(folded(free));
    inUse.push(free);
    return free;
  });
}
