import { createContext } from "react";

import type { OnThisDevice } from "./on-this-device.ts";

/** Which steps' cautions have stood open in front of a person today: from then on they fold, until tomorrow. */
export interface CautionsToday {
  readonly wereShown: (step: string) => boolean;
  /** The step was done with its cautions in sight. */
  readonly note: (step: string) => void;
}

/** `today` gives the day by the wall clock, as 2027-03-04. */
export function cautionsOn(device: OnThisDevice, today: () => string): CautionsToday {
  const prefix = (): string => `${today()} `;
  const shown = (): readonly string[] => {
    const kept = device.read();
    return Array.isArray(kept) ? kept.map(String).filter((one) => one.startsWith(prefix())) : [];
  };
  return {
    wereShown: (step) => shown().includes(prefix() + step),
    note: (step) => {
      if (!shown().includes(prefix() + step)) device.write([...shown(), prefix() + step]);
    },
  };
}

/** Without a pane around them cautions stand open. */
export const CautionsContext = createContext<CautionsToday>({ wereShown: () => false, note: () => undefined });
