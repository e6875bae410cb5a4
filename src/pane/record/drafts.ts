import { createContext } from "react";

import type { OnThisDevice } from "../frame/on-this-device.ts";
import type { Draft, EntryForm } from "./entry-form.ts";

/** A form as it was left: half filled in, or with a question that waits for its answer. */
export interface FormDraft {
  readonly typed: Draft;
  /** The question that was asked and not answered yet; "" for none. */
  readonly asked: string;
  /** The log's present moment and the bath in hand when it was begun: they are what it is about. */
  readonly now: string;
  readonly bath: string | undefined;
}

/** A form that is about a bath has a draft for each bath: what was read in one tank never shows up under another. */
export function draftKey({ id, needs }: Pick<EntryForm, "id" | "needs">, bath: string | undefined): string {
  return needs === "bath" && bath !== undefined ? `${id} of ${bath}` : id;
}

/** What is typed into forms and not recorded, by its key; it outlasts another tab, the pane and a fault that takes the form off the screen. */
export interface Drafts {
  readonly of: (key: string) => FormDraft | undefined;
  /** One in which nothing is typed is let go. */
  readonly keep: (key: string, draft: FormDraft) => void;
  readonly letGo: (key: string) => void;
  /** The form was left in the usual way. */
  readonly leave: () => void;
  /** A fault took the view away. */
  readonly noteFault: () => void;
  /** Whether that view was a form whose draft is kept. */
  readonly wasDrafted: () => boolean;
}

const isTyped = ({ typed }: FormDraft): boolean =>
  Object.values(typed).some((text) => text !== undefined && text.trim() !== "");

/** What was kept can be of another version of the pane: only whole drafts are taken. */
function draftsIn(kept: unknown): readonly (readonly [string, FormDraft])[] {
  if (typeof kept !== "object" || kept === null) return [];
  return Object.entries(kept).flatMap(([form, draft]: [string, unknown]) => {
    if (typeof draft !== "object" || draft === null) return [];
    const { typed, asked, now, bath } = draft as Readonly<Record<string, unknown>>;
    if (typeof typed !== "object" || typed === null || typeof asked !== "string" || typeof now !== "string") return [];
    const texts = Object.entries(typed).filter((one): one is [string, string] => typeof one[1] === "string");
    const whole = { typed: Object.fromEntries(texts), asked, now, bath: typeof bath === "string" ? bath : undefined };
    return [[form, whole] as const];
  });
}

export function draftsOn(device: OnThisDevice): Drafts {
  const drafts = new Map(draftsIn(device.read()));
  let open: string | undefined;
  let drafted = false;
  const write = (): void => {
    device.write(drafts.size === 0 ? undefined : Object.fromEntries(drafts));
  };
  const letGo = (key: string): void => {
    if (drafts.delete(key)) write();
  };
  return {
    of: (key) => drafts.get(key),
    keep: (key, draft) => {
      open = key;
      if (!isTyped(draft)) {
        letGo(key);
        return;
      }
      drafts.set(key, draft);
      write();
    },
    letGo,
    leave: () => {
      open = undefined;
    },
    noteFault: () => {
      drafted = open !== undefined && drafts.has(open);
    },
    wasDrafted: () => drafted,
  };
}

/** Without a pane around it a form keeps nothing. */
export const DraftsContext = createContext<Drafts>({
  of: () => undefined,
  keep: () => undefined,
  letGo: () => undefined,
  leave: () => undefined,
  noteFault: () => undefined,
  wasDrafted: () => false,
});
