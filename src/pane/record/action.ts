import type { FluentIcon } from "@fluentui/react-icons";

import type { LongWork } from "../../excel/long-work.ts";

/** What must be there before an action makes sense. */
export type Need = "nothing" | "log" | "bath";

/** One thing that a person can do: its button reads name, icon and need from here. */
export interface Action<Input, Outcome> {
  readonly name: string;
  readonly icon: FluentIcon;
  readonly needs: Need;
  /** Rejects with a LogProblem, which says whether anything may have been changed; long work tells `work` how far it is. */
  readonly run: (input: Input, work?: LongWork) => Promise<Outcome>;
}
