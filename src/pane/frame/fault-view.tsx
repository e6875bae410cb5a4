import { Button, makeStyles, tokens } from "@fluentui/react-components";

import { useFocusOnShow } from "../controls/use-focus-on-show.ts";
import { usePageStyles } from "../controls/use-page-styles.ts";
import type { Fault } from "./view-boundary.tsx";

const useStyles = makeStyles({
  details: {
    boxSizing: "border-box",
    width: "100%",
    marginTop: tokens.spacingVerticalS,
    fontFamily: tokens.fontFamilyMonospace,
    fontSize: tokens.fontSizeBase200,
    color: tokens.colorNeutralForeground1,
    backgroundColor: tokens.colorNeutralBackground3,
  },
  summary: { minHeight: "44px", alignContent: "center", cursor: "pointer" },
});

interface Props {
  readonly fault: Fault;
  /** What was typed is kept, and the form opens with it. */
  readonly drafted: boolean;
  readonly onAgain: () => void;
  /** Left out where Now itself is at fault. */
  readonly onNow: (() => void) | undefined;
}

/** The program's own words: message, and which functions and components were at work. */
function detailsOf({ error, where }: Fault): string {
  const said = error instanceof Error ? (error.stack ?? `${error.name}: ${error.message}`) : String(error);
  const named = error instanceof Error && !said.includes(error.message) ? `${error.message}\n${said}` : said;
  return `${named}\n${where.trim()}`.trim();
}

/** In place of a view that could not be drawn: what happened, what is safe, and the ways on. */
export function FaultView({ fault, drafted, onAgain, onNow }: Props): React.JSX.Element {
  const page = usePageStyles();
  const styles = useStyles();
  const heading = useFocusOnShow<HTMLHeadingElement>(true);
  return (
    <section className={page.page} aria-label="A fault in Bathsheet">
      <div role="alert" className={page.page}>
        <h2 ref={heading} tabIndex={-1} className={page.title}>
          This view could not be shown
        </h2>
        <p className={page.caution}>
          {`A fault in Bathsheet itself, not in your log. Showing a view writes nothing, so the workbook is as it was.${
            drafted ? " What you typed is kept, but for the last change." : ""
          }`}
        </p>
      </div>
      {onNow === undefined ? null : (
        <Button appearance="primary" size="large" className={page.big} onClick={onNow}>
          Go back to Now
        </Button>
      )}
      <Button size="large" className={page.big} onClick={onAgain}>
        {drafted ? "Open the form again" : "Show it again"}
      </Button>
      <details>
        <summary className={styles.summary}>Details to copy</summary>
        <p className={page.quiet}>
          For whoever looks after Bathsheet. They stay in this pane until you copy them; read them first, since they may
          quote what was typed.
        </p>
        <textarea
          readOnly
          rows={8}
          className={styles.details}
          aria-label="Details of the fault"
          value={detailsOf(fault)}
          onFocus={(event) => {
            event.currentTarget.select();
          }}
        />
      </details>
    </section>
  );
}
