import { useContext } from "react";

import type { Finding } from "../../advice/finding.ts";
import { waitingSentence } from "../../advice/waiting.ts";
import { FiguresContext } from "../frame/figures-context.ts";

interface WorkedOut<Answer> {
  readonly answer: Answer;
  /** What is said in place of the answer as long as the sheet does not show the figures that it rests on. */
  readonly waiting: string | undefined;
}

/** What rests on figures of the log. */
export function useWorkedOut<Answer>(work: () => Answer): WorkedOut<Answer> {
  const { noting, rootOf } = useContext(FiguresContext);
  const { answer, unlike } = noting(work);
  return { answer, waiting: unlike.length === 0 ? undefined : waitingSentence(unlike, rootOf) };
}

/** Advice waits for its figures; where there is none, nothing has to. */
export function findingsOr(waiting: string | undefined, findings: readonly Finding[]): readonly Finding[] {
  return waiting === undefined || findings.length === 0 ? findings : [{ tone: "plain", text: waiting }];
}
