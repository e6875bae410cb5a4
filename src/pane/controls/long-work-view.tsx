import { Button, makeStyles, ProgressBar } from "@fluentui/react-components";

import { useFocusOnShow } from "./use-focus-on-show.ts";
import type { LongWorkState } from "./use-long-work.ts";
import { usePageStyles } from "./use-page-styles.ts";

/** Chosen colors make the track as dark as the bar: without this, done and to do look the same. */
const useStyles = makeStyles({
  track: {
    "@media screen and (forced-colors: active)": { backgroundColor: "Canvas", outline: "1px solid CanvasText" },
  },
});

/** How far long work is, and the way to stop it. Shown while `doing` names the work. */
export function LongWorkView({
  doing,
  progress,
  cancelling,
  cancel,
}: Pick<LongWorkState, "progress" | "cancelling" | "cancel"> & { readonly doing: string }): React.JSX.Element {
  const page = usePageStyles();
  const styles = useStyles();
  const heading = useFocusOnShow<HTMLHeadingElement>(true);
  const words = cancelling ? "Stopping…" : (progress?.words ?? "Looking at the workbook…");
  return (
    <section className={page.page} aria-label={doing}>
      <h2 ref={heading} tabIndex={-1} className={page.title}>
        {`${doing}…`}
      </h2>
      <ProgressBar
        thickness="large"
        className={styles.track}
        aria-label={doing}
        {...(progress === undefined
          ? {}
          : { value: progress.step, max: progress.of, "aria-valuetext": progress.words })}
      />
      <p role="status" className={page.quiet}>
        {words}
      </p>
      <Button size="large" className={page.big} disabledFocusable={cancelling} onClick={cancel}>
        Cancel
      </Button>
    </section>
  );
}
