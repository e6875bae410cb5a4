import { Button } from "@fluentui/react-components";
import { repairLog } from "../actions/mend-log.ts";
import { LongWorkView } from "./long-work-view.tsx";
import { ProblemBar } from "./problem-bar.tsx";
import { useLongWork } from "./use-long-work.ts";
import { usePageStyles } from "./use-page-styles.ts";

/** Formulas that show #NAME? though the functions are there: what Excel stored while it did not know them. */
export function RepairView({ onRepaired }: { readonly onRepaired: () => Promise<void> }): React.JSX.Element {
  const page = usePageStyles();
  const work = useLongWork();
  const Icon = repairLog.icon;
  if (work.doing !== undefined) return <LongWorkView {...work} doing={work.doing} />;
  const run = async (): Promise<void> => {
    await work.start("Repairing formulas", async (long) => {
      await repairLog.run(undefined, long);
      await onRepaired();
    });
  };
  return (
    <section className={page.page} aria-label="Repair formulas">
      <div role="status" className={page.caution}>
        Some cells of the log show #NAME?: Excel did not know the BATH functions when it stored them. Repairing writes the formulas anew and leaves your entries alone.
      </div>
      {work.problem === undefined ? null : <ProblemBar problem={work.problem} />}
      <Button size="large" icon={<Icon />} className={page.big} onClick={() => void run()}>
        {repairLog.name}
      </Button>
    </section>
  );
}
