import { Button, ProgressBar } from "@fluentui/react-components";
import type { LongWorkState } from "./use-long-work.ts";
import { useFocusOnShow } from "./use-focus-on-show.ts";
import { usePageStyles } from "./use-page-styles.ts";

/** How far long work is, and the way to stop it. Shown while `doing` names the work. */
export function LongWorkView({ doing, progress, cancelling, cancel }: Pick<LongWorkState, "progress" | "cancelling" | "cancel"> & { readonly doing: string }): React.JSX.Element {
  const page = usePageStyles();
  const heading = useFocusOnShow<HTMLHeadingElement>(true);
  const words = cancelling ? "Stopping…" : (progress?.words ?? "Looking at the workbook…");
  return (
    <section className={page.page} aria-label={doing}>
      <h2 ref={heading} tabIndex={-1} className={page.title}>
        {`${doing}…`}
      </h2>
      <ProgressBar
        thickness="large"
        aria-label={doing}
        {...(progress === undefined ? {} : { value: progress.step, max: progress.of, "aria-valuetext": progress.words })}
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
