/** @module-tag landing */
import { afterAll, beforeAll, describe, expect, it } from "vitest";

import { tourSteps } from "../../src/pane/tour/tour-steps.ts";
import { looks, narrowPane, paneFaults } from "./session/pane-faults.ts";
import { openWorkbench, type WorkbenchSession } from "./session/workbench-session.ts";

let bench: WorkbenchSession;

beforeAll(async () => {
  bench = await openWorkbench("", { isNew: true, answers: "at once" });
});

afterAll(async () => {
  await bench.close();
});

const button = (name: string) => bench.pane.getByRole("button", { name, exact: true });
const tour = () => bench.pane.getByRole("region", { name: "Tour" });
const tab = (name: string) => bench.pane.getByRole("tab", { name, exact: true });

describe("a tour", () => {
  it("is offered to a person who is new on this device", async () => {
    await button("Take the tour").waitFor();
    await narrowPane(bench, "light");
    expect(await paneFaults(bench, "light")).toEqual([]);
  });

  it("shows each step over the view that it tells of, and can go back", async () => {
    await button("Take the tour").click();
    for (const [index, { title, view }] of tourSteps.entries()) {
      const heading = tour().getByRole("heading", { name: title });
      await heading.waitFor();
      expect(await heading.evaluate((shown) => shown === document.activeElement)).toBe(true);
      const name = `${view.charAt(0).toUpperCase()}${view.slice(1)}`;
      await expect.poll(() => tab(name).getAttribute("aria-selected")).toBe("true");
      if (index === 1) {
        await button("Back").click();
        await tour().getByText("Step 1 of").waitFor();
        await button("Next").click();
        await heading.waitFor();
      }
      if (index < tourSteps.length - 1) await button("Next").click();
    }
    await narrowPane(bench, "dark");
    expect(await paneFaults(bench, "dark")).toEqual([]);
    await button("Done").click();
    await tour().waitFor({ state: "detached" });
  });

  it("is not offered again, and is there again under More", async () => {
    await bench.page.reload();
    await tab("More").click();
    expect(await tour().count()).toBe(0);
    await button("Tour").click();
    await button("End the tour").click();
    await tour().waitFor({ state: "detached" });
  });
});

describe("About", () => {
  it("says which version this is, how far to trust it, and whose work is in it", async () => {
    await tab("More").click();
    await button("About").click();
    await bench.pane.getByText(/^Version \d+\.\d+\.\d+, under the MIT license/).waitFor();
    await bench.pane.getByText("The packages", { exact: true }).click();
    await bench.pane.getByText(/^@odoo\/o-spreadsheet [\d.]+ \(LGPL-3\.0-or-later\)$/).waitFor();
    await bench.pane.getByText("Where the confirmed constants were found", { exact: true }).click();
    await bench.pane.getByText(/^PHREEQC databases: \d+$/).waitFor();
    for (const look of looks) {
      await narrowPane(bench, look);
      expect(await paneFaults(bench, look), look).toEqual([]);
    }
  });

  it("links to pages that there are", async () => {
    const links = await bench.pane
      .getByRole("tabpanel")
      .getByRole("link")
      .evaluateAll((all) => all.map((link) => (link as HTMLAnchorElement).href));
    expect(links.length).toBeGreaterThan(1);
    for (const link of links) {
      const { pathname, hash } = new URL(link);
      const response = await bench.page.request.get(link);
      expect(response.status(), pathname).toBe(200);
      if (hash !== "") expect(await response.text()).toContain(`id="${hash.slice(1)}"`);
    }
    expect(bench.faults).toEqual([]);
  });
});
