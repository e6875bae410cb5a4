import { Button, Field, makeStyles, mergeClasses, Select, tokens } from "@fluentui/react-components";
import { ArrowRightRegular } from "@fluentui/react-icons/svg/arrow-right";
import { WarningRegular } from "@fluentui/react-icons/svg/warning";
import { useContext, useState } from "react";

import { findRow } from "../../advice/bath-facts.ts";
import { bathIds } from "../../advice/bath-values.ts";
import type { LogContext } from "../../advice/log-context.ts";
import { nextStep } from "../../advice/next-step/next-step.ts";
import type { NextStep, Overdue } from "../../advice/next-step/step.ts";
import { trendOf } from "../../advice/readings/trend-points.ts";
import { waitingWords } from "../../advice/waiting.ts";
import { serialOf } from "../../advice/wording/moments.ts";
import { useControlStyles } from "../controls/use-control-styles.ts";
import { usePageStyles } from "../controls/use-page-styles.ts";
import { WorkedOut } from "../controls/worked-out.tsx";
import { FiguresContext } from "../frame/figures-context.ts";
import { LazyReadingCard, LazyRecordedStrip } from "../frame/lazy-views.ts";
import { draftKey, DraftsContext } from "../record/drafts.ts";
import type { EntryId } from "../record/forms.ts";
import { charge, formOfStep, reading, type StepForm } from "../record/step-forms.ts";
import type { LastEntry } from "../record/take-back.ts";
import { BathFigures, figuresOf } from "./bath-figures.tsx";
import { ClaimShares, sharesOf } from "./claim-shares.tsx";
import { TrendChart } from "./trend-chart.tsx";
import { useForecast } from "./use-forecast.ts";
import { WhoField } from "./who-field.tsx";

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
  ways: {
    display: "grid",
    gap: tokens.spacingVerticalS,
    "@media (min-width: 640px)": { gridAutoFlow: "column", gridAutoColumns: "minmax(0, 1fr)" },
  },
  choices: {
    display: "grid",
    gridAutoFlow: "column",
    gridAutoColumns: "minmax(0, 1fr)",
    columnGap: tokens.spacingHorizontalM,
  },
  late: { listStyleType: "none", margin: 0, padding: 0, display: "grid", rowGap: tokens.spacingVerticalXS },
  lateItem: { display: "grid", gridTemplateColumns: "20px minmax(0, 1fr)", columnGap: tokens.spacingHorizontalS },
  lateAction: { gridColumn: 2, justifySelf: "start", minHeight: "44px", marginTop: tokens.spacingVerticalXS },
  lateIcon: { fontSize: "20px", color: tokens.colorPaletteDarkOrangeForeground1 },
});

interface Props {
  readonly context: LogContext;
  readonly onBath: (bath: string) => void;
  readonly onRecord: (entry: EntryId) => void;
  /** The entry recorded last, as long as the pane is open. */
  readonly lastEntry: LastEntry | undefined;
  /** The log holds another entry, or one less; resolves once it has been read again. */
  readonly onLastEntry: (entry: LastEntry | undefined) => Promise<void>;
  readonly onMe: (initials: string | undefined) => void;
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

/** Steps at which a bath is read against its baseline, so that the two figures of a reading stand ready. */
function takesReadings({ log, bath }: LogContext): boolean {
  const row = bath === undefined ? undefined : findRow(log, "baths", "bath", bath);
  return typeof row?.cells.baseline === "number" && row.cells.closed === undefined;
}

/** Where the chosen bath stands and what to do next. */
export function NowView({ context, onBath, onRecord, lastEntry, onLastEntry, onMe }: Props): React.JSX.Element {
  const { log, system, bath } = context;
  const styles = useStyles();
  const page = usePageStyles();
  const { control } = useControlStyles();
  const { noting, rootOf } = useContext(FiguresContext);
  const drafts = useContext(DraftsContext);
  const forecast = useForecast(log, bath, system);
  // The reading begins anew with each that was recorded here.
  const [recorded, setRecorded] = useState<LastEntry>();
  const [times, setTimes] = useState(0);
  const [asked, setAsked] = useState(false);
  if (bath === undefined) return <NoBath onRecord={onRecord} />;
  const { answer, unlike } = noting(() => nextStep(log, bath, system, serialOf(context.now) ?? 0));
  const waits = unlike.length > 0;
  const step: NextStep = waits ? { kind: "wait", ...waitingWords(unlike, rootOf), urgent: false, overdue: [] } : answer;
  const entry = formOfStep[step.kind];
  const canRead = takesReadings(context);
  // What is half typed keeps its card, though the next step turns out to be another.
  const begun = drafts.of(draftKey(reading, bath)) !== undefined;
  const reads = canRead && (asked || begun || entry === reading || entry === undefined);
  // The card is that form already.
  const offered = reads && entry === reading ? undefined : entry;
  const card = reads ? (
    <LazyReadingCard
      key={`${bath} ${String(times)}`}
      context={context}
      isWanted={asked || (recorded === undefined && document.hasFocus())}
      onWhole={() => {
        onRecord(reading.id);
      }}
      onRecorded={(one) => {
        setRecorded(one);
        setTimes(times + 1);
        setAsked(false);
        void onLastEntry(one);
      }}
    />
  ) : null;
  return (
    <div className={page.page}>
      <div className={styles.choices}>
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
        <WhoField log={log} me={context.me} onMe={onMe} />
      </div>
      {recorded === undefined || recorded !== lastEntry ? null : (
        <LazyRecordedStrip
          key={times}
          recorded={recorded}
          onTakenBack={async () => {
            setRecorded(undefined);
            await onLastEntry(undefined);
          }}
        />
      )}
      {card}
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
        <div className={styles.ways}>
          {offered === undefined ? null : (
            <Button
              appearance="primary"
              size="large"
              icon={<ArrowRightRegular />}
              iconPosition="after"
              className={page.big}
              onClick={() => {
                onRecord(offered.id);
              }}
            >
              {offered.title}
            </Button>
          )}
          {canRead && !reads ? (
            <Button
              size="large"
              className={page.big}
              onClick={() => {
                setAsked(true);
              }}
            >
              {reading.title}
            </Button>
          ) : null}
        </div>
      </section>
      {step.overdue.length === 0 ? null : (
        <ul className={styles.late} aria-label="Overdue">
          {step.overdue.map((late) => (
            <LateItem key={late.text} late={late} offered={offered} onRecord={onRecord} />
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
