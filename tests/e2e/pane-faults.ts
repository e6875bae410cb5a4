import { AxeBuilder } from "@axe-core/playwright";

import type { WorkbenchSession } from "./workbench-session.ts";

export const looks = ["light", "dark", "contrast"] as const;

/** Shows the pane in a look and at 320 px, and gives the width that it then has. */
export async function narrowPane({ page, pane }: WorkbenchSession, look: (typeof looks)[number]): Promise<number> {
  await page.emulateMedia(
    look === "contrast" ? { colorScheme: "dark", forcedColors: "active" } : { colorScheme: look, forcedColors: "none" },
  );
  await page.evaluate(() => {
    document.querySelector("main")?.style.setProperty("--pane-width", "320px");
  });
  return pane.locator("html").evaluate(() => window.innerWidth);
}

/** Faults that axe finds in the pane by WCAG 2.2 A and AA, as "rule: element" lines. */
async function axeFaults({ page }: WorkbenchSession): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page })
    .include(["#pane-frame", "body"])
    // What passed is counted in full otherwise, and nobody reads it.
    .options({ resultTypes: ["violations"] })
    .withTags(["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"])
    .analyze();
  return violations.flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.html}`));
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
export async function paneFaults(bench: WorkbenchSession): Promise<string[]> {
  return [...(await axeFaults(bench)), ...(await smallTargets(bench)), ...(await overflow(bench))];
}
