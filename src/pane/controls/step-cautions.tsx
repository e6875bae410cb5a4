import { makeStyles, mergeClasses, tokens } from "@fluentui/react-components";

import { cautionsOfForm } from "../../core/safety/caution-places.ts";
import { usePageStyles } from "./use-page-styles.ts";

const useStyles = makeStyles({
  folded: { paddingBottom: 0 },
  short: { margin: 0 },
  summary: {
    cursor: "pointer",
    padding: `${tokens.spacingVerticalM} 0`,
    fontWeight: tokens.fontWeightSemibold,
  },
  list: { paddingBottom: tokens.spacingVerticalM },
});

interface Props {
  /** The form or view whose cautions these are. */
  readonly of: string;
  /** What this step minds besides, in words of its own. */
  readonly own?: string | undefined;
}

/** The cautions of a step: short, so that the fields stay in sight; in full when opened. */
export function StepCautions({ of, own }: Props): React.JSX.Element | null {
  const page = usePageStyles();
  const styles = useStyles();
  const said = cautionsOfForm(of);
  if (said === undefined) return own === undefined ? null : <p className={page.caution}>{own}</p>;
  const short = said.first.map((one) => one.short);
  return (
    <div className={mergeClasses(page.caution, styles.folded)}>
      <p className={styles.short}>{[...(own === undefined ? [] : [own]), ...short].join(" ")}</p>
      <details>
        <summary className={styles.summary}>All cautions of this step</summary>
        <ul className={mergeClasses(page.list, styles.list)}>
          {said.all.map(({ text }) => (
            <li key={text}>{text}</li>
          ))}
        </ul>
      </details>
    </div>
  );
}
