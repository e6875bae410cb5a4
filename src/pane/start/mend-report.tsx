import { Button } from "@fluentui/react-components";

import type { BuildReport } from "../../excel/build/write-plan.ts";
import { useFocusOnShow } from "../controls/use-focus-on-show.ts";
import { usePageStyles } from "../controls/use-page-styles.ts";
import type { Mended } from "./mend-log.ts";
import { ReplacedList } from "./replaced-list.tsx";

const counted = (count: number, one: string, many: string): string => `${String(count)} ${count === 1 ? one : many}`;

/** New columns by their table, in the order of the log. */
function columnsByTable({
  addedColumns,
}: BuildReport): readonly (readonly [table: string, headers: readonly string[]])[] {
  const tables = [...new Set(addedColumns.map(({ table }) => table))];
  return tables.map((table) => [table, addedColumns.filter((one) => one.table === table).map(({ header }) => header)]);
}

/** What an upgrade or a repair added, rewrote and replaced. */
export function MendReport({
  report,
  onClose,
}: {
  readonly report: Mended;
  readonly onClose: () => Promise<void>;
}): React.JSX.Element {
  const page = usePageStyles();
  const heading = useFocusOnShow<HTMLHeadingElement>(true);
  const { added, addedColumns, renamed, replaced, rewritten, unsettled, shared = [] } = report;
  const found =
    added.length + addedColumns.length + rewritten + shared.length === 0
      ? "Nothing was missing."
      : "Your rows are as they were.";
  return (
    <section className={page.page} aria-label="What was done">
      <h2 ref={heading} tabIndex={-1} className={page.title}>
        The log is up to date
      </h2>
      <p className={page.quiet}>{found}</p>
      {replaced.length === 0 ? null : <ReplacedList replaced={replaced} />}
      <Button appearance="primary" size="large" className={page.big} onClick={() => void onClose()}>
        Go to the log
      </Button>
      <ul className={page.list}>
        {added.length === 0 ? null : <li>{`New sheets: ${added.join(", ")}.`}</li>}
        {renamed.map(({ planned, actual }) => (
          <li key={actual}>{`The sheet ${planned} is named ${actual}, since you have a sheet of that name.`}</li>
        ))}
        {columnsByTable(report).map(([table, headers]) => (
          <li key={table}>{`New in ${table}: ${headers.join("; ")}.`}</li>
        ))}
        {shared.length === 0 ? null : <li>{`New rows in Shares, for loads typed by hand: ${shared.join(", ")}.`}</li>}
        {unsettled.length === 0 ? null : (
          <li>{`Settled baths that follow their formulas again: ${unsettled.join(", ")}. More, Shop, Closed baths settles them anew.`}</li>
        )}
        {rewritten === 0 ? null : <li>{`${counted(rewritten, "formula was", "formulas were")} rewritten.`}</li>}
      </ul>
    </section>
  );
}
