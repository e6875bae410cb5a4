import axe from "axe-core";
import type { Frame, Page } from "playwright-core";

/** WCAG 2.2 A and AA. */
export const wcagTags = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"] as const;

type Asked = { readonly tags: readonly string[] } | { readonly rules: readonly string[] };

/** Faults that axe finds in a document, as "rule: element" lines. axe goes into a document once, however often it is asked. */
export async function axeFaultsIn(frame: Frame | Page, asked: Asked): Promise<string[]> {
  if (!(await frame.evaluate(() => "axe" in window))) await frame.evaluate(axe.source);
  const runOnly =
    "tags" in asked
      ? { type: "tag" as const, values: [...asked.tags] }
      : { type: "rule" as const, values: [...asked.rules] };
  return frame.evaluate(async (only) => {
    // A look that was changed a moment ago fades in: halfway, its colors are those of neither look.
    await new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn)));
    await Promise.allSettled(
      document
        .getAnimations()
        .filter(({ effect }) => effect?.getComputedTiming().endTime !== Infinity)
        .map(({ finished }) => finished),
    );
    const { violations } = await (window as unknown as { axe: typeof axe }).axe.run(document, {
      runOnly: only,
      resultTypes: ["violations"],
    });
    return violations.flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.html}`));
  }, runOnly);
}
