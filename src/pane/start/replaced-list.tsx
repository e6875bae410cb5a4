import type { BuildReport } from "../../excel/build/write-plan.ts";
import { usePageStyles } from "../controls/use-page-styles.ts";

/** What stood typed over formulas and no longer does, so that none of it is lost without a word. */
export function ReplacedList({ replaced }: Pick<BuildReport, "replaced">): React.JSX.Element {
  const page = usePageStyles();
  return (
    <div role="group" aria-label="Typed over formulas">
      <p>Typed over formulas, now worked out again. Note what you still need:</p>
      <ul className={page.list}>
        {replaced.map(({ table, header, row, value }) => (
          <li key={`${table} ${header} ${row}`}>{`${table} ${row}, ${header}: ${value}`}</li>
        ))}
      </ul>
    </div>
  );
}
