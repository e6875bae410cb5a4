import { Button, Field } from "@fluentui/react-components";
import { Input } from "@fluentui/react-input";
import { useState } from "react";

import { closedMonths } from "../../advice/books/closed-months.ts";
import { closingLine, closingOf } from "../../advice/books/month-closing.ts";
import { serialOf } from "../../advice/wording/moments.ts";
import { AttemptOutcome } from "../controls/attempt-outcome.tsx";
import { useAttempt } from "../controls/use-attempt.ts";
import { useControlStyles } from "../controls/use-control-styles.ts";
import { usePageStyles } from "../controls/use-page-styles.ts";
import type { BooksCardProps } from "./post-card.tsx";
import { writeBooks } from "./write-books.ts";

/** Closes a month, so that no form dates anything in it, or opens it again with the reason. */
export function MonthCard({ context, initials, refresh }: BooksCardProps): React.JSX.Element {
  const page = usePageStyles();
  const { control } = useControlStyles();
  const { log, now } = context;
  const [month, setMonth] = useState(now.slice(0, 7));
  const [why, setWhy] = useState("");
  const attempt = useAttempt();
  const isClosed = closedMonths(log).has(month);
  const plan = isClosed ? undefined : closingOf(log, month, { initials, now });
  const line = isClosed ? closingLine(log, month) : undefined;
  const close = async (): Promise<string> => {
    if (plan === undefined || "refused" in plan) return "";
    await writeBooks.run({ rows: [{ table: "closedMonths", row: plan.row }] });
    await refresh();
    return `${month} is closed: no form takes an entry dated in it.`;
  };
  const reopen = async (): Promise<string> => {
    if (line === undefined) return "";
    const { cells, position } = line;
    await writeBooks.run({
      changes: [
        {
          table: "closedMonths",
          position,
          cells: {
            month: { before: cells.month, after: cells.month },
            closedAt: { before: cells.closedAt, after: cells.closedAt },
            reopenedAt: { before: undefined, after: serialOf(now) },
            reopenedBy: { before: cells.reopenedBy, after: initials },
            why: { before: cells.why, after: why.trim() },
          },
        },
      ],
    });
    await refresh();
    setWhy("");
    return `${month} is open again.`;
  };
  const blocked = initials === "" || (isClosed ? why.trim() === "" : plan === undefined || "refused" in plan);
  return (
    <section className={page.page} aria-label="Month">
      <Field label="Month, such as 2027-03">
        <Input
          className={control}
          size="large"
          value={month}
          onChange={(_, { value }) => {
            setMonth(value.trim());
          }}
        />
      </Field>
      {isClosed ? (
        <Field label="Why it is reopened">
          <Input
            className={control}
            size="large"
            value={why}
            onChange={(_, { value }) => {
              setWhy(value);
            }}
          />
        </Field>
      ) : null}
      {plan !== undefined && "refused" in plan ? <p className={page.quiet}>{plan.refused}</p> : null}
      <Button
        size="large"
        className={page.big}
        disabled={attempt.busy || blocked}
        onClick={() => {
          void attempt.start(isClosed ? reopen : close);
        }}
      >
        {isClosed ? `Reopen ${month}` : `Close ${month}`}
      </Button>
      <AttemptOutcome attempt={attempt} />
    </section>
  );
}
