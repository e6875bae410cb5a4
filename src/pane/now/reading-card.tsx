import { Button, Field, makeStyles, mergeClasses, tokens } from "@fluentui/react-components";
import { ChevronRightRegular } from "@fluentui/react-icons/svg/chevron-right";
import { Input } from "@fluentui/react-input";
import { useEffect } from "react";

import { findRow, lastReadingOf, rowFacts } from "../../advice/bath-facts.ts";
import type { Finding } from "../../advice/finding.ts";
import type { LogContext } from "../../advice/log-context.ts";
import { degrees, ph } from "../../advice/wording/figures.ts";
import { serialOf, shortMoment } from "../../advice/wording/moments.ts";
import { temperature as temperatureUnit } from "../../joblog/model/units-of.ts";
import { fieldElementId, focusField } from "../controls/entry-field.tsx";
import { toneIcons, useToneStyles } from "../controls/findings-list.tsx";
import { ShortCautions } from "../controls/step-cautions.tsx";
import { usePageStyles } from "../controls/use-page-styles.ts";
import type { EntryField } from "../record/entry-form.ts";
import { readingEntry } from "../record/forms/reading/reading-entry.ts";
import { RecordBar } from "../record/record-bar.tsx";
import type { LastEntry } from "../record/take-back.ts";
import { type OpenEntry, useEntry } from "../record/use-entry.ts";

const useStyles = makeStyles({
  card: {
    display: "grid",
    rowGap: tokens.spacingVerticalM,
    padding: tokens.spacingHorizontalL,
    paddingBottom: 0,
    border: `1px solid ${tokens.colorNeutralStroke2}`,
    borderRadius: tokens.borderRadiusXLarge,
  },
  fields: { display: "grid", gridTemplateColumns: "repeat(2, minmax(0, 1fr))", columnGap: tokens.spacingHorizontalM },
  figure: {
    width: "100%",
    minWidth: 0,
    minHeight: "64px",
    "& input": {
      width: "100%",
      minWidth: 0,
      // Clear of the verdict and the button below, which stay in sight.
      scrollMarginBottom: "150px",
      fontSize: "30px",
      lineHeight: "36px",
      fontWeight: tokens.fontWeightSemibold,
      fontVariantNumeric: "tabular-nums",
    },
    ":focus-within": {
      outlineStyle: "solid",
      outlineWidth: "2px",
      outlineColor: tokens.colorCompoundBrandStroke,
      outlineOffset: "1px",
    },
  },
  unit: { color: tokens.colorNeutralForeground3, fontSize: tokens.fontSizeBase400 },
  verdict: {
    display: "grid",
    gridTemplateColumns: "32px minmax(0, 1fr)",
    columnGap: tokens.spacingHorizontalM,
    alignContent: "start",
  },
  mark: { fontSize: "32px" },
  said: { display: "grid", rowGap: tokens.spacingVerticalXXS },
  first: {
    margin: 0,
    fontSize: tokens.fontSizeBase500,
    lineHeight: "1.25",
    fontWeight: tokens.fontWeightSemibold,
    textWrap: "pretty",
  },
  rest: {
    margin: 0,
    color: tokens.colorNeutralForeground3,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
  },
  stands: { justifyContent: "space-between", textAlign: "left", fontWeight: tokens.fontWeightRegular },
});

interface Props {
  readonly context: LogContext;
  /** The caret goes into the pH at once. */
  readonly isWanted: boolean;
  /** Opens the whole form with what is typed here. */
  readonly onWhole: () => void;
  readonly onRecorded: (entry: LastEntry) => void;
}

type Figure = "ph" | "temperature";

/** What each figure is compared with, under its field. */
function hintOf(figure: Figure, { log, system, bath }: LogContext): string | undefined {
  if (bath === undefined) return undefined;
  if (figure === "ph") {
    const last = lastReadingOf(log, bath)?.cells.ph;
    return typeof last === "number" ? `last ${ph(last)}` : undefined;
  }
  const row = findRow(log, "baths", "bath", bath);
  const at = row === undefined ? undefined : rowFacts(row).number("baselineTemperature");
  return at === undefined ? undefined : `baseline at ${degrees(at)} ${temperatureUnit[system]}`;
}

