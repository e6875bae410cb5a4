/** Where the parts of a formula's text end: the index after the last character, or the text's end where a part is not closed. */

/** A text or a sheet's name in the quotes that stand at `start`; two of them in a row mean one inside. */
export function endOfQuoted(formula: string, start: number): number {
  const quote = formula[start];
  let at = start + 1;
  while (at < formula.length) {
    if (formula[at] !== quote) at += 1;
    else if (formula[at + 1] === quote) at += 2;
    else return at + 1;
  }
  return formula.length;
}

/** What stands in the brackets that open at `start`; an apostrophe takes its meaning from the character after it. */
export function endOfBrackets(formula: string, start: number): number {
  let depth = 0;
  for (let at = start; at < formula.length; at += 1) {
    const character = formula[at];
    if (character === "'") at += 1;
    else if (character === "[") depth += 1;
    else if (character === "]") {
      depth -= 1;
      if (depth === 0) return at + 1;
    }
  }
  return formula.length;
}
