import { makeStyles, tokens } from "@fluentui/react-components";

import { countOf } from "../../../advice/wording/figure-words.ts";
import { dayWords, momentWords } from "../../../advice/wording/moments.ts";
import type { UnitSystem } from "../../../core/units/unit-system.ts";
import type { RowValue } from "../../../joblog/model/definition.ts";
import { headerOf } from "../../../joblog/model/headers.ts";
import { usePageStyles } from "../../controls/use-page-styles.ts";
import { type AdoptTable, columnsOf, kindOf } from "../adopt-kinds.ts";
import type { Adoption } from "../adopt-rows.ts";
import type { DoubtAnswers } from "../doubt-kinds.ts";
import { AdoptDoubts } from "./adopt-doubts.tsx";

const useStyles = makeStyles({
  scroll: { overflowX: "auto", maxWidth: "100%" },
  table: {
    borderCollapse: "collapse",
    fontSize: tokens.fontSizeBase200,
    "& th, & td": {
      padding: `${tokens.spacingVerticalXS} ${tokens.spacingHorizontalS}`,
      textAlign: "left",
      whiteSpace: "nowrap",
      borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
    },
  },
  listed: { maxHeight: "50vh", overflowY: "auto" },
});

/** Rows shown of many; all of them are written. */
const rowsShown = 20;

function shown(value: RowValue | undefined, type: string): string {
  if (value === undefined) return "";
  if (typeof value !== "number" || !type.startsWith("date")) return String(value);
  return type === "date" ? dayWords(value) : momentWords(value);
}

/** What will be written, and every row that will not be, with the reason. */
export function AdoptCheckStep({
  adoption,
  table,
  system,
  doubts,
  onDoubts,
}: {
  readonly adoption: Adoption;
  readonly table: AdoptTable;
  readonly system: UnitSystem;
  readonly doubts: DoubtAnswers;
  /** Absent once writing has begun: what was asked is settled then. */
  readonly onDoubts?: (doubts: DoubtAnswers) => void;
}): React.JSX.Element {
  const page = usePageStyles();
  const styles = useStyles();
  const { taken, listed, asked, before } = adoption;
  const columns = columnsOf(kindOf(table)).filter(({ id }) => taken.some(({ cells }) => cells[id] !== undefined));
  const added = before.flatMap((one) => {
    if (one.table === "stockBalance") return [];
    return one.table === "claims" ? `claim ${String(one.row.claim)}` : `bath ${String(one.row.bath)}`;
  });
  return (
    <>
      <p
        role="status"
        className={page.section}
      >{`${countOf(taken.length, "row")} can be taken, ${String(listed.length)} cannot.`}</p>
      {onDoubts === undefined ? null : <AdoptDoubts asked={asked} doubts={doubts} onDoubts={onDoubts} />}
      {added.length === 0 ? null : <p>{`Added to the log first: ${added.join(", ")}.`}</p>}
      {listed.length === 0 ? null : (
        <section aria-label="Rows that cannot be taken" className={page.page}>
          <h3 className={page.section}>Rows that cannot be taken</h3>
          <p className={page.quiet}>Correct them in your sheet and read it again, or leave them out.</p>
          <div className={styles.listed} tabIndex={0} role="group" aria-label="Row by row">
            <ul className={page.list}>
              {listed.map(({ number, why }, index) => (
                <li key={index}>{`Row ${String(number)}: ${why.join("; ")}`}</li>
              ))}
            </ul>
          </div>
        </section>
      )}
      {taken.length === 0 ? null : (
        <section aria-label="Rows as they will stand in the log" className={page.page}>
          <h3 className={page.section}>As they will stand in the log</h3>
          <div className={styles.scroll} tabIndex={0} role="group" aria-label="Rows">
            <table className={styles.table}>
              <thead>
                <tr>
                  <th scope="col">Row</th>
                  {columns.map((column) => (
                    <th key={column.id} scope="col">
                      {headerOf(column, system)}
                    </th>
                  ))}
                </tr>
              </thead>
              <tbody>
                {taken.slice(0, rowsShown).map(({ number, cells }, index) => (
                  <tr key={index}>
                    <th scope="row">{number}</th>
                    {columns.map(({ id, type }) => (
                      <td key={id}>{shown(cells[id], type)}</td>
                    ))}
                  </tr>
                ))}
              </tbody>
            </table>
          </div>
          {taken.length > rowsShown ? (
            <p className={page.quiet}>{`And ${countOf(taken.length - rowsShown, "row")} more.`}</p>
          ) : null}
        </section>
      )}
    </>
  );
}
