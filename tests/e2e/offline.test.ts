/** @module-tag landing */
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";

import { type Browser, chromium, type Page } from "playwright-core";
import { afterEach, describe, expect, it } from "vitest";

import { serve } from "../../scripts/serve.ts";
import { ensureBrowser, headlessFlags } from "../../scripts/tests/find-browser.ts";
import { openWorkbench, type WorkbenchWindow } from "./session/workbench-session.ts";

const closers: (() => Promise<unknown>)[] = [];

afterEach(async () => {
  for (const close of closers.splice(0).reverse()) await close();
});

function untilKept(page: Page): Promise<void> {
  return page.getByText("Bathsheet now opens without a network too on this device.").waitFor({ timeout: 30_000 });
}

describe("after the first visit", () => {
  it("opens and records a reading with the network cut, and has it after another reload", async () => {
    const bench = await openWorkbench("", { keepsFiles: true, clock: "2027-03-04T08:25" });
    closers.push(() => bench.close());
    const { page, pane } = bench;
    await untilKept(page);
    await page.context().setOffline(true);
    const [worker] = page.context().serviceWorkers();
    const askServer = (): Promise<string> =>
      fetch("LICENSE.txt", { cache: "no-store" }).then(
        () => "answered",
        () => "no network",
      );
    expect(await worker?.evaluate(askServer)).toBe("no network");
    await page.reload();
    await pane.getByRole("button", { name: "Reading", exact: true }).click();
    await pane.getByLabel("pH as read").fill("10.83");
    await pane.getByLabel("Sample temp").fill("78");
    await pane.getByRole("button", { name: "Record reading" }).click();
    await pane.getByText(/^Recorded: pH 10.83 at 78 °F/).waitFor();
    await page
      .locator("#kept")
      .getByText(/^kept on this device/)
      .waitFor();
    const cell = await bench.cellOf("Readings", "pH as read", 20);
    await page.reload();
    await pane.getByRole("tab", { name: "Now" }).waitFor();
    expect(await bench.value(cell)).toBe(10.83);

    for (const view of ["Record", "Try", "Claims", "Functions", "Shop"] as const) {
      await bench.view(view);
      await pane.getByRole("tabpanel").getByRole("heading").first().waitFor();
      expect(await pane.getByText("could not be loaded").count()).toBe(0);
    }
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Save a copy" }).first().click(),
    ]);
    await page.locator('input[type="file"]').setInputFiles(await download.path());
    await page
      .getByRole("dialog")
      .getByText(/A job log of Bathsheet/)
      .waitFor();
    expect([bench.faults, bench.strangers]).toEqual([[], []]);
  });

  it("can be installed: its manifest has a name, a start and icons of the sizes that browsers ask for", async () => {
    const bench = await openWorkbench("?start=empty");
    closers.push(() => bench.close());
    const session = await bench.page.context().newCDPSession(bench.page);
    const { installabilityErrors } = await session.send("Page.getInstallabilityErrors");
    // A test's window is a private one, which no browser installs from.
    expect(installabilityErrors.map(({ errorId }) => errorId)).toEqual(["in-incognito"]);
    const { errors, data = "" } = await session.send("Page.getAppManifest");
    expect(errors).toEqual([]);
    const { icons } = JSON.parse(data) as {
      readonly icons: readonly { readonly src: string; readonly sizes: string }[];
    };
    for (const { src, sizes } of icons) {
      const size = await bench.page.evaluate(async (address) => {
        const { width, height } = await createImageBitmap(await (await fetch(address)).blob());
        return `${String(width)}x${String(height)}`;
      }, src);
      expect(size).toBe(sizes);
    }
  });
});

/** The built workbench, as a server has it whose owner puts a new version up at some time. */
async function serverOfTwoVersions(): Promise<{ readonly address: string; readonly putUp: () => void }> {
  const first = await serve(0);
  closers.push(first.close);
  const title = "Bathsheet workbench, newer";
  let isNew = false;
  const server = createServer((request, response) => {
    void (async () => {
      const name = (request.url ?? "/").split("?")[0] ?? "/";
      const given = await fetch(first.address + name);
      let body = new Uint8Array(await given.arrayBuffer());
      const text = new TextDecoder().decode(body);
      const page = (html: string): string => html.replace("<title>Bathsheet workbench<", `<title>${title}<`);
      if (isNew && (name === "/" || name === "/index.html")) body = new TextEncoder().encode(page(text));
      if (isNew && name === "/service-worker.js") {
        const html = page(await (await fetch(`${first.address}/index.html`)).text());
        const digest = await crypto.subtle.digest("SHA-256", new TextEncoder().encode(html));
        const next = text
          .replace(/"version":"\w+"/, '"version":"newer"')
          .replace(/"index.html":"\w+"/, `"index.html":"${Buffer.from(digest).toString("hex")}"`);
        body = new TextEncoder().encode(next);
      }
      response.writeHead(given.status, {
        "Content-Type": given.headers.get("content-type") ?? "",
        "Cache-Control": "no-cache",
      });
      response.end(body);
    })();
  });
  await new Promise<void>((resolve) => {
    server.listen(0, "localhost", resolve);
  });
  closers.push(() => {
    server.closeAllConnections();
    return new Promise((resolve) => {
      server.close(resolve);
    });
  });
  return {
    address: `http://localhost:${String((server.address() as AddressInfo).port)}`,
    putUp: () => {
      isNew = true;
    },
  };
}

describe("a new version", () => {
  it("says so, waits for a yes, keeps what was entered, and is told to other tabs", async () => {
    const { address, putUp } = await serverOfTwoVersions();
    const browser: Browser = await chromium.launch({ executablePath: ensureBrowser(), args: headlessFlags });
    closers.push(() => browser.close());
    const context = await browser.newContext();
    const page = await context.newPage();
    // A browser may let a worker wait for half a minute until what is under way has ended.
    page.setDefaultTimeout(80_000);
    await page.goto(`${address}/?start=empty`);
    await untilKept(page);
    putUp();
    await page.reload();
    const line = page.locator("#app-update");
    await line.getByText("A new version of Bathsheet is ready.").waitFor();
    expect(await page.title()).toBe("Bathsheet workbench");
    await line.getByRole("button", { name: "Later" }).click();
    await line.waitFor({ state: "hidden" });

    await page.reload();
    expect(await page.title()).toBe("Bathsheet workbench");
    await line.waitFor();
    const other = await context.newPage();
    await other.goto(`${address}/?start=empty`);
    await other.locator("#app-update").getByText("is ready").waitFor();

    await page.evaluate(() => {
      (window as unknown as WorkbenchWindow).bathsheetWorkbench.setCell("Sheet1!A1", "12.5");
    });
    await line.getByRole("button", { name: "Use it now" }).click();
    await page.waitForFunction(() => document.title === "Bathsheet workbench, newer" && "bathsheetWorkbench" in window);
    await page.frameLocator("iframe").getByRole("heading").first().waitFor();
    const value = await page.evaluate(() =>
      (window as unknown as WorkbenchWindow).bathsheetWorkbench.value("Sheet1!A1"),
    );
    expect(value).toBe(12.5);
    expect(await page.evaluate(() => caches.keys())).toEqual(["bathsheet newer"]);
    await other.locator("#app-update").getByText("changed to a new version in another tab").waitFor();
  });
});
