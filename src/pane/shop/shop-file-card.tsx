import { Button, makeStyles, tokens } from "@fluentui/react-components";
import { DocumentArrowDownRegular } from "@fluentui/react-icons/svg/document-arrow-down";
import { DocumentArrowUpRegular } from "@fluentui/react-icons/svg/document-arrow-up";
import { useRef, useState } from "react";

import { countOf } from "../../advice/wording/figure-words.ts";
import type { UnitSystem } from "../../core/units/unit-system.ts";
import type { LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import { AttemptOutcome } from "../controls/attempt-outcome.tsx";
import { saveFile } from "../controls/save-file.ts";
import { useAttempt } from "../controls/use-attempt.ts";
import { usePageStyles } from "../controls/use-page-styles.ts";
import { importPlan } from "./import-plan.ts";
import { largestFile, readShopFile, type ShopFileReading } from "./read-shop-file.ts";
import { saveShop } from "./save-shop.ts";
import { shopFile } from "./shop-file.ts";

const useStyles = makeStyles({
  list: { margin: 0, paddingLeft: "20px", overflowWrap: "anywhere", display: "grid", rowGap: tokens.spacingVerticalXS },
});

interface Props {
  readonly log: LogSnapshot;
  readonly system: UnitSystem;
  readonly refresh: () => Promise<void>;
}

function Refusal({ problems }: { readonly problems: readonly string[] }): React.JSX.Element {
  const page = usePageStyles();
  const styles = useStyles();
  return (
    <div role="alert" className={page.caution}>
      <p className={page.quiet}>Nothing was loaded:</p>
      <ul className={styles.list}>
        {problems.map((problem) => (
          <li key={problem}>{problem}</li>
        ))}
      </ul>
    </div>
  );
}

/** The shop's defaults to a file and back; an import shows what it would change before it does. */
export function ShopFileCard({ log, system, refresh }: Props): React.JSX.Element {
  const page = usePageStyles();
  const styles = useStyles();
  const input = useRef<HTMLInputElement>(null);
  const [reading, setReading] = useState<ShopFileReading>();
  const attempt = useAttempt();
  const plan = reading?.read === "shop" ? importPlan(log, reading) : undefined;
  const read = async (file: File): Promise<void> => {
    setReading(readShopFile(file.size > largestFile ? "" : await file.text(), system));
  };
  const take = async (): Promise<string> => {
    if (plan === undefined) return "";
    await saveShop.run(plan.changes);
    setReading(undefined);
    await refresh();
    return `Loaded: ${countOf(plan.lines.length, "change")}.`;
  };
  return (
    <section className={page.page} aria-label="Shop defaults as a file">
      <p className={page.quiet}>
        Limits, tanks, waters, concentrates, people and words that keep a piece out, for the next job’s workbook. Claims
        stay here.
      </p>
      <Button
        size="large"
        icon={<DocumentArrowDownRegular />}
        className={page.big}
        onClick={() => {
          saveFile("shop-defaults.json", JSON.stringify(shopFile(log, system), null, 2), "application/json");
        }}
      >
        Save to a file
      </Button>
      <input
        ref={input}
        type="file"
        accept=".json,application/json"
        hidden
        onChange={(event) => {
          const file = event.target.files?.[0];
          event.target.value = "";
          if (file !== undefined) void read(file);
        }}
      />
      <Button
        size="large"
        icon={<DocumentArrowUpRegular />}
        className={page.big}
        onClick={() => input.current?.click()}
      >
        Load from a file
      </Button>
      {reading?.read === "refused" ? <Refusal problems={reading.problems} /> : null}
      {plan === undefined ? null : (
        <div role="status" className={page.page}>
          <p className={page.quiet}>
            {plan.lines.length === 0
              ? "The file says what the log holds already."
              : "This would change; what the file does not name stays:"}
          </p>
          <ul className={styles.list}>
            {plan.lines.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </div>
      )}
      {plan === undefined || plan.lines.length === 0 ? null : (
        <Button
          appearance="primary"
          size="large"
          className={page.big}
          disabled={attempt.busy}
          onClick={() => {
            void attempt.start(take);
          }}
        >
          {attempt.busy ? "Writing…" : "Apply these changes"}
        </Button>
      )}
      <AttemptOutcome attempt={attempt} />
    </section>
  );
}
