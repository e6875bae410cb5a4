import { Button } from "@fluentui/react-components";
import { useState } from "react";

import type { UnlikeCell } from "../../advice/unlike-cells.ts";
import { typedOverWords } from "../../advice/waiting.ts";
import { LongWorkView } from "../controls/long-work-view.tsx";
import { ProblemBar } from "../controls/problem-bar.tsx";
import { useLongWork } from "../controls/use-long-work.ts";
import { usePageStyles } from "../controls/use-page-styles.ts";
import { PutBackButton } from "../settle/settle-card.tsx";
import { type Mended, repairLog } from "./mend-log.ts";
import { MendReport } from "./mend-report.tsx";

interface Props {
  /** Why one would repair, said above the button; null where there is no reason any more. */
  readonly children: React.ReactNode;
  readonly onRepaired: () => Promise<void>;
}

/** Writes the log's formulas anew and tells what that replaced. */
function RepairView({ children, onRepaired }: Props): React.JSX.Element | null {
  const page = usePageStyles();
  const work = useLongWork();
  const [report, setReport] = useState<Mended>();
  const Icon = repairLog.icon;
  const close = async (): Promise<void> => {
    await onRepaired();
    setReport(undefined);
  };
  if (report !== undefined) return <MendReport report={report} onClose={close} />;
  if (work.doing !== undefined) return <LongWorkView {...work} doing={work.doing} />;
  if (children === null) return null;
  return (
    <section className={page.page} aria-label="Repair formulas">
      {children}
      {work.problem === undefined ? null : <ProblemBar problem={work.problem} />}
      <Button
        size="large"
        icon={<Icon />}
        className={page.big}
        onClick={() =>
          void work.start("Repairing formulas", async (long) => {
            setReport(await repairLog.run(undefined, long));
          })
        }
      >
        {repairLog.name}
      </Button>
    </section>
  );
}

/** Formulas that show #NAME? though the functions are there: what Excel stored while it did not know them. */
export function UnknownFunctions({ onRepaired }: Pick<Props, "onRepaired">): React.JSX.Element {
  const page = usePageStyles();
  return (
    <RepairView onRepaired={onRepaired}>
      <div role="status" className={page.caution}>
        Some cells of the log show #NAME?: Excel did not know the BATH functions when it stored them. Repair rewrites
        the formulas and leaves your entries alone.
      </div>
    </RepairView>
  );
}

/** A cell that was typed over, named; the button puts it right. Stays for its report once the cell is right again. */
export function TypedOver({
  cell,
  onRepaired,
}: Pick<Props, "onRepaired"> & { readonly cell: UnlikeCell | undefined }): React.JSX.Element {
  const page = usePageStyles();
  if (cell?.settledBath !== undefined)
    return (
      <section className={page.page} aria-label="Settled bath">
        <div role="status" className={page.caution}>
          {typedOverWords(cell)}
        </div>
        <PutBackButton bath={cell.settledBath} refresh={onRepaired} />
      </section>
    );
  return (
    <RepairView onRepaired={onRepaired}>
      {cell === undefined ? null : (
        <div role="status" className={page.caution}>
          {`${typedOverWords(cell)} Repair rewrites every formula in the log and lists what it replaced. Your entries stay.`}
        </div>
      )}
    </RepairView>
  );
}

/** For a log whose formulas were typed over: nothing in the cells' figures shows that. */
export function TypedOverFormulas({ onRepaired }: Pick<Props, "onRepaired">): React.JSX.Element {
  const page = usePageStyles();
  return (
    <RepairView onRepaired={onRepaired}>
      <p className={page.quiet}>
        Was something typed over a formula? Repair rewrites every formula in the log and lists what it replaced. Your
        entries stay.
      </p>
    </RepairView>
  );
}
