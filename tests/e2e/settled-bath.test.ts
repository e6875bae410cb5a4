/**
 * Settling a closed bath from the Shop view, what Now says once something changes, and the way back.
 *
 * @module-tag landing
 */
import { afterAll, afterEach, beforeAll, expect, it } from "vitest";

import { axeFaults } from "./session/pane-faults.ts";
import { type Contents, openWorkbench, type WorkbenchSession } from "./session/workbench-session.ts";

const bath = "B-T1-0301";

let bench: WorkbenchSession;
let before: Contents;
let closedCell: string;

beforeAll(async () => {
  bench = await openWorkbench();
  closedCell = await bench.cellOf("Baths", "Closed", 1);
  if ((await bench.value(closedCell)) === "") await bench.setCell(closedCell, "46453.4");
  before = await bench.contents();
});

afterEach(async ({ task }) => {
  if (task.result?.state === "fail")
    await bench.page.screenshot({ path: `test-results/${task.name.slice(0, 40)}.png` });
});

afterAll(async () => {
  await bench.close();
});

const button = (name: string) => bench.pane.getByRole("button", { name, exact: true });
const card = () => bench.pane.getByRole("region", { name: "Settle a closed bath" });

it("settles it, says so, and changes no figure of any sheet but the note", async () => {
  await bench.view("Shop");
  await bench.pane.getByText("Closed baths", { exact: true }).click();
  await card().getByLabel("Closed bath").selectOption(bath);
  await card().getByLabel("Your initials").fill("TF");
  expect(await axeFaults(bench)).toEqual([]);
  await button("Settle this bath").click();
  await card()
    .getByText(new RegExp(`^Bath ${bath} is settled: \\d+ rows in all\\.`))
    .waitFor();
  await card()
    .getByText(new RegExp(`^Bath ${bath} was settled .* by TF\\.$`))
    .waitFor();
  const after = await bench.contents();
  const differs = Object.entries(before.sheets).filter(
    ([name, cells]) => JSON.stringify(cells) !== JSON.stringify(after.sheets[name]),
  );
  expect(differs.map(([name]) => name)).toEqual(["Baths"]);
});

it("has Now name the bath once its formulas would give another figure, with the way back beside it", async () => {
  const drop = await bench.cellOf("Baths", "Drop allowed, pH", 1);
  const held = String(await bench.value(drop));
  await bench.setCell(drop, "1.1");
  await bench.view("Now");
  await bench.pane
    .getByText(new RegExp(`: bath ${bath} was settled, and something that this rests on changed since\\.`))
    .first()
    .waitFor({ timeout: 60_000 });
  await button("Put the formulas back").click();
  await bench.pane.getByText(/was settled, and something/).waitFor({ state: "detached", timeout: 60_000 });
  await bench.setCell(drop, held);
  expect(await bench.contents()).toEqual(before);
  expect(bench.faults).toEqual([]);
});
