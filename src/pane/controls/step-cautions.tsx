import { makeStyles, mergeClasses, tokens } from "@fluentui/react-components";
import { useContext } from "react";

import { cautionsOfForm } from "../../core/safety/caution-places.ts";
import { CautionsContext } from "../frame/cautions-today.ts";
import { usePageStyles } from "./use-page-styles.ts";

const useStyles = makeStyles({
  folded: { paddingTop: 0, paddingBottom: 0 },
  summary: {
    cursor: "pointer",
    padding: `${tokens.spacingVerticalM} 0`,
    fontWeight: tokens.fontWeightSemibold,
  },
  again: { margin: 0, paddingBottom: tokens.spacingVerticalM },
  list: { paddingBottom: tokens.spacingVerticalM },
});

interface Props {
  /** The form or view whose cautions these are. */
  readonly of: string;
  /** What this step minds besides, in words of its own. */
  readonly own?: string | undefined;
}

/** The cautions of a step in their short form, so that the fields stay in sight; folded from the second time on each day. */
export function ShortCautions({ of, own }: Props): React.JSX.Element | null {
  const page = usePageStyles();
  const styles = useStyles();
  const { wereShown } = useContext(CautionsContext);
  const short = cautionsOfForm(of)?.first.map((one) => one.short) ?? [];
  const said = [...(own === undefined ? [] : [own]), ...short];
  if (said.length === 0) return null;
  if (!wereShown(of)) return <p className={page.caution}>{said.join(" ")}</p>;
  return (
    <details className={mergeClasses(page.caution, styles.folded)}>
      <summary className={styles.summary}>Cautions, shown earlier today</summary>
      <p className={styles.again}>{said.join(" ")}</p>
    </details>
  );
}

/** The same in full, folded: it stands after the fields, so that the first of them is one Tab away. */
export function AllCautions({ of }: Pick<Props, "of">): React.JSX.Element | null {
  const page = usePageStyles();
  const styles = useStyles();
  const said = cautionsOfForm(of);
  if (said === undefined) return null;
  return (
    <details className={mergeClasses(page.caution, styles.folded)}>
      <summary className={styles.summary}>All cautions of this step</summary>
      <ul className={mergeClasses(page.list, styles.list)}>
        {said.all.map(({ text }) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
    </details>
  );
}
