import { Button, makeStyles, tokens } from "@fluentui/react-components";
import { useEffect } from "react";

import { useFocusOnShow } from "../controls/use-focus-on-show.ts";
import { usePageStyles } from "../controls/use-page-styles.ts";
import type { View } from "../frame/view-tabs.tsx";
import { tourSteps } from "./tour-steps.ts";

const useStyles = makeStyles({
  card: {
    display: "grid",
    rowGap: tokens.spacingVerticalS,
    marginBottom: tokens.spacingVerticalL,
    padding: tokens.spacingHorizontalM,
    border: `1px solid ${tokens.colorBrandStroke1}`,
    borderRadius: tokens.borderRadiusMedium,
    backgroundColor: tokens.colorNeutralBackground2,
  },
  text: { margin: 0 },
  buttons: { display: "flex", flexWrap: "wrap", gap: tokens.spacingHorizontalS },
});

interface Props {
  /** Which step is shown; undefined while the tour is only offered. */
  readonly step: number | undefined;
  readonly onStep: (step: number) => void;
  /** The tour is over, or not wanted. */
  readonly onEnd: () => void;
  readonly onView: (view: View) => void;
}

function Step({ step, onStep, onEnd, onView }: Props & { readonly step: number }): React.JSX.Element | null {
  const page = usePageStyles();
  const styles = useStyles();
  const heading = useFocusOnShow<HTMLHeadingElement>(true);
  const shown = tourSteps[step];
  useEffect(() => {
    if (shown !== undefined) onView(shown.view);
    // The step alone decides: a person may look around meanwhile.
  }, [step]);
  if (shown === undefined) return null;
  const isLast = step === tourSteps.length - 1;
  return (
    <section className={styles.card} aria-label="Tour">
      <div className={page.quiet}>{`Step ${String(step + 1)} of ${String(tourSteps.length)}`}</div>
      <h2 ref={heading} tabIndex={-1} className={page.section}>
        {shown.title}
      </h2>
      <p className={styles.text}>{shown.text}</p>
      <div className={styles.buttons}>
        <Button
          appearance="primary"
          size="large"
          className={page.target}
          onClick={() => {
            if (isLast) onEnd();
            else onStep(step + 1);
          }}
        >
          {isLast ? "Done" : "Next"}
        </Button>
        {step === 0 ? null : (
          <Button
            size="large"
            className={page.target}
            onClick={() => {
              onStep(step - 1);
            }}
          >
            Back
          </Button>
        )}
        {isLast ? null : (
          <Button appearance="subtle" size="large" className={page.target} onClick={onEnd}>
            End the tour
          </Button>
        )}
      </div>
    </section>
  );
}

/** The tour's present step, or the offer of one to a person who is new here. */
export function Tour(props: Props): React.JSX.Element {
  const page = usePageStyles();
  const styles = useStyles();
  const { step, onStep, onEnd } = props;
  if (step !== undefined) return <Step key={step} {...props} step={step} />;
  return (
    <section className={styles.card} aria-label="Tour">
      <p className={styles.text}>{`New here? A tour of ${String(tourSteps.length)} steps shows what is where.`}</p>
      <div className={styles.buttons}>
        <Button
          appearance="primary"
          size="large"
          className={page.target}
          onClick={() => {
            onStep(0);
          }}
        >
          Take the tour
        </Button>
        <Button appearance="subtle" size="large" className={page.target} onClick={onEnd}>
          No, thanks
        </Button>
      </div>
    </section>
  );
}
