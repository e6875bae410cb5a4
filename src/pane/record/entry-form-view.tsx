import { Button } from "@fluentui/react-components";
import { AddCircleRegular } from "@fluentui/react-icons/svg/add-circle";
import { ArrowLeftRegular } from "@fluentui/react-icons/svg/arrow-left";

import type { LogContext } from "../../advice/log-context.ts";
import { serialOf, shortMoment } from "../../advice/wording/moments.ts";
import { FieldGroups } from "../controls/field-groups.tsx";
import { FindingsList } from "../controls/findings-list.tsx";
import { onEscape } from "../controls/on-escape.ts";
import { AllCautions, ShortCautions } from "../controls/step-cautions.tsx";
import { useFocusOnShow } from "../controls/use-focus-on-show.ts";
import { usePageStyles } from "../controls/use-page-styles.ts";
import type { Draft, EntryForm } from "./entry-form.ts";
import type { EntryId } from "./forms.ts";
import { RecordBar } from "./record-bar.tsx";
import type { LastEntry } from "./take-back.ts";
import { type OpenEntry, useEntry } from "./use-entry.ts";

interface Props {
  readonly form: EntryForm<EntryId>;
  readonly context: LogContext;
  /** Where the way back leads. */
  readonly back?: string;
  readonly onBack: () => void;
  readonly onOpen: (entry: EntryId) => void;
  /** An entry that was taken back: the form opens as it stood. */
  readonly reopened?: Draft | undefined;
  readonly onRecorded: (entry: LastEntry) => void;
}

function purposeOf(form: EntryForm, { resumed, context: { now } }: OpenEntry, takenBack: boolean): string {
  if (takenBack)
    return "Taken back: nothing of this entry is in the log now. Correct it and record it again, or leave it.";
  return resumed
    ? `Begun ${shortMoment(serialOf(now) ?? 0)} and not recorded yet. Go on, or press Clear.`
    : form.purpose;
}

/** A form for one event: fields, what they mean, and one button that writes the rows. */
export function EntryFormView({
  form,
  context: given,
  reopened,
  back = "All entries",
  onBack,
  onOpen,
  onRecorded,
}: Props): React.JSX.Element {
  const page = usePageStyles();
  const heading = useFocusOnShow<HTMLHeadingElement>(true);
  const entry = useEntry({ form, context: given, reopened, onRecorded });
  const { filled, context } = entry;
  const { blocked } = filled.meaning;
  const { repeats } = form;
  const count = repeats === undefined ? 0 : Number(filled.values[repeats.key] ?? repeats.least);

  return (
    <form
      noValidate
      className={page.page}
      aria-label={form.title}
      onKeyDown={onEscape(entry.isTyped, onBack)}
      onSubmit={(event) => {
        event.preventDefault();
        entry.submit();
      }}
    >
      <div className={page.sides}>
        <Button appearance="subtle" icon={<ArrowLeftRegular />} className={page.back} onClick={onBack}>
          {back}
        </Button>
        {entry.isTyped ? (
          <Button appearance="subtle" className={page.target} onClick={entry.clear}>
            Clear
          </Button>
        ) : null}
      </div>
      <div>
        <h2 ref={heading} tabIndex={-1} className={page.title}>
          {form.title}
        </h2>
        <p className={page.quiet}>{purposeOf(form, entry, reopened !== undefined)}</p>
      </div>
      <ShortCautions of={form.id} own={form.caution} />
      {blocked === undefined ? null : (
        <div role="alert" className={page.page}>
          <p className={page.caution}>{blocked.why}</p>
          <Button
            appearance="primary"
            size="large"
            className={page.big}
            onClick={() => {
              onOpen(blocked.first.id);
            }}
          >
            {`Go to: ${blocked.first.title}`}
          </Button>
        </div>
      )}
      <FieldGroups
        groups={filled.groups}
        values={filled.values}
        system={context.system}
        converted={filled.converted}
        problems={entry.problems}
        onChange={entry.change}
        onLeave={entry.leave}
      />
      {repeats === undefined || count >= repeats.most ? null : (
        <Button
          icon={<AddCircleRegular />}
          className={page.big}
          onClick={() => {
            entry.change(repeats.key, String(count + 1));
          }}
        >
          {repeats.label}
        </Button>
      )}
      <FindingsList findings={entry.findings} />
      <AllCautions of={form.id} />
      <RecordBar entry={entry} submit={form.submit} />
    </form>
  );
}
