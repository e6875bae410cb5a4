import { Button } from "@fluentui/react-components";

import { AttemptOutcome } from "../controls/attempt-outcome.tsx";
import { useAttempt } from "../controls/use-attempt.ts";
import { usePageStyles } from "../controls/use-page-styles.ts";
import { openHandOff } from "./open-hand-off.ts";

/** The whole log for the adjuster or the file, frozen. */
export function HandOffCard(): React.JSX.Element {
  const page = usePageStyles();
  const attempt = useAttempt();
  const Icon = openHandOff.icon;
  const open = async (): Promise<string> => {
    await openHandOff.run(undefined);
    return "The copy is made. Save it under a name of its own; this log stays as it is.";
  };
  return (
    <section className={page.page} aria-label="Hand-off copy">
      <div>
        <h3 className={page.section}>Hand-off copy</h3>
        <p className={page.quiet}>
          All sheets with their figures and no formula: what was worked out no longer changes.
        </p>
      </div>
      <Button
        size="large"
        icon={<Icon />}
        className={page.big}
        disabled={attempt.busy}
        onClick={() => {
          void attempt.start(open);
        }}
      >
        {attempt.busy ? "Making the copy…" : openHandOff.name}
      </Button>
      <AttemptOutcome attempt={attempt} />
    </section>
  );
}
