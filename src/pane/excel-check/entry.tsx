import { createRoot } from "react-dom/client";

import { recordCalls } from "../../excel/check/call-record.ts";
import { hostShade, whenHostReady } from "../../excel/office-host.ts";
import { CheckView } from "./check-view.tsx";

// While this script loads: the functions register right after it.
const calls = recordCalls();

function takeShade(): void {
  const dark = window.matchMedia("(prefers-color-scheme: dark)");
  const take = (): void => {
    document.documentElement.dataset["shade"] = hostShade() ?? (dark.matches ? "dark" : "light");
  };
  dark.addEventListener("change", take);
  take();
}

const pageParsed = new Promise<void>((resolve) => {
  document.addEventListener("DOMContentLoaded", () => {
    resolve();
  });
});

void Promise.all([whenHostReady(), pageParsed]).then(() => {
  const place = document.getElementById("check");
  if (place === null) throw new Error("The page has no place for the check.");
  takeShade();
  createRoot(place).render(<CheckView calls={calls} />);
});
