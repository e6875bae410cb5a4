import { Button } from "@fluentui/react-components";
import { useState } from "react";

import { rowFacts } from "../../advice/bath-facts.ts";
import type { LogContext } from "../../advice/log-context.ts";
import type { LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import { costStanding } from "../../joblog/model/words.ts";
import { BooksView } from "../books/books-view.tsx";
import { useFocusOnShow } from "../controls/use-focus-on-show.ts";
import { usePageStyles } from "../controls/use-page-styles.ts";
import { useWorkedOut } from "../controls/use-worked-out.ts";
import { EntryFormView } from "../record/entry-form-view.tsx";
import { costLineEntry } from "../record/forms/cost-line/cost-line-entry.ts";
import type { LastEntry } from "../record/take-back.ts";
import { TakeBackButton } from "../record/take-back-button.tsx";
import { BathHistory } from "./bath-history.tsx";
import { HandOffCard } from "./hand-off-card.tsx";
import { ShareCard } from "./share-card.tsx";
import { shareResult } from "./share-result.ts";
import { ShareTable } from "./share-table.tsx";
import { StatementCard } from "./statement-card.tsx";

interface Props {
  readonly context: LogContext;
  readonly refresh: () => Promise<void>;
}

interface PageProps extends Props {
  /** The bath whose shares are shown. */
  readonly shown: string | undefined;
  readonly onBath: (bath: string) => void;
  readonly recorded: LastEntry | undefined;
  readonly returned: boolean;
  readonly onCostLine: () => void;
  readonly onTakenBack: (entry: LastEntry) => Promise<void>;
}

function ClaimsPage({
  context,
  refresh,
  shown,
  onBath,
  recorded,
  returned,
  onCostLine,
  onTakenBack,
}: PageProps): React.JSX.Element {
  const page = usePageStyles();
  const heading = useFocusOnShow<HTMLHeadingElement>(returned);
  const { log } = context;
  const { answer: result, waiting } = useWorkedOut(() => (shown === undefined ? undefined : shareResult(log, shown)));
  const Icon = costLineEntry.icon;
  return (
    <section className={page.page} aria-label="Claims">
      <div>
        <h2 ref={heading} tabIndex={-1} className={page.title}>
          Who pays for a bath
        </h2>
        <p className={page.quiet}>The log prices concentrate and water; add what else the bath cost.</p>
      </div>
      {recorded === undefined ? null : (
        <>
          <p role="status" className={page.quiet}>{`Recorded: ${recorded.what}.`}</p>
          <TakeBackButton entry={recorded} onTakenBack={onTakenBack} />
        </>
      )}
      {shown === undefined ? (
        <p className={page.quiet}>No bath is in the log yet. Record a charge first.</p>
      ) : (
        <ShareCard log={log} bath={shown} onBath={onBath} refresh={refresh} />
      )}
      {waiting === undefined ? null : <p className={page.quiet}>{waiting}</p>}
      {result === undefined || waiting !== undefined ? null : <ShareTable result={result} />}
      <Button size="large" icon={<Icon />} className={page.big} onClick={onCostLine}>
        Add a cost line
      </Button>
      {result === undefined ? null : <BathHistory log={log} bath={result.bath} />}
      <StatementCard log={log} system={context.system} />
      <HandOffCard />
      <BooksView context={context} refresh={refresh} />
    </section>
  );
}

/** The first bath whose cost is not placed to the cent. */
function firstOpen({ rows }: LogSnapshot): string | undefined {
  return rows.baths
    .map(rowFacts)
    .find((bath) => bath.text("costState")?.startsWith(costStanding.provisional) === true)
    ?.text("bath");
}

/** Cost by claim to the cent, what nobody bears yet, and the papers for the claim's file. */
export function ClaimsView({ context, refresh }: Props): React.JSX.Element {
  const [open, setOpen] = useState(false);
  const [recorded, setRecorded] = useState<LastEntry>();
  const [taken, setTaken] = useState<LastEntry>();
  const [returned, setReturned] = useState(false);
  const [chosen, setChosen] = useState<string>();
  const shown = chosen ?? firstOpen(context.log) ?? context.bath;
  const close = (): void => {
    setTaken(undefined);
    setReturned(true);
    setOpen(false);
  };
  if (!open) {
    return (
      <ClaimsPage
        context={context}
        refresh={refresh}
        shown={shown}
        onBath={setChosen}
        recorded={recorded}
        returned={returned}
        onCostLine={() => {
          setOpen(true);
        }}
        onTakenBack={async (entry) => {
          await refresh();
          setRecorded(undefined);
          setTaken(entry);
          setOpen(true);
        }}
      />
    );
  }
  return (
    <EntryFormView
      form={costLineEntry}
      context={{ ...context, ...(shown === undefined ? {} : { bath: shown }) }}
      reopened={taken?.values}
      back="Claims"
      onBack={close}
      onOpen={close}
      onRecorded={(entry) => {
        void refresh().then(() => {
          setRecorded(entry);
          close();
        });
      }}
    />
  );
}
