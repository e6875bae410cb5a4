import { Button, mergeClasses, Spinner } from "@fluentui/react-components";
import { AddCircleRegular } from "@fluentui/react-icons/svg/add-circle";
import { ArrowLeftRegular } from "@fluentui/react-icons/svg/arrow-left";
import { useDeferredValue, useState } from "react";

import type { LogContext } from "../../advice/log-context.ts";
import { editLog } from "../../excel/log-workbook.ts";
import { type LogProblem, problemFrom } from "../../excel/office-problems.ts";
import { focusField } from "../controls/entry-field.tsx";
import { FieldGroups } from "../controls/field-groups.tsx";
import { FindingsList } from "../controls/findings-list.tsx";
import { onEscape } from "../controls/on-escape.ts";
import { ProblemBar } from "../controls/problem-bar.tsx";
import { ProblemCount } from "../controls/problem-count.tsx";
import { AllCautions, ShortCautions } from "../controls/step-cautions.tsx";
import { useFocusOnShow } from "../controls/use-focus-on-show.ts";
import { usePageStyles } from "../controls/use-page-styles.ts";
import { findingsOr, useWorkedOut } from "../controls/use-worked-out.ts";
import type { Draft, EntryForm } from "./entry-form.ts";
import { type FilledForm, fillForm } from "./fill-form.ts";
import type { EntryId } from "./forms.ts";
import { useKeepDraft, useSavedDraft } from "./kept-draft.ts";
import type { LastEntry } from "./take-back.ts";

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

/** Moves the focus to the first field that has a problem, as listed in the form. */
function focusFirstProblem(filled: FilledForm): void {
  const keys = filled.groups.flatMap((group) => group.fields).map((field) => field.key);
  const first = keys.find((key) => filled.problems.some((problem) => problem.key === key));
  if (first !== undefined) focusField(first);
}

/** A form for one event: fields, what they mean, and one button that writes the rows. */
export function EntryFormView({
  form,
  context,
  reopened,
  back = "All entries",
  onBack,
  onOpen,
  onRecorded,
}: Props): React.JSX.Element {
  const page = usePageStyles();
  const heading = useFocusOnShow<HTMLHeadingElement>(true);
  const saved = useSavedDraft(form.id);
  const [typed, setTyped] = useState<Draft>(reopened ?? saved ?? {});
  const letGo = useKeepDraft(form.id, typed);
  const [tried, setTried] = useState(false);
  const [asked, setAsked] = useState("");
  const [writing, setWriting] = useState(false);
  const [failure, setFailure] = useState<LogProblem>();
  const leave = (): void => {
    letGo();
    onBack();
  };
  const { answer: filled, waiting } = useWorkedOut(() => fillForm(form, typed, context));
  const findings = useDeferredValue(findingsOr(waiting, filled.meaning.findings));
  const { blocked } = filled.meaning;
  const { repeats } = form;
  const count = repeats === undefined ? 0 : Number(filled.values[repeats.key] ?? repeats.least);
  const doubts = filled.meaning.doubts ?? [];
  const question = doubts.join(" ");
  const asking = question !== "" && asked === question;
  const typedProblems = filled.problems.filter(({ key }) => typed[key] !== undefined && typed[key].trim() !== "");

  const submit = async (): Promise<void> => {
    setTried(true);
    setFailure(undefined);
    if (filled.problems.length > 0) {
      focusFirstProblem(filled);
      return;
    }
    if (question !== "" && !asking) {
      setAsked(question);
      return;
    }
    setWriting(true);
    try {
      const receipt = await editLog(filled.meaning);
      letGo();
      onRecorded({
        form: form.id,
        what: filled.meaning.recorded,
        bath: filled.values["bath"],
        values: filled.values,
        receipt,
      });
    } catch (error) {
      setFailure(problemFrom(error));
      setWriting(false);
    }
  };

  return (
    <form
      noValidate
      className={page.page}
      aria-label={form.title}
      onKeyDown={onEscape(Object.keys(typed).length > 0, leave)}
      onSubmit={(event) => {
        event.preventDefault();
        if (!writing && blocked === undefined) void submit();
      }}
    >
      <Button appearance="subtle" icon={<ArrowLeftRegular />} className={page.back} onClick={leave}>
        {back}
      </Button>
      <div>
        <h2 ref={heading} tabIndex={-1} className={page.title}>
          {form.title}
        </h2>
        <p className={page.quiet}>
          {reopened === undefined
            ? form.purpose
            : "Taken back: nothing of this entry is in the log now. Correct it and record it again, or leave it."}
        </p>
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
        problems={tried ? filled.problems : typedProblems}
        onChange={(key, value) => {
          setTyped((before) => ({ ...before, [key]: value }));
        }}
      />
      {repeats === undefined || count >= repeats.most ? null : (
        <Button
          icon={<AddCircleRegular />}
          className={page.big}
          onClick={() => {
            setTyped((before) => ({ ...before, [repeats.key]: String(count + 1) }));
          }}
        >
          {repeats.label}
        </Button>
      )}
      <FindingsList findings={asking ? findings.filter(({ text }) => !doubts.includes(text)) : findings} />
      {failure === undefined ? null : <ProblemBar problem={failure} />}
      {tried ? <ProblemCount count={filled.problems.length} /> : null}
      {asking && filled.problems.length === 0 ? (
        <ul role="alert" className={mergeClasses(page.caution, page.doubts)}>
          {doubts.map((doubt) => (
            <li key={doubt}>{doubt}</li>
          ))}
        </ul>
      ) : null}
      <Button
        type="submit"
        appearance="primary"
        size="large"
        className={page.big}
        disabled={blocked !== undefined}
        {...(writing ? { icon: <Spinner size="tiny" /> } : {})}
      >
        {writing ? "Writing…" : asking ? "Record it anyway" : form.submit}
      </Button>
      <AllCautions of={form.id} />
    </form>
  );
}
