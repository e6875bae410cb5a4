import { makeStyles, tokens } from "@fluentui/react-components";

import { FurtherTitle } from "../controls/further-title.tsx";
import { usePageStyles } from "../controls/use-page-styles.ts";
import type { SketchContext } from "./sketch.ts";
import { SketchCard } from "./sketch-card.tsx";
import { sketches } from "./sketches.ts";

const useStyles = makeStyles({ list: { display: "grid", rowGap: tokens.spacingVerticalS } });

/** What-if: figures for a bath that need no entry in the log. */
export function TryView({
  context,
  onMore,
}: {
  readonly context: SketchContext;
  readonly onMore: () => void;
}): React.JSX.Element {
  const page = usePageStyles();
  const styles = useStyles();
  return (
    <section className={page.page} aria-label="Try">
      <FurtherTitle title="Try it out" about="Nothing here is written to the log." onMore={onMore} />
      <div className={styles.list}>
        {sketches.map((sketch) => (
          <SketchCard key={`${sketch.id} ${context.bath ?? ""}`} sketch={sketch} context={context} />
        ))}
      </div>
    </section>
  );
}
