import { Button } from "@fluentui/react-components";
import { useRef, useState } from "react";

import { handsFileOver } from "../../excel/open-file.ts";
import { AttemptOutcome } from "../controls/attempt-outcome.tsx";
import { useAttempt } from "../controls/use-attempt.ts";
import { usePageStyles } from "../controls/use-page-styles.ts";
import { openHandOff } from "./open-hand-off.ts";

/** The whole log for the adjuster or the file, frozen. */
export function HandOffCard(): React.JSX.Element {
  const page = usePageStyles();
  const attempt = useAttempt();
  const Icon = openHandOff.icon;
  const input = useRef<HTMLInputElement>(null);
  const [isHandedOver] = useState(handsFileOver);
  const open = async (saved?: File): Promise<string> => {
    await openHandOff.run(saved);
    return "The copy is made. Save it under a name of its own; this log stays as it is.";
  };
  return (
    <section className={page.page} aria-label="Hand-off copy">
      <div>
        <h3 className={page.section}>Hand-off copy</h3>
        <p className={page.quiet}>
          All sheets with their figures and no formula: what was worked out no longer changes.
        </p>
        {isHandedOver ? null : (
          <p className={page.quiet}>
            This Excel does not hand the workbook to add-ins. Download it (File, Create a Copy, Download a Copy), then
            choose that file here.
          </p>
        )}
      </div>
      <input
        ref={input}
        type="file"
        accept=".xlsx"
        aria-label="Downloaded workbook"
        hidden
        onChange={(event) => {
          const saved = event.target.files?.[0];
          event.target.value = "";
          if (saved !== undefined) void attempt.start(() => open(saved));
        }}
      />
      <Button
        size="large"
        icon={<Icon />}
        className={page.big}
        disabled={attempt.busy}
        onClick={() => {
          if (isHandedOver) void attempt.start(() => open());
          else input.current?.click();
        }}
      >
        {attempt.busy ? "Making the copy…" : openHandOff.name}
      </Button>
      <AttemptOutcome attempt={attempt} />
    </section>
  );
}
