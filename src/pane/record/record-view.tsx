import { Button, makeStyles, mergeClasses, tokens } from "@fluentui/react-components";
import { ArrowRightRegular } from "@fluentui/react-icons/svg/arrow-right";
import { CheckmarkCircleRegular } from "@fluentui/react-icons/svg/checkmark-circle";
import { useContext, useState } from "react";

import { bathIds } from "../../advice/bath-values.ts";
import { presentOf } from "../../advice/log-clock.ts";
import { nextStep } from "../../advice/next-step/next-step.ts";
import { fieldTextNow, serialOf, shortMoment } from "../../advice/wording/moments.ts";
import type { UnitSystem } from "../../core/units/unit-system.ts";
import type { LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import { adoptSheet } from "../adopt/adopt-sheet.ts";
import { useFocusOnShow } from "../controls/use-focus-on-show.ts";
import { usePageStyles } from "../controls/use-page-styles.ts";
import { useWorkedOut } from "../controls/use-worked-out.ts";
import { draftKey, DraftsContext } from "./drafts.ts";
import type { Draft, EntryForm } from "./entry-form.ts";
import { EntryFormView } from "./entry-form-view.tsx";
import { type EntryId, formOf, forms } from "./forms.ts";
import { formOfStep } from "./step-forms.ts";
import type { LastEntry } from "./take-back.ts";
import { TakeBackButton } from "./take-back-button.tsx";
import { useSteady } from "./use-steady.ts";

const useStyles = makeStyles({
  list: {
    listStyleType: "none",
    margin: 0,
    padding: 0,
    display: "grid",
    // Two in a row where the longest word of a name fits beside its icon.
    gridTemplateColumns: "repeat(auto-fill, minmax(150px, 1fr))",
    gap: tokens.spacingVerticalS,
  },
  group: {
    margin: `0 0 ${tokens.spacingVerticalS}`,
    color: tokens.colorNeutralForeground3,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
    fontWeight: tokens.fontWeightSemibold,
  },
  daily: { minHeight: "72px" },
  // Read out, and shown by the form itself.
  unseen: { position: "absolute", width: "1px", height: "1px", overflow: "hidden", clipPath: "inset(50%)" },
  entry: {
    width: "100%",
    height: "100%",
    maxWidth: "none",
    minWidth: 0,
    minHeight: "52px",
    position: "relative",
    padding: `${tokens.spacingVerticalS} ${tokens.spacingHorizontalS}`,
    justifyContent: "flex-start",
    textAlign: "left",
    columnGap: tokens.spacingHorizontalS,
    fontWeight: tokens.fontWeightRegular,
  },
  name: {
    display: "block",
    overflowWrap: "anywhere",
    fontWeight: tokens.fontWeightSemibold,
    fontSize: tokens.fontSizeBase400,
    lineHeight: tokens.lineHeightBase400,
  },
  purpose: {
    display: "block",
    color: tokens.colorNeutralForeground3,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
  },
  done: {
    display: "grid",
    rowGap: tokens.spacingVerticalM,
    padding: tokens.spacingHorizontalL,
    border: "1px solid transparent",
    borderRadius: tokens.borderRadiusXLarge,
    backgroundColor: tokens.colorNeutralBackground3,
  },
  doneTitle: {
    display: "flex",
    columnGap: tokens.spacingHorizontalS,
    alignItems: "start",
    margin: 0,
    outlineStyle: "none",
    fontSize: tokens.fontSizeBase300,
    lineHeight: tokens.lineHeightBase300,
    fontWeight: tokens.fontWeightSemibold,
  },
  last: { margin: 0 },
  next: { margin: 0, fontSize: tokens.fontSizeBase400, lineHeight: tokens.lineHeightBase400 },
  tick: { fontSize: "24px", color: tokens.colorPaletteGreenForeground1, flexShrink: 0 },
});

interface Props {
  readonly log: LogSnapshot;
  readonly system: UnitSystem;
  readonly bath: string | undefined;
  readonly me: string | undefined;
  readonly open: EntryId | undefined;
  readonly onOpen: (entry: EntryId | undefined) => void;
  /** The entry recorded last, as long as the pane is open. */
  readonly lastEntry: LastEntry | undefined;
  /** The log holds another entry, or one less; resolves once it has been read again. */
  readonly onLastEntry: (entry: LastEntry | undefined) => Promise<void>;
  readonly onAdopt: () => void;
}

/** What happens all day long, in large. */
const daily: readonly EntryId[] = ["reading", "addition", "load", "level make-up"];

/** What happens with the shop's goods and meters rather than with the bath in hand. */
const aside: readonly EntryId[] = ["count in", "item", "meter check", "correction"];

/** What other views open is not listed here. */
const listed = forms.filter((form: EntryForm) => form.from === undefined).map(({ id }) => id);

const groups: readonly { readonly name: string; readonly ids: readonly EntryId[] }[] = [
  { name: "All day", ids: daily },
  { name: "This bath", ids: listed.filter((id) => !daily.includes(id) && !aside.includes(id)) },
  { name: "Goods, meters, corrections", ids: aside },
];

/** Opens a form; says what it is for, that it is half filled in, or what has to come first. */
function EntryButton({
  form,
  bath,
  hasBath,
  isDaily,
  onOpen,
}: {
  readonly form: EntryForm<EntryId>;
  readonly hasBath: boolean;
  readonly isDaily: boolean;
} & Pick<Props, "onOpen" | "bath">): React.JSX.Element {
  const styles = useStyles();
  const drafts = useContext(DraftsContext);
  const Icon = form.icon;
  const isMissing = form.needs === "bath" && !hasBath;
  const draft = drafts.of(draftKey(form, bath));
  const begun = draft === undefined ? undefined : `Unfinished, begun ${shortMoment(serialOf(draft.now) ?? 0)}.`;
  const about = isMissing ? "Record a charge first." : (begun ?? form.purpose);
  const id = `about-${form.id.replace(" ", "-")}`;
  return (
    <Button
      size="large"
      icon={<Icon />}
      className={mergeClasses(styles.entry, isDaily && styles.daily)}
      disabled={isMissing}
      aria-label={form.title}
      aria-describedby={id}
      onClick={() => {
        onOpen(form.id);
      }}
    >
      <span>
        <span className={styles.name}>{form.title}</span>
        <span id={id} className={mergeClasses(styles.purpose, !isMissing && begun === undefined && styles.unseen)}>
          {about}
        </span>
      </span>
    </Button>
  );
}

type TakeBack = (entry: LastEntry) => Promise<void>;

function EntryList({
  log,
  bath,
  onOpen,
  returned,
  lastEntry,
  onTakenBack,
  onAdopt,
}: Pick<Props, "log" | "bath" | "onOpen" | "lastEntry" | "onAdopt"> & {
  readonly returned: boolean;
  readonly onTakenBack: TakeBack;
}): React.JSX.Element {
  const styles = useStyles();
  const page = usePageStyles();
  const heading = useFocusOnShow<HTMLHeadingElement>(returned);
  const hasBath = bathIds(log).length > 0;
  const AdoptIcon = adoptSheet.icon;
  return (
    <section className={page.page} aria-label="Record">
      <h2 ref={heading} tabIndex={-1} className={page.title}>
        What happened?
      </h2>
      {lastEntry === undefined ? null : (
        <section className={styles.done} aria-label="Last entry">
          <p className={styles.last}>{`Last entry: ${lastEntry.what}.`}</p>
          <TakeBackButton entry={lastEntry} onTakenBack={onTakenBack} />
        </section>
      )}
      {groups.map(({ name, ids }) => (
        <section key={name} aria-label={name}>
          <h3 className={styles.group}>{name}</h3>
          <ul className={styles.list}>
            {ids.map((id) => (
              <li key={id}>
                <EntryButton form={formOf(id)} bath={bath} hasBath={hasBath} isDaily={ids === daily} onOpen={onOpen} />
              </li>
            ))}
          </ul>
        </section>
      ))}
      <Button size="large" appearance="subtle" icon={<AdoptIcon />} className={page.big} onClick={onAdopt}>
        {adoptSheet.name}
      </Button>
    </section>
  );
}

/** `chosen`: the bath in hand, whose next step follows an entry that belongs to no bath. */
function RecordedCard({
  recorded,
  log,
  system,
  chosen,
  onOpen,
  onClose,
  onTakenBack,
}: {
  readonly recorded: LastEntry;
  readonly chosen: string | undefined;
  readonly onClose: () => void;
  readonly onTakenBack: TakeBack;
} & Pick<Props, "log" | "system" | "onOpen">): React.JSX.Element {
  const styles = useStyles();
  const page = usePageStyles();
  const heading = useFocusOnShow<HTMLHeadingElement>(true);
  const { bath = chosen } = recorded;
  const form = formOf(recorded.form);
  const known = bath !== undefined && bathIds(log).includes(bath);
  const { answer: step, waiting } = useWorkedOut(() =>
    known ? nextStep(log, bath, system, serialOf(presentOf(log, fieldTextNow(new Date()))) ?? 0) : undefined,
  );
  const answer = step === undefined || waiting !== undefined ? undefined : formOfStep[step.kind];
  // What is worked out comes late, and moves what stands beneath it.
  const isSteady = useSteady([waiting, step?.sentence, answer?.id].join("\n"));
  return (
    <section className={styles.done} aria-label="Recorded">
      <h2 ref={heading} tabIndex={-1} className={styles.doneTitle}>
        <CheckmarkCircleRegular aria-hidden className={styles.tick} />
        <span>{`Recorded: ${recorded.what}.`}</span>
      </h2>
      {step === undefined ? null : (
        <p className={styles.next} role="status">
          {`Next${recorded.bath === undefined ? ` for ${bath ?? ""}` : ""}: ${waiting ?? step.sentence}`}
        </p>
      )}
      {answer === undefined ? null : (
        <Button
          appearance="primary"
          size="large"
          icon={<ArrowRightRegular />}
          iconPosition="after"
          className={page.big}
          onClick={() => {
            onOpen(answer.id);
          }}
        >
          {answer.title}
        </Button>
      )}
      {form.series === true ? (
        <Button
          size="large"
          className={page.big}
          onClick={() => {
            onOpen(form.id);
          }}
        >
          {`Another ${form.title.toLowerCase()}`}
        </Button>
      ) : null}
      <TakeBackButton entry={recorded} onTakenBack={onTakenBack} isMoving={!isSteady} />
      <Button size="large" className={page.big} onClick={onClose}>
        All entries
      </Button>
    </section>
  );
}

/** The forms, one for each kind of event; after writing, the next step and the way back. */
export function RecordView(props: Props): React.JSX.Element {
  const { log, system, bath, me, open, onOpen, lastEntry, onLastEntry, onAdopt } = props;
  const [recorded, setRecorded] = useState<LastEntry>();
  const [reopened, setReopened] = useState<Draft>();
  const [now, setNow] = useState(() => presentOf(log, fieldTextNow(new Date())));
  const [returned, setReturned] = useState(false);
  const openForm = (entry: EntryId | undefined, values?: Draft): void => {
    setRecorded(undefined);
    setReopened(values);
    setReturned(true);
    setNow(presentOf(log, fieldTextNow(new Date())));
    onOpen(entry);
  };
  const showTakenBack = async (entry: LastEntry): Promise<void> => {
    await onLastEntry(undefined);
    openForm(entry.form, entry.values);
  };
  if (open !== undefined) {
    return (
      <EntryFormView
        key={`${open} ${now}`}
        form={formOf(open)}
        context={{ log, system, bath, now, me }}
        reopened={reopened}
        onBack={() => {
          openForm(undefined);
        }}
        onOpen={openForm}
        onRecorded={(entry) => {
          void onLastEntry(entry).then(() => {
            setRecorded(entry);
            onOpen(undefined);
          });
        }}
      />
    );
  }
  if (recorded !== undefined) {
    return (
      <RecordedCard
        recorded={recorded}
        log={log}
        system={system}
        chosen={bath}
        onOpen={openForm}
        onClose={() => {
          openForm(undefined);
        }}
        onTakenBack={showTakenBack}
      />
    );
  }
  return (
    <EntryList
      log={log}
      bath={bath}
      onOpen={openForm}
      returned={returned}
      lastEntry={lastEntry}
      onTakenBack={showTakenBack}
      onAdopt={onAdopt}
    />
  );
}
