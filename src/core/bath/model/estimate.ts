import { DomainError } from "../../limits/domain-error.ts";
import { median } from "../../numeric/median.ts";

/** A best figure and the range that the unknowns leave. */
export interface Estimate {
  readonly low: number;
  readonly best: number;
  readonly high: number;
}

/**
 * From the answers of each candidate, one list of answers for each: the best figure is the median over
 * candidates of the middle of each list, the range spans all answers.
 */
export function estimateFrom(answers: readonly (readonly number[])[]): Estimate {
  const middles = answers.map((list) => list.reduce((sum, value) => sum + value, 0) / list.length);
  const all = answers.flat();
  return { low: Math.min(...all), best: median(middles), high: Math.max(...all) };
}

/** The answers of those questions that have one; throws the first refusal when none has. */
export function answersOf<Question, Answer>(
  questions: readonly Question[],
  answer: (question: Question) => Answer,
): readonly Answer[] {
  const answers: Answer[] = [];
  let refusal: DomainError | undefined;
  for (const question of questions) {
    try {
      answers.push(answer(question));
    } catch (error) {
      refusal ??= noAnswer(error);
    }
  }
  if (answers.length === 0 && refusal !== undefined) throw refusal;
  return answers;
}

/** The answers to a question, or none where it has no answer. */
export function answersIfAny<Answer>(ask: () => readonly Answer[]): readonly Answer[] {
  try {
    return ask();
  } catch (error) {
    noAnswer(error);
    return [];
  }
}

/** Passes on any error but the refusal that a question has no answer. */
function noAnswer(error: unknown): DomainError {
  if (error instanceof DomainError && error.refusal === "no-answer") return error;
  throw error;
}
