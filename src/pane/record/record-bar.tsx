import { Button, makeStyles, mergeClasses, Spinner, tokens } from "@fluentui/react-components";

import { ProblemBar } from "../controls/problem-bar.tsx";
import { ProblemCount } from "../controls/problem-count.tsx";
import { usePageStyles } from "../controls/use-page-styles.ts";
import type { OpenEntry } from "./use-entry.ts";

const useStyles = makeStyles({
  bar: {
    position: "sticky",
    bottom: 0,
    zIndex: 1,
    display: "grid",
    rowGap: tokens.spacingVerticalS,
    margin: `0 calc(-1 * ${tokens.spacingHorizontalL})`,
    padding: `${tokens.spacingVerticalS} ${tokens.spacingHorizontalL}`,
    backgroundColor: tokens.colorNeutralBackground1,
    borderTop: `1px solid ${tokens.colorNeutralStroke2}`,
  },
});

/** What holds the entry up, and the button that writes it: always in sight, at the lower edge. */
export function RecordBar({
  entry,
  submit,
  verdict,
}: {
  readonly entry: OpenEntry;
  readonly submit: string;
  /** What the entry means, where that has to stay in sight too. */
  readonly verdict?: React.ReactNode;
}): React.JSX.Element {
  const styles = useStyles();
  const page = usePageStyles();
  const { filled, failure, tried, asking, writing } = entry;
  return (
    <div className={styles.bar}>
      {verdict}
      {failure === undefined ? null : <ProblemBar problem={failure} />}
      {tried ? <ProblemCount count={filled.problems.length} /> : null}
      {asking.length === 0 ? null : (
        <ul role="alert" className={mergeClasses(page.caution, page.doubts)}>
          {asking.map((doubt) => (
            <li key={doubt}>{doubt}</li>
          ))}
        </ul>
      )}
      <Button
        type="submit"
        appearance="primary"
        size="large"
        className={page.big}
        disabled={filled.meaning.blocked !== undefined}
        {...(writing ? { icon: <Spinner size="tiny" /> } : {})}
      >
        {writing ? "Writing…" : asking.length > 0 ? "Record it anyway" : submit}
      </Button>
    </div>
  );
}
