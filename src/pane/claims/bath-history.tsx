import { makeStyles, tokens } from "@fluentui/react-components";

import type { LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import { usePageStyles } from "../controls/use-page-styles.ts";
import { bathHistory } from "./bath-history.ts";

const useStyles = makeStyles({
  list: { margin: 0, paddingLeft: "24px", display: "grid", rowGap: tokens.spacingVerticalS },
  claim: { fontWeight: tokens.fontWeightSemibold },
  words: { display: "block", color: tokens.colorNeutralForeground3 },
});

/** Who shared the bath in what order: what a later complaint asks first. */
export function BathHistory({
  log,
  bath,
}: {
  readonly log: LogSnapshot;
  readonly bath: string;
}): React.JSX.Element | null {
  const styles = useStyles();
  const page = usePageStyles();
  const visits = bathHistory(log, bath);
  if (visits.length === 0) return null;
  return (
    <section className={page.page} aria-label="Claims in this bath">
      <h3 className={page.section}>In the order they came in</h3>
      <ol className={styles.list}>
        {visits.map(({ claim, words }) => (
          <li key={claim}>
            <span className={styles.claim}>{claim}</span>
            <span className={styles.words}>{words}</span>
          </li>
        ))}
      </ol>
    </section>
  );
}
