import { Button, Field, makeStyles, mergeClasses, Select, tokens } from "@fluentui/react-components";
import { ArrowRightRegular } from "@fluentui/react-icons/svg/arrow-right";
import { WarningRegular } from "@fluentui/react-icons/svg/warning";
import { useContext } from "react";

import { bathIds } from "../../advice/bath-values.ts";
import { nextStep } from "../../advice/next-step/next-step.ts";
import type { NextStep, Overdue } from "../../advice/next-step/step.ts";
import { trendOf } from "../../advice/trend-points.ts";
import { waitingWords } from "../../advice/waiting.ts";
import type { UnitSystem } from "../../core/units/unit-system.ts";
import type { LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import { useControlStyles } from "../controls/use-control-styles.ts";
import { usePageStyles } from "../controls/use-page-styles.ts";
import { WorkedOut } from "../controls/worked-out.tsx";
import { FiguresContext } from "../frame/figures-context.ts";
import type { EntryId } from "../record/forms.ts";
import { charge, formOfStep, type StepForm } from "../record/step-forms.ts";
import { BathFigures, figuresOf } from "./bath-figures.tsx";
import { ClaimShares, sharesOf } from "./claim-shares.tsx";
import { TrendChart } from "./trend-chart.tsx";
import { useForecast } from "./use-forecast.ts";

const useStyles = makeStyles({
  step: {
    display: "grid",
    rowGap: tokens.spacingVerticalM,
    padding: tokens.spacingHorizontalL,
    borderRadius: tokens.borderRadiusXLarge,
    backgroundColor: tokens.colorBrandBackground2,
    // The frame is drawn only where a contrast theme takes the background away.
    border: "1px solid transparent",
    borderLeft: `5px solid ${tokens.colorBrandStroke1}`,
  },
  urgent: {
    backgroundColor: `color-mix(in srgb, ${tokens.colorPaletteDarkOrangeForeground1} 12%, ${tokens.colorNeutralBackground1})`,
    borderLeftColor: tokens.colorPaletteDarkOrangeBorderActive,
  },
  reason: { marginTop: tokens.spacingVerticalXS },
  sentence: {
    margin: 0,
    fontSize: tokens.fontSizeBase500,
    lineHeight: "1.3",
    fontWeight: tokens.fontWeightSemibold,
    textWrap: "pretty",
  },
  late: { listStyleType: "none", margin: 0, padding: 0, display: "grid", rowGap: tokens.spacingVerticalXS },
  lateItem: { display: "grid", gridTemplateColumns: "20px minmax(0, 1fr)", columnGap: tokens.spacingHorizontalS },
  lateAction: { gridColumn: 2, justifySelf: "start", minHeight: "44px", marginTop: tokens.spacingVerticalXS },
  lateIcon: { fontSize: "20px", color: tokens.colorPaletteDarkOrangeForeground1 },
});

interface Props {
  readonly log: LogSnapshot;
  readonly system: UnitSystem;
  readonly bath: string | undefined;
  /** The present moment as an Excel serial number. */
  readonly now: number;
  readonly onBath: (bath: string) => void;
  readonly onRecord: (entry: EntryId) => void;
}

function NoBath({ onRecord }: Pick<Props, "onRecord">): React.JSX.Element {
  const page = usePageStyles();
  const styles = useStyles();
  return (
    <section className={styles.step} aria-label="Next step">
      <p className={styles.sentence}>The log is ready. Record the first charge.</p>
      <Button
        appearance="primary"
        size="large"
        className={page.big}
        onClick={() => {
          onRecord(charge.id);
        }}
      >
        {charge.title}
      </Button>
    </section>
  );
}

/** `offered`: the form that the next step leads to already. */
function LateItem({
  late,
  offered,
  onRecord,
}: { readonly late: Overdue; readonly offered: StepForm | undefined } & Pick<Props, "onRecord">): React.JSX.Element {
  const styles = useStyles();
  const entry = late.kind === undefined ? undefined : formOfStep[late.kind];
  return (
    <li className={styles.lateItem}>
      <WarningRegular aria-hidden className={styles.lateIcon} />
      <span>{late.text}</span>
      {entry === undefined || entry === offered ? null : (
        <Button
          size="large"
          className={styles.lateAction}
          onClick={() => {
            onRecord(entry.id);
          }}
        >
          {entry.title}
        </Button>
      )}
    </li>
  );
}

/** Where the chosen bath stands and what to do next. */
export function NowView({ log, system, bath, now, onBath, onRecord }: Props): React.JSX.Element {
  const styles = useStyles();
  const page = usePageStyles();
  const { control } = useControlStyles();
  const { noting, rootOf } = useContext(FiguresContext);
  const forecast = useForecast(log, bath, system);
  if (bath === undefined) return <NoBath onRecord={onRecord} />;
  const { answer, unlike } = noting(() => nextStep(log, bath, system, now));
  const waits = unlike.length > 0;
  const step: NextStep = waits ? { kind: "wait", ...waitingWords(unlike, rootOf), urgent: false, overdue: [] } : answer;
  const entry = formOfStep[step.kind];
  return (
    <div className={page.page}>
      <Field label="Bath">
        <Select
          className={control}
          size="large"
          value={bath}
          onChange={(_, data) => {
            onBath(data.value);
          }}
        >
          {bathIds(log).map((id) => (
            <option key={id}>{id}</option>
          ))}
        </Select>
      </Field>
      <section className={mergeClasses(styles.step, step.urgent && styles.urgent)} aria-label="Next step">
        <div role="status">
          <p className={styles.sentence}>{step.sentence}</p>
          {[step.reason, ...(waits ? [] : forecast)].map((sentence) =>
            sentence === undefined ? null : (
              <p key={sentence} className={mergeClasses(page.quiet, styles.reason)}>
                {sentence}
              </p>
            ),
          )}
        </div>
        {entry === undefined ? null : (
          <Button
            appearance="primary"
            size="large"
            icon={<ArrowRightRegular />}
            iconPosition="after"
            className={page.big}
            onClick={() => {
              onRecord(entry.id);
            }}
          >
            {entry.title}
          </Button>
        )}
      </section>
      {step.overdue.length === 0 ? null : (
        <ul className={styles.late} aria-label="Overdue">
          {step.overdue.map((late) => (
            <LateItem key={late.text} late={late} offered={entry} onRecord={onRecord} />
          ))}
        </ul>
      )}
      <WorkedOut of={() => figuresOf(log, bath, system)}>{(figures) => <BathFigures figures={figures} />}</WorkedOut>
      <WorkedOut of={() => trendOf(log, bath)}>{(trend) => <TrendChart trend={trend} system={system} />}</WorkedOut>
      <WorkedOut of={() => sharesOf(log, bath)}>
        {(shared) => (shared === undefined ? null : <ClaimShares shared={shared} />)}
      </WorkedOut>
    </div>
  );
}
