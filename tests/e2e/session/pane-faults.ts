import { expect } from "vitest";

import { axeFaultsIn, wcagTags } from "./axe-faults.ts";
import type { WorkbenchSession } from "./workbench-session.ts";

export const looks = ["light", "dark", "contrast"] as const;

/** So high that all of a form is in sight, for a target under the bar that stays in sight would pass for a small one. */
const wholeForm = 3200;

/** Shows the pane in a look and at 320 px, and gives the width that it then has. */
export async function narrowPane({ page, pane }: WorkbenchSession, look: (typeof looks)[number]): Promise<number> {
  await page.emulateMedia(
    look === "contrast" ? { colorScheme: "dark", forcedColors: "active" } : { colorScheme: look, forcedColors: "none" },
  );
  await page.setViewportSize({ width: page.viewportSize()?.width ?? 1440, height: wholeForm });
  const width = (): Promise<number> => pane.locator("html").evaluate(() => window.innerWidth);
  // When the page takes its new size, it gives the pane the width that a person chose.
  await expect
    .poll(async () => {
      await page.evaluate(() => {
        document.querySelector("main")?.style.setProperty("--pane-width", "320px");
      });
      return width();
    })
    .toBe(320);
  return width();
}

/** The rules that a look can break: what the pane is made of is the same in each. */
const rulesOfColor = ["color-contrast", "link-in-text-block"];

/** Faults that axe finds in the pane, as "rule: element" lines; of other looks than the first, those of color. */
export async function axeFaults({ page }: WorkbenchSession, look: (typeof looks)[number] = "light"): Promise<string[]> {
  const [, pane] = page.frames();
  if (pane === undefined) throw new Error("The page has no pane.");
  return axeFaultsIn(pane, look === "light" ? { tags: wcagTags } : { rules: rulesOfColor });
}

/** What can be pressed or typed in and is lower than 44 px. */
function smallTargets({ pane }: WorkbenchSession): Promise<string[]> {
  return pane.locator("button, summary, select, input:not([type=file])").evaluateAll((targets) =>
    targets.flatMap((target) => {
      const { height } = (target.closest(".fui-Input") ?? target).getBoundingClientRect();
      return height === 0 || height >= 44 ? [] : [`${String(height)} px: ${target.outerHTML}`];
    }),
  );
}

/** How many pixels the pane's content is wider than the pane. */
async function overflow({ pane }: WorkbenchSession): Promise<string[]> {
  const wider = await pane.locator("html").evaluate((page) => page.scrollWidth - page.clientWidth);
  return wider === 0 ? [] : [`scrolls sideways by ${String(wider)} px`];
}

/** What keeps a person from using the pane as it now stands. */
export async function paneFaults(bench: WorkbenchSession, look: (typeof looks)[number] = "light"): Promise<string[]> {
  return [...(await axeFaults(bench, look)), ...(await smallTargets(bench)), ...(await overflow(bench))];
}
