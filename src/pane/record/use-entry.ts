import { useContext, useDeferredValue, useEffect, useRef, useState } from "react";

import type { FieldProblem } from "../../advice/filled-fields.ts";
import type { Finding } from "../../advice/finding.ts";
import type { LogContext } from "../../advice/log-context.ts";
import { editLog } from "../../excel/log-workbook.ts";
import { type LogProblem, problemFrom } from "../../excel/office-problems.ts";
import { showWritten } from "../../excel/show-sheet.ts";
import { focusField } from "../controls/entry-field.tsx";
import { findingsOr, useWorkedOut } from "../controls/use-worked-out.ts";
import { CautionsContext } from "../frame/cautions-today.ts";
import { draftKey, DraftsContext, type FormDraft } from "./drafts.ts";
import type { Draft, EntryForm } from "./entry-form.ts";
import { type FilledForm, fillForm } from "./fill-form.ts";
import type { EntryId } from "./forms.ts";
import type { LastEntry } from "./take-back.ts";

/** How long after the last key a field counts as left, though the caret is still in it. */
const idleMs = 1000;

interface Settings {
  readonly form: EntryForm<EntryId>;
  readonly context: LogContext;
  /** An entry that was taken back: the form opens as it stood. */
  readonly reopened?: Draft | undefined;
  readonly onRecorded: (entry: LastEntry) => void;
}

/** A form that is being filled in. */
export interface OpenEntry {
  readonly filled: FilledForm;
  /** What the form stands for: the moment and the bath with which it was begun. */
  readonly context: LogContext;
  readonly findings: readonly Finding[];
  /** Those that are to be shown now: none in the middle of a number. */
  readonly problems: readonly FieldProblem[];
  /** Recording was tried, so that all problems count. */
  readonly tried: boolean;
  /** Questions that wait for an answer: recording once more answers them with yes. */
  readonly asking: readonly string[];
  readonly writing: boolean;
  readonly failure: LogProblem | undefined;
  readonly isTyped: boolean;
  /** It was left half filled in, and is taken up again. */
  readonly resumed: boolean;
  readonly change: (key: string, value: string) => void;
  /** The caret has left a field. */
  readonly leave: (key: string) => void;
  readonly clear: () => void;
  readonly submit: () => void;
}

/** Moves the focus to the first field that has a problem, as listed in the form. */
function focusFirstProblem(filled: FilledForm): void {
  const keys = filled.groups.flatMap((group) => group.fields).map((field) => field.key);
  const first = keys.find((key) => filled.problems.some((problem) => problem.key === key));
  if (first !== undefined) focusField(first);
}

/** The fields whose problems may be shown: left, or not touched for a while. */
function useLeftFields(): {
  readonly left: ReadonlySet<string>;
  readonly leave: (key: string) => void;
  readonly enter: (key: string) => void;
} {
  const [left, setLeft] = useState<ReadonlySet<string>>(new Set());
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  useEffect(
    () => () => {
      clearTimeout(timer.current);
    },
    [],
  );
  const leave = (key: string): void => {
    setLeft((before) => (before.has(key) ? before : new Set([...before, key])));
  };
  return {
    left,
    leave,
    enter: (key) => {
      setLeft((before) => (before.has(key) ? new Set([...before].filter((one) => one !== key)) : before));
      clearTimeout(timer.current);
      timer.current = setTimeout(() => {
        leave(key);
      }, idleMs);
    },
  };
}

/** Holds what is typed into a form, what it means, and writes it. */
export function useEntry({ form, context: given, reopened, onRecorded }: Settings): OpenEntry {
  const drafts = useContext(DraftsContext);
  const cautions = useContext(CautionsContext);
  const blank: FormDraft = { typed: {}, asked: "", now: given.now, bath: given.bath };
  const [key] = useState(() => draftKey(form, given.bath));
  const [begun] = useState(() => (reopened === undefined ? drafts.of(key) : undefined));
  const [draft, setDraft] = useState<FormDraft>(begun ?? { ...blank, typed: reopened ?? {} });
  const [tried, setTried] = useState(false);
  const [writing, setWriting] = useState(false);
  const [failure, setFailure] = useState<LogProblem>();
  const { left, leave, enter } = useLeftFields();
  const { typed, asked } = draft;
  const isTyped = Object.keys(typed).length > 0;
  const context: LogContext = isTyped ? { ...given, now: draft.now, bath: draft.bath ?? given.bath } : given;
  const { answer: filled, waiting } = useWorkedOut(() => fillForm(form, typed, context));
  const findings = useDeferredValue(findingsOr(waiting, filled.meaning.findings));
  // Only what could be drawn is kept: a change that the form cannot take would take it off the screen each time.
  useEffect(() => {
    drafts.keep(key, draft);
  }, [drafts, key, draft]);
  // After a fault the boundary notes it before this runs: React calls componentDidCatch first.
  useEffect(() => drafts.leave, [drafts]);

  const doubts = filled.meaning.doubts ?? [];
  const question = doubts.join(" ");
  const asking = question !== "" && asked === question && filled.problems.length === 0 ? doubts : [];
  const problems = tried
    ? filled.problems
    : filled.problems.filter(({ key }) => left.has(key) && typed[key] !== undefined && typed[key].trim() !== "");

  const record = async (): Promise<void> => {
    setTried(true);
    setFailure(undefined);
    if (filled.problems.length > 0) {
      focusFirstProblem(filled);
      return;
    }
    if (question !== "" && asking.length === 0) {
      setDraft((before) => ({ ...before, asked: question }));
      return;
    }
    setWriting(true);
    try {
      const receipt = await editLog(filled.meaning);
      drafts.letGo(key);
      cautions.note(form.id);
      void showWritten(receipt);
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

  return {
    filled,
    context,
    // What is asked stands over the button; it is not said twice.
    findings: findings.filter(({ text }) => !asking.includes(text)),
    problems,
    tried,
    asking,
    writing,
    failure,
    isTyped,
    resumed: begun !== undefined && isTyped,
    change: (key, value) => {
      enter(key);
      setDraft((before) => ({
        ...(Object.keys(before.typed).length === 0 ? blank : before),
        typed: { ...before.typed, [key]: value },
      }));
    },
    leave,
    clear: () => {
      setDraft(blank);
      setTried(false);
      setFailure(undefined);
    },
    submit: () => {
      if (!writing && filled.meaning.blocked === undefined) void record();
    },
  };
}
