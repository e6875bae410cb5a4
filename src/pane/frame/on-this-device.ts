/** Small things that the pane remembers on this device, outside the workbook. */
export interface OnThisDevice {
  readonly read: () => unknown;
  /** Undefined forgets it. */
  readonly write: (value: unknown) => void;
}

/**
 * What stands under this name in the browser's storage. A private window and a locked-down computer refuse it: then it
 * lasts as long as the pane, and nothing else is lost by that.
 */
export function onThisDevice(name: string): OnThisDevice {
  const key = `bathsheet ${name}`;
  let held: unknown;
  try {
    const text = localStorage.getItem(key);
    held = text === null ? undefined : (JSON.parse(text) as unknown);
  } catch {
    held = undefined;
  }
  return {
    read: () => held,
    write: (value) => {
      held = value;
      try {
        if (value === undefined) localStorage.removeItem(key);
        else localStorage.setItem(key, JSON.stringify(value));
      } catch {
        // It lasts as long as the pane.
      }
    },
  };
}