function FigureField({
  field,
  entry,
  isWanted,
}: {
  readonly field: EntryField;
  readonly entry: OpenEntry;
  readonly isWanted: boolean;
}): React.JSX.Element {
  const styles = useStyles();
  const { context, filled, problems } = entry;
  const { key, column } = field;
  useEffect(() => {
    if (isWanted) focusField(key);
  }, [isWanted, key]);
  const problem = problems.find((one) => one.key === key)?.message;
  const hint = filled.converted[key] === undefined ? hintOf(key as Figure, context) : `= ${filled.converted[key]}`;
  const unit = column.unit?.[context.system];
  return (
    <Field
      id={fieldElementId(key)}
      label={column.label}
      onBlur={() => {
        entry.leave(key);
      }}
      {...(problem === undefined ? {} : { validationMessage: problem })}
      {...(hint === undefined ? {} : { hint })}
    >
      <Input
        className={styles.figure}
        size="large"
        autoComplete="off"
        inputMode="decimal"
        value={filled.values[key] ?? ""}
        {...(unit === undefined ? {} : { contentAfter: <span className={styles.unit}>{unit}</span> })}
        onChange={(_, { value }) => {
          entry.change(key, value);
        }}
      />
    </Field>
  );
}

function waitsFor({ filled: { values } }: OpenEntry): Finding {
  const hasPh = (values["ph"] ?? "").trim() !== "";
  return {
    tone: "plain",
    text: hasPh ? "Type the sample’s temperature: the same bath reads lower when hot." : "Type what the meter shows.",
  };
}

function Verdict({ entry }: { readonly entry: OpenEntry }): React.JSX.Element {
  const styles = useStyles();
  const tones = useToneStyles();
  const page = usePageStyles();
  const isJudged = entry.findings.length > 0 && (entry.filled.values["temperature"] ?? "").trim() !== "";
  const isSaid = entry.isTyped && entry.asking.length === 0;
  const [first = waitsFor(entry), ...rest] = isJudged ? entry.findings : [];
  const Mark = toneIcons[first.tone];
  return (
    <section role="status" aria-label="What this means" className={isSaid ? styles.verdict : undefined}>
      {isSaid ? (
        <>
          <Mark aria-hidden className={mergeClasses(styles.mark, tones[first.tone])} />
          <div className={styles.said}>
            <p className={first.tone === "plain" ? page.quiet : styles.first}>{first.text}</p>
            {rest.length === 0 ? null : <p className={styles.rest}>{rest.map(({ text }) => text).join(" ")}</p>}
          </div>
        </>
      ) : null}
    </section>
  );
}

/** The purpose, moment and meter that the reading gets, in one line. */
function standsFor({ filled: { values } }: OpenEntry): string {
  const when = serialOf(values["when"] ?? "");
  const meter = (values["meter"] ?? "") === "" ? "no meter named" : `meter ${values["meter"] ?? ""}`;
  const who = (values["initials"] ?? "") === "" ? [] : [`by ${values["initials"] ?? ""}`];
  const purpose = values["purpose"] ?? "";
  const spoken = [
    purpose.charAt(0).toUpperCase() + purpose.slice(1),
    when === undefined ? "" : shortMoment(when),
    meter,
  ];
  return [...spoken, ...who].filter((part) => part !== "").join(" · ");
}

/** A reading in two figures: the verdict beside them while they are typed, the button in sight. */
export function ReadingCard({ context, isWanted, onWhole, onRecorded }: Props): React.JSX.Element {
  const styles = useStyles();
  const page = usePageStyles();
  const entry = useEntry({ form: readingEntry, context, onRecorded });
  const fields = entry.filled.groups.flatMap((group) => group.fields);
  return (
    <form
      noValidate
      className={styles.card}
      aria-labelledby="reading-card"
      onSubmit={(event) => {
        event.preventDefault();
        entry.submit();
      }}
    >
      <div className={page.sides}>
        <h2 id="reading-card" className={page.section}>
          {readingEntry.title}
        </h2>
        {entry.isTyped ? (
          <Button appearance="subtle" className={page.target} onClick={entry.clear}>
            Clear
          </Button>
        ) : null}
      </div>
      <Button
        size="large"
        className={mergeClasses(page.big, styles.stands)}
        icon={<ChevronRightRegular />}
        iconPosition="after"
        aria-label={`Change: ${standsFor(entry)}`}
        onClick={onWhole}
      >
        {standsFor(entry)}
      </Button>
      <ShortCautions of={readingEntry.id} />
      <div className={styles.fields}>
        {fields
          .filter(({ key }) => key === "ph" || key === "temperature")
          .map((field) => (
            <FigureField key={field.key} field={field} entry={entry} isWanted={isWanted && field.key === "ph"} />
          ))}
      </div>
      <RecordBar entry={entry} submit={readingEntry.submit} verdict={<Verdict entry={entry} />} />
    </form>
  );
}
