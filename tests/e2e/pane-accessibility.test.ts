import { AxeBuilder } from "@axe-core/playwright";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openWorkbench, type WorkbenchSession } from "./workbench-session.ts";

let bench: WorkbenchSession;

beforeAll(async () => {
  bench = await openWorkbench();
});

afterAll(async () => {
  await bench.close();
});

/** Faults that axe finds in the pane by WCAG 2.2 A and AA, as "rule: element" lines. */
async function faults(): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page: bench.page })
    .include(["#pane-frame", "body"])
    .withTags(["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"])
    .analyze();
  return violations.flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.html}`));
}

async function narrowPane(): Promise<void> {
  await bench.page.evaluate(() => {
    document.querySelector("main")?.style.setProperty("--pane-width", "320px");
  });
}

/** How many pixels the pane's content is wider than the pane. */
function overflow(): Promise<number> {
  return bench.pane.locator("html").evaluate((page) => page.scrollWidth - page.clientWidth);
}

const forms = ["Item", "Meter check", "Charge", "Bench test", "Baseline", "Load", "Reading", "Top-up", "Level make-up", "Care", "Change-out", "Release"];

describe("the pane, at 320 px", () => {
  it.each(["light", "dark"] as const)("has no accessibility fault in any view or form and never scrolls sideways (%s)", async (scheme) => {
    await bench.page.emulateMedia({ colorScheme: scheme });
    await narrowPane();
    expect(await bench.pane.locator("html").evaluate(() => window.innerWidth)).toBe(320);
    for (const view of ["Now", "Functions", "Record"]) {
      await bench.pane.getByRole("tab", { name: view }).click();
      expect([view, await faults(), await overflow()]).toEqual([view, [], 0]);
    }
    for (const form of forms) {
      await bench.pane.getByRole("button", { name: form, exact: true }).click();
      await bench.pane.getByRole("form", { name: form }).waitFor();
      expect([form, await faults(), await overflow()]).toEqual([form, [], 0]);
      await bench.pane.getByRole("button", { name: "All entries" }).click();
    }
  });

  it("records a reading with the keyboard alone", async () => {
    const { keyboard } = bench.page;
    await bench.pane.getByRole("tab", { name: "Record" }).focus();
    await keyboard.press("Enter");
    await bench.pane.getByRole("button", { name: "Reading", exact: true }).focus();
    await keyboard.press("Enter");
    await bench.pane.getByRole("textbox", { name: "pH as read" }).focus();
    await keyboard.type("11.20");
    await keyboard.press("Tab");
    await keyboard.type("77");
    await keyboard.press("Enter");
    await bench.pane.getByRole("form", { name: "Reading" }).waitFor({ state: "detached" });
    expect(await bench.lookUp("Readings", "R011", "pH as read")).toBe(11.2);
  });
});
