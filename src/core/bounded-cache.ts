/** Remembers the answers to the last few different questions; a log asks the same ones row after row. */
export function rememberingLast<Question, Answer>(
  count: number,
  same: (first: Question, second: Question) => boolean,
  answer: (question: Question) => Answer,
): (question: Question) => Answer {
  const kept: { readonly question: Question; readonly answer: Answer }[] = [];
  return (question) => {
    const known = kept.find((one) => same(one.question, question));
    if (known !== undefined) return known.answer;
    const fresh = answer(question);
    kept.unshift({ question, answer: fresh });
    kept.length = Math.min(kept.length, count);
    return fresh;
  };
}

/** The same by a key, for answers that are asked for often and soon again; the oldest gives way. */
export function rememberingKeys<Question, Answer>(
  count: number,
  keyOf: (question: Question) => string,
  answer: (question: Question) => Answer,
): (question: Question) => Answer {
  const kept = new Map<string, Answer>();
  return (question) => {
    const key = keyOf(question);
    const known = kept.get(key);
    if (known !== undefined) return known;
    const fresh = answer(question);
    const [oldest] = kept.keys();
    if (kept.size >= count && oldest !== undefined) kept.delete(oldest);
    kept.set(key, fresh);
    return fresh;
  };
}
