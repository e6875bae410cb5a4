import { makeStyles } from "@fluentui/react-components";

import { countOf } from "../../../advice/wording/figure-words.ts";
import { usePageStyles } from "../../controls/use-page-styles.ts";
import type { AskedDoubt } from "../adopt-rows.ts";
import { type DoubtAnswers, doubtKinds } from "../doubt-kinds.ts";
import { pickedDoubt } from "../picked-answers.ts";
import { Pick } from "./adopt-fields.tsx";

const useStyles = makeStyles({ rows: { maxHeight: "30vh", overflowY: "auto" } });

/** What the forms would ask, once for each kind, with every row that it is about. */
export function AdoptDoubts({
  asked,
  doubts,
  onDoubts,
}: {
  readonly asked: readonly AskedDoubt[];
  readonly doubts: DoubtAnswers;
  readonly onDoubts: (doubts: DoubtAnswers) => void;
}): React.JSX.Element | null {
  const page = usePageStyles();
  const styles = useStyles();
  if (asked.length === 0) return null;
  return (
    <section aria-label="Is this right?" className={page.page}>
      <h3 className={page.section}>Is this right?</h3>
      {asked.map(({ kind, rows }) => (
        <div key={kind} className={page.page}>
          <Pick
            label={`${doubtKinds[kind]}: ${countOf(rows.length, "row")}`}
            value={doubts[kind] ?? ""}
            none="Not answered: rows are not taken"
            options={
              kind === "twice"
                ? [
                    { value: "leave out", words: "One event written twice: take it once" },
                    { value: "take", words: "Two events: take both" },
                  ]
                : [
                    { value: "take", words: "Right: take these rows" },
                    { value: "leave out", words: "Not right: leave these rows out" },
                  ]
            }
            onPick={(word) => {
              onDoubts({ ...doubts, [kind]: pickedDoubt(word) });
            }}
          />
          <div className={styles.rows} tabIndex={0} role="group" aria-label={`${doubtKinds[kind]}, row by row`}>
            <ul className={page.list}>
              {rows.map(({ number, text }, index) => (
                <li key={index}>{`Row ${String(number)}: ${text}`}</li>
              ))}
            </ul>
          </div>
        </div>
      ))}
    </section>
  );
}
