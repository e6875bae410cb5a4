import { createContext } from "react";

import type { Noting, RootOf } from "../../advice/unlike-cells.ts";

/** How far the figures of the log that is shown can be relied upon. */
export interface Figures {
  readonly noting: Noting;
  /** Given once the sheet has not changed for some time. */
  readonly rootOf: RootOf | undefined;
}

export const FiguresContext = createContext<Figures>({
  noting: (work) => ({ answer: work(), unlike: [] }),
  rootOf: undefined,
});
