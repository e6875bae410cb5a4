import { createContext, useContext, useEffect } from "react";

import type { Draft } from "./entry-form.ts";

interface FormDraft {
  readonly form: string;
  readonly typed: Draft;
}

/** What is typed into the open form, out of reach of a fault that takes the form off the screen. Stays in the pane's memory. */
export interface KeptDraft {
  /** The draft as it was last drawn: a change that the form cannot take is not in it. */
  readonly note: (draft: FormDraft) => void;
  /** The form was left in the usual way. */
  readonly leave: () => void;
  /** A fault took the view away: what the open form held is kept until that form is recorded or left. */
  readonly save: () => void;
  readonly saved: () => FormDraft | undefined;
  readonly forget: () => void;
}

export function keptDraft(): KeptDraft {
  let open: FormDraft | undefined;
  let saved: FormDraft | undefined;
  return {
    note: (draft) => {
      open = draft;
    },
    leave: () => {
      open = undefined;
    },
    save: () => {
      if (open !== undefined && Object.keys(open.typed).length > 0) saved = open;
      open = undefined;
    },
    saved: () => saved,
    forget: () => {
      saved = undefined;
    },
  };
}

export const KeptDraftContext = createContext<KeptDraft>(keptDraft());

/** What a fault left of this form's draft. */
export function useSavedDraft(form: string): Draft | undefined {
  const saved = useContext(KeptDraftContext).saved();
  return saved?.form === form ? saved.typed : undefined;
}

/** Keeps what is typed for as long as the form is open, and gives the way to let go of what a fault left. */
export function useKeepDraft(form: string, typed: Draft): () => void {
  const kept = useContext(KeptDraftContext);
  useEffect(() => {
    kept.note({ form, typed });
  }, [kept, form, typed]);
  // After a fault the boundary saves before this runs: React calls componentDidCatch first.
  useEffect(() => kept.leave, [kept]);
  return () => {
    if (kept.saved()?.form === form) kept.forget();
  };
}
