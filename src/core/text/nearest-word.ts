/**
 * Letters to add, leave out, change or swap with their neighbor to turn one word into the other
 * (optimal string alignment).
 */
export function editDistance(from: string, to: string): number {
  let beforeLast: readonly number[] = [];
  let last: readonly number[] = Array.from({ length: to.length + 1 }, (_, column) => column);
  for (let row = 1; row <= from.length; row += 1) {
    const now = [row];
    for (let column = 1; column <= to.length; column += 1) {
      const same = from[row - 1] === to[column - 1];
      let least = Math.min(
        (last[column] ?? 0) + 1,
        (now[column - 1] ?? 0) + 1,
        (last[column - 1] ?? 0) + (same ? 0 : 1),
      );
      if (row > 1 && column > 1 && from[row - 1] === to[column - 2] && from[row - 2] === to[column - 1]) {
        least = Math.min(least, (beforeLast[column - 2] ?? 0) + 1);
      }
      now.push(least);
    }
    beforeLast = last;
    last = now;
  }
  return last[to.length] ?? 0;
}

/** No known word is longer; what is longer is a sentence, and no slip of the finger. */
const longest = 60;

/** Less than a letter, so that it decides between equals alone. */
const otherFirst = 0.5;

/**
 * The word that was most likely meant: it differs by a third of its letters at most, or begins with
 * what was written. Of two as near it is the one with the same first letter, which people seldom miss: gpg for gpm,
 * not ppm. Case does not matter. Undefined where none is near.
 */
export function nearestWord<Word extends string>(written: string, words: Iterable<Word>): Word | undefined {
  const start = written.trim().toLowerCase();
  if (start.length < 3 || start.length > longest) return undefined;
  let nearest: Word | undefined;
  let least = Math.floor(start.length / 3) + 1;
  let begun: Word | undefined;
  for (const word of words) {
    const candidate = word.toLowerCase();
    if (candidate.startsWith(start)) begun ??= word;
    if (Math.abs(candidate.length - start.length) >= least) continue;
    const distance = editDistance(start, candidate) + (candidate.startsWith(start.charAt(0)) ? 0 : otherFirst);
    if (distance < least) [nearest, least] = [word, distance];
  }
  return nearest ?? begun;
}
