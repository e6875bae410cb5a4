import { Button } from "@fluentui/react-components";
import { useState } from "react";

import { bathIds } from "../../advice/bath-values.ts";
import type { LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import { shareBases } from "../../joblog/model/words.ts";
import { AttemptOutcome } from "../controls/attempt-outcome.tsx";
import { ChoiceField } from "../controls/choice-field.tsx";
import { FindingsList } from "../controls/findings-list.tsx";
import { useAttempt } from "../controls/use-attempt.ts";
import { usePageStyles } from "../controls/use-page-styles.ts";
import { shareBath } from "./share-bath.ts";
import { basisOf, sharePlan } from "./share-plan.ts";

interface Props {
  readonly log: LogSnapshot;
  readonly bath: string;
  readonly onBath: (bath: string) => void;
  readonly refresh: () => Promise<void>;
}

/** By what a bath is shared out; one button makes the log follow. */
export function ShareCard({ log, bath, onBath, refresh }: Props): React.JSX.Element {
  const page = usePageStyles();
  const [chosen, setChosen] = useState<string>();
  const basis = shareBases.find((one) => one === chosen) ?? basisOf(log, bath) ?? shareBases[0];
  const attempt = useAttempt();
  const { changes, findings } = sharePlan(log, bath, basis);
  const Icon = shareBath.icon;
  const share = async (): Promise<string> => {
    await shareBath.run(changes ?? {});
    await refresh();
    return `Bath ${bath} is shared out by ${basis}.`;
  };
  return (
    <section className={page.page} aria-label="Share out a bath">
      <ChoiceField
        label="Bath"
        choices={bathIds(log)}
        value={bath}
        onChange={(another) => {
          setChosen(undefined);
          onBath(another);
        }}
      />
      <ChoiceField label="Shared by" choices={shareBases} value={basis} onChange={setChosen} />
      <FindingsList findings={findings} />
      {changes === undefined ? null : (
        <Button
          appearance="primary"
          size="large"
          icon={<Icon />}
          className={page.big}
          disabled={attempt.busy}
          onClick={() => {
            void attempt.start(share);
          }}
        >
          {attempt.busy ? "Writing…" : shareBath.name}
        </Button>
      )}
      <AttemptOutcome attempt={attempt} />
    </section>
  );
}
