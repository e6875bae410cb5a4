/**
 * Memoizes a function: a log asks the same questions row after row. The answers to the last `count` different questions
 * are kept, and never more than twice as many: those that were not asked for while `count` others were go together, so
 * that an answer given again costs one look into a Map. Questions of one key must have one answer; what throws is asked anew.
 */
export function memoize<Question, Answer>(
  count: number,
  keyOf: (question: Question) => string,
  answer: (question: Question) => Answer,
): (question: Question) => Answer {
  let recent = new Map<string, Answer>();
  let earlier = new Map<string, Answer>();
  return (question) => {
    const key = keyOf(question);
    const known = recent.get(key);
    if (known !== undefined) return known;
    const found = earlier.get(key) ?? answer(question);
    if (recent.size >= count) {
      earlier = recent;
      recent = new Map();
    }
    recent.set(key, found);
    return found;
  };
}
