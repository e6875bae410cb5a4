import type { Theme } from "@fluentui/react-components";
import { useSyncExternalStore } from "react";

import { hostShade } from "../../excel/office-host.ts";
import { darkTheme, lightTheme } from "./pane-theme.ts";

const dark = window.matchMedia("(prefers-color-scheme: dark)");

function subscribe(notify: () => void): () => void {
  dark.addEventListener("change", notify);
  return () => {
    dark.removeEventListener("change", notify);
  };
}

function currentTheme(): Theme {
  const shade = hostShade() ?? (dark.matches ? "dark" : "light");
  return shade === "dark" ? darkTheme : lightTheme;
}

/** Excel's shade where it says one, else the system's. A contrast theme of the system replaces every color by itself. */
export function usePaneTheme(): Theme {
  return useSyncExternalStore(subscribe, currentTheme);
}
