import { Button } from "@fluentui/react-components";
import { useState } from "react";

import type { UnitSystem } from "../../core/units/unit-system.ts";
import type { LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import { AttemptOutcome } from "../controls/attempt-outcome.tsx";
import { ChoiceField } from "../controls/choice-field.tsx";
import { useAttempt } from "../controls/use-attempt.ts";
import { usePageStyles } from "../controls/use-page-styles.ts";
import { textsOf } from "../record/fields-of.ts";
import { openClaimCopy } from "./open-claim-copy.ts";
import { showStatement } from "./show-statement.ts";

interface Props {
  readonly log: LogSnapshot;
  readonly system: UnitSystem;
}

/** One claim's chemistry, pieces and share of cost on a page of its own, and a copy for who must see no other claim. */
export function StatementCard({ log, system }: Props): React.JSX.Element | null {
  const page = usePageStyles();
  const claims = textsOf(log, "claims", "claim");
  const [claim, setClaim] = useState(String(log.fields.statementClaim ?? claims[0] ?? ""));
  const attempt = useAttempt();
  if (claims.length === 0) return null;
  const Icon = showStatement.icon;
  const CopyIcon = openClaimCopy.icon;
  const show = async (): Promise<string> => {
    await showStatement.run({ log, claim });
    return `The sheet in front is the statement of claim ${claim}. Print it from there.`;
  };
  const copy = async (): Promise<string> => {
    await openClaimCopy.run({ claim, system });
    return `The copy of claim ${claim} is made. Look it through, then save it under a name of its own.`;
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
      <p className={page.quiet}>
        The copy is a workbook of its own for the owner or the adjuster: statement, pieces, loads and the baths’
        readings, without formulas. Other claims are not named in it.
      </p>
      <Button
        size="large"
        icon={<CopyIcon />}
        className={page.big}
        disabled={attempt.busy}
        onClick={() => {
          void attempt.start(copy);
        }}
      >
        {openClaimCopy.name}
      </Button>
      <AttemptOutcome attempt={attempt} />
    </section>
  );
}
