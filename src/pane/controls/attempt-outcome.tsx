import { ProblemBar } from "./problem-bar.tsx";
import type { Attempt } from "./use-attempt.ts";
import { usePageStyles } from "./use-page-styles.ts";

/** What came of a button's work, said at once. */
export function AttemptOutcome({ attempt }: { readonly attempt: Attempt }): React.JSX.Element {
  const page = usePageStyles();
  return (
    <>
      <p role="status" className={page.quiet} hidden={attempt.said === ""}>
        {attempt.said}
      </p>
      {attempt.failure === undefined ? null : <ProblemBar problem={attempt.failure} />}
    </>
  );
}
