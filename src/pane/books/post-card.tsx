import { Button, Field } from "@fluentui/react-components";
import { Input } from "@fluentui/react-input";
import { useState } from "react";

import { bathIds } from "../../advice/bath-values.ts";
import { bathPosting, otherPosting, type Posting, reversalOf, standingPostings } from "../../advice/books/posting.ts";
import type { LogContext } from "../../advice/log-context.ts";
import { money } from "../../advice/wording/figures.ts";
import { AttemptOutcome } from "../controls/attempt-outcome.tsx";
import { ChoiceField } from "../controls/choice-field.tsx";
import { useAttempt } from "../controls/use-attempt.ts";
import { useControlStyles } from "../controls/use-control-styles.ts";
import { usePageStyles } from "../controls/use-page-styles.ts";
import { writeBooks } from "./write-books.ts";

export interface BooksCardProps {
  readonly context: LogContext;
  readonly initials: string;
  readonly refresh: () => Promise<void>;
}

const noBath = "costs of no bath";

const debitOf = (posting: Posting): number =>
  "lines" in posting ? posting.lines.reduce((sum, { debit }) => sum + (typeof debit === "number" ? debit : 0), 0) : 0;

/** Posts a bath that was changed out, or takes a posting back by counter lines. */
export function PostCard({ context, initials, refresh }: BooksCardProps): React.JSX.Element {
  const page = usePageStyles();
  const { control } = useControlStyles();
  const { log, now } = context;
  const [what, setWhat] = useState(context.bath ?? noBath);
  const [why, setWhy] = useState("");
  const attempt = useAttempt();
  const bath = what === noBath ? undefined : what;
  const poster = { initials, now };
  const [stands] = standingPostings(log, bath);
  const plan =
    stands === undefined
      ? bath === undefined
        ? otherPosting(log, poster)
        : bathPosting(log, bath, poster)
      : reversalOf(log, stands, why, poster);
  const codeless =
    "lines" in plan && stands === undefined
      ? [...new Set(plan.lines.flatMap(({ code, use }) => (code === undefined ? [String(use)] : [])))]
      : [];
  const write = async (): Promise<string> => {
    if (!("lines" in plan)) return "";
    await writeBooks.run({ rows: plan.lines.map((row) => ({ table: "journal", row })) });
    await refresh();
    setWhy("");
    const [first] = plan.lines;
    return stands === undefined
      ? `Posted as ${String(first?.posting ?? "")}: ${money(debitOf(plan))} on each side.`
      : `${stands} is reversed by ${String(first?.posting ?? "")}. It can be posted again.`;
  };
  return (
    <section className={page.page} aria-label="Posting">
      <ChoiceField label="What to post" choices={[...bathIds(log), noBath]} value={what} onChange={setWhat} />
      {stands === undefined ? null : (
        <>
          <p
            className={page.quiet}
          >{`Posted as ${stands}. A change since then needs a reversal, then a new posting.`}</p>
          <Field label="Why it is reversed">
            <Input
              className={control}
              size="large"
              value={why}
              onChange={(_, { value }) => {
                setWhy(value);
              }}
            />
          </Field>
        </>
      )}
      {"refused" in plan ? <p className={page.quiet}>{plan.refused}</p> : null}
      {codeless.length === 0 ? null : (
        <p className={page.quiet}>{`No account code on the sheet Shop for ${codeless.join(", ")}: posted without.`}</p>
      )}
      {initials === "" ? <p className={page.quiet}>Type your initials: the journal names who posted.</p> : null}
      <Button
        appearance="primary"
        size="large"
        className={page.big}
        disabled={attempt.busy || initials === "" || "refused" in plan}
        onClick={() => {
          void attempt.start(write);
        }}
      >
        {attempt.busy ? "Writing…" : stands === undefined ? `Post ${money(debitOf(plan))}` : `Reverse ${stands}`}
      </Button>
      <AttemptOutcome attempt={attempt} />
    </section>
  );
}
