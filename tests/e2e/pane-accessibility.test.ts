/** @module-tag landing */
import { afterAll, beforeAll, describe, expect, it } from "vitest";

import { looks, narrowPane, paneFaults } from "./session/pane-faults.ts";
import { openWorkbench, type WorkbenchSession } from "./session/workbench-session.ts";

let bench: WorkbenchSession;

beforeAll(async () => {
  bench = await openWorkbench();
});

afterAll(async () => {
  await bench.close();
});

async function unfold(): Promise<void> {
  await bench.pane.locator("details").evaluateAll((folds) => {
    for (const fold of folds) fold.setAttribute("open", "");
  });
}

const formsElsewhere = [
  { view: "Claims", button: "Add a cost line", form: "Cost line" },
  { view: "Shop", button: "Limits", form: "Limits" },
  { view: "Shop", button: "Change concentrate CN-1", form: "Concentrate CN-1" },
  { view: "Shop", button: "Record a count or receipt", form: "Stock" },
] as const;

describe("the pane, at 320 px", () => {
  it.each(looks)(
    "has no accessibility fault in any view or form of Claims and Shop, targets for gloved fingers, and never scrolls sideways (%s)",
    async (look) => {
      expect(await narrowPane(bench, look)).toBe(320);
      for (const view of ["Now", "Claims", "More", "Try", "Functions", "Shop", "Record"] as const) {
        await bench.view(view);
        await bench.pane.getByText("Opening…").waitFor({ state: "detached" });
        if (view === "Try" || view === "Shop") await unfold();
        expect([view, await paneFaults(bench, look)]).toEqual([view, []]);
      }
      for (const { view, button, form } of formsElsewhere) {
        await bench.view(view);
        await unfold();
        await bench.pane.getByRole("button", { name: button, exact: true }).click();
        await bench.pane.getByRole("form", { name: form }).waitFor();
        expect([form, await paneFaults(bench, look)]).toEqual([form, []]);
        await bench.pane.getByRole("button", { name: view, exact: true }).click();
      }
    },
  );

  it("puts the focus on the first field to put right, and loses no entry by Escape", async () => {
    const { keyboard } = bench.page;
    const focused = (): Promise<string> =>
      bench.pane
        .locator(":focus")
        .evaluate((element) =>
          element instanceof HTMLInputElement ? (element.labels?.[0]?.textContent ?? "") : element.textContent,
        );
    await bench.pane.getByRole("tab", { name: "Record" }).click();
    await bench.pane.getByRole("button", { name: "Reading", exact: true }).click();
    expect(await focused()).toBe("Reading");
    await keyboard.press("Tab");
    expect(await focused()).toMatch(/^pH as read/);
    await keyboard.type("11.2");
    await keyboard.press("Enter");
    await expect.poll(focused).toMatch(/^Sample/);
    await keyboard.press("Escape");
    await expect.poll(focused).toBe("All entries");
    expect(await bench.pane.getByRole("textbox", { name: "pH as read" }).inputValue()).toBe("11.2");
    await keyboard.press("Enter");
    await bench.pane.getByRole("button", { name: "Care", exact: true }).click();
    await bench.pane.getByRole("form", { name: "Care" }).waitFor();
    await keyboard.press("Escape");
    await bench.pane.getByRole("form", { name: "Care" }).waitFor({ state: "detached" });
  });

  it("moves between tabs by arrows, Home and End, and opens a view by Enter or space alone", async () => {
    const { keyboard } = bench.page;
    const focusedTab = (): Promise<string> => bench.pane.locator("[role=tab]:focus").innerText();
    const chosenTab = (): Promise<string> => bench.pane.locator("[role=tab][aria-selected=true]").innerText();
    await bench.pane.getByRole("tab", { name: "Record" }).click();
    await bench.pane.getByRole("button", { name: "Reading", exact: true }).click();
    const ph = bench.pane.getByRole("textbox", { name: "pH as read" });
    await ph.fill("11.3");
    await bench.pane.getByRole("tab", { name: "Record" }).focus();
    const keys = [
      ["ArrowRight", "Claims"],
      ["End", "More"],
      ["ArrowRight", "Now"],
      ["ArrowLeft", "More"],
      ["Home", "Now"],
    ] as const;
    for (const [key, name] of keys) {
      await keyboard.press(key);
      expect([key, await focusedTab(), await chosenTab(), await ph.inputValue()]).toEqual([
        key,
        name,
        "Record",
        "11.3",
      ]);
    }
    await keyboard.press("ArrowRight");
    await keyboard.press("ArrowRight");
    await keyboard.press("Space");
    await expect.poll(chosenTab).toBe("Claims");
    await keyboard.press("Home");
    await keyboard.press("Enter");
    await expect.poll(chosenTab).toBe("Now");
  });

  it("opens what is behind More and comes back to the list, with the focus where reading goes on", async () => {
    const { keyboard } = bench.page;
    const focused = (): Promise<string> => bench.pane.locator(":focus").innerText();
    const chosenTab = (): Promise<string> => bench.pane.locator("[role=tab][aria-selected=true]").innerText();
    const titles = [
      ["Shop", "The shop’s own figures"],
      ["Try", "Try it out"],
      ["Functions", "Worksheet functions"],
    ] as const;
    for (const [name, title] of titles) {
      await bench.view("More");
      await bench.pane.getByRole("button", { name, exact: true }).focus();
      await keyboard.press("Enter");
      await expect.poll(focused).toBe(title);
      expect(await chosenTab()).toBe("More");
      await keyboard.press("Shift+Tab");
      expect(await focused()).toBe("More");
      await keyboard.press("Enter");
      await bench.pane.getByRole("button", { name, exact: true }).waitFor();
      expect(await bench.pane.locator(":focus").evaluate(({ tagName }) => tagName)).toBe("H2");
    }
  });

  it("records a reading with the keyboard alone", async () => {
    const { keyboard } = bench.page;
    await bench.pane.getByRole("tab", { name: "Record" }).focus();
    await keyboard.press("Enter");
    await bench.pane.getByRole("button", { name: "Reading", exact: true }).focus();
    await keyboard.press("Enter");
    await bench.pane.getByRole("button", { name: "Clear" }).focus();
    await keyboard.press("Enter");
    await bench.pane.getByRole("textbox", { name: "pH as read" }).focus();
    await keyboard.type("11.20");
    await keyboard.press("Tab");
    await keyboard.type("77");
    await keyboard.press("Enter");
    await bench.pane.getByRole("form", { name: "Reading" }).waitFor({ state: "detached" });
    expect(await bench.lookUp("Readings", "R020", "pH as read")).toBe(11.2);
  });
});
