import { Button, Field } from "@fluentui/react-components";
import { Input } from "@fluentui/react-input";
import { useState } from "react";

import { journalCsv } from "../../advice/books/journal-csv.ts";
import type { LogContext } from "../../advice/log-context.ts";
import { saveFile } from "../controls/save-file.ts";
import { useControlStyles } from "../controls/use-control-styles.ts";
import { usePageStyles } from "../controls/use-page-styles.ts";
import { MonthCard } from "./month-card.tsx";
import { PostCard } from "./post-card.tsx";

interface Props {
  readonly context: LogContext;
  readonly refresh: () => Promise<void>;
}

/** What is handed to the shop's own books: postings, their reversal, months, and all of it as a file. */
export function BooksView({ context, refresh }: Props): React.JSX.Element {
  const page = usePageStyles();
  const { control } = useControlStyles();
  const [initials, setInitials] = useState("");
  const { log } = context;
  return (
    <section className={page.page} aria-label="Books">
      <div>
        <h3 className={page.section}>Books</h3>
        <p className={page.quiet}>
          Posting copies amounts to the sheet Journal, where nothing changes them. Account codes come from the sheet
          Shop. Your accountant decides what is booked how.
        </p>
      </div>
      <Field label="Your initials">
        <Input
          className={control}
          size="large"
          value={initials}
          maxLength={10}
          onChange={(_, { value }) => {
            setInitials(value);
          }}
        />
      </Field>
      <PostCard context={context} initials={initials.trim()} refresh={refresh} />
      <MonthCard context={context} initials={initials.trim()} refresh={refresh} />
      {log.rows.journal.length === 0 ? null : (
        <Button
          size="large"
          className={page.big}
          onClick={() => {
            saveFile("journal.csv", journalCsv(log), "text/csv");
          }}
        >
          Save the journal as CSV
        </Button>
      )}
    </section>
  );
}
