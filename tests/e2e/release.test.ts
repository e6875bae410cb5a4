/** @module-tag landing */
import { unzipSync } from "fflate";
import { afterAll, beforeAll, describe, expect, it } from "vitest";

import { distFolder } from "../../scripts/project.ts";
import { packRelease } from "../../scripts/release/pack-release.ts";
import { servePlainly } from "./session/plain-server.ts";
import { openWorkbench, type WorkbenchSession } from "./session/workbench-session.ts";

let bench: WorkbenchSession;

beforeAll(async () => {
  const { zip } = await packRelease(distFolder, "0.1.0");
  const site = new Map(
    Object.entries(unzipSync(zip)).flatMap(([name, content]) => {
      const file = /^bathsheet-0\.1\.0\/site\/(.+)$/.exec(name)?.[1];
      return file === undefined ? [] : [[file, content] as const];
    }),
  );
  bench = await openWorkbench("", { served: () => servePlainly("/shops/wash", site), keepsFiles: true });
});

afterAll(async () => {
  await bench.close();
});

describe("a release under a folder of a plain web server", () => {
  it("runs the pane, with the parts that it loads later", async () => {
    await bench.pane.getByText("Top up", { exact: false }).first().waitFor();
    await bench.pane.getByRole("tab", { name: "Record" }).click();
    await bench.pane
      .getByRole("button", { name: /^Reading/ })
      .first()
      .click();
    await bench.pane.getByRole("textbox", { name: /^pH/ }).waitFor();
  });

  it("runs the functions", async () => {
    await bench.setCell("Notes!H40", '=BATH.DOSE(121.175,"1+28")');
    expect(await bench.value("Notes!H40")).toBeCloseTo(121.175 / 29, 9);
  });

  it("keeps its files for a visit without a network, and asks nobody else for anything", async () => {
    await bench.page.getByText("opens without a network too").waitFor();
    await bench.page.context().setOffline(true);
    await bench.page.reload();
    await bench.pane.getByRole("tab", { name: "Record" }).waitFor();
    await bench.page.context().setOffline(false);
    expect(bench.strangers).toEqual([]);
    expect(bench.faults).toEqual([]);
  });
});
