import { Button } from "@fluentui/react-components";
import { useState } from "react";

import type { LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import { AttemptOutcome } from "../controls/attempt-outcome.tsx";
import { ChoiceField } from "../controls/choice-field.tsx";
import { useAttempt } from "../controls/use-attempt.ts";
import { usePageStyles } from "../controls/use-page-styles.ts";
import { textsOf } from "../record/fields-of.ts";
import { showStatement } from "./show-statement.ts";

/** One claim's chemistry, pieces and share of cost on a page of its own. */
export function StatementCard({ log }: { readonly log: LogSnapshot }): React.JSX.Element | null {
  const page = usePageStyles();
  const claims = textsOf(log, "claims", "claim");
  const [claim, setClaim] = useState(String(log.fields.statementClaim ?? claims[0] ?? ""));
  const attempt = useAttempt();
  if (claims.length === 0) return null;
  const Icon = showStatement.icon;
  const show = async (): Promise<string> => {
    await showStatement.run({ log, claim });
    return `The sheet in front is the statement of claim ${claim}. Print it from there.`;
  };
  return (
    <section className={page.page} aria-label="Statement">
      <h3 className={page.section}>Claim statement</h3>
      <ChoiceField label="Claim" choices={claims} value={claim} onChange={setClaim} />
      <Button
        size="large"
        icon={<Icon />}
        className={page.big}
        disabled={attempt.busy}
        onClick={() => {
          void attempt.start(show);
        }}
      >
        {showStatement.name}
      </Button>
      <AttemptOutcome attempt={attempt} />
    </section>
  );
}
