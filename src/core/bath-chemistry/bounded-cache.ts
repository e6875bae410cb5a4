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
