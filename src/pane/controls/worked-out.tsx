import { usePageStyles } from "./use-page-styles.ts";
import { useWorkedOut } from "./use-worked-out.ts";

/** What rests on figures of the log; as long as the sheet does not show them, that they are being worked out. */
export function WorkedOut<Answer>({
  of,
  children,
}: {
  readonly of: () => Answer;
  readonly children: (answer: Answer) => React.ReactNode;
}): React.ReactNode {
  const page = usePageStyles();
  const { answer, waiting } = useWorkedOut(of);
  return waiting === undefined ? children(answer) : <p className={page.quiet}>{waiting}</p>;
}
