import { afterAll, beforeAll, describe, expect, it } from "vitest";

import { openWorkbench, type WorkbenchSession } from "./session/workbench-session.ts";

let bench: WorkbenchSession;

beforeAll(async () => {
  bench = await openWorkbench();
});

afterAll(async () => {
  await bench.close();
});

const field = (name: string) => bench.pane.getByRole("textbox", { name });
const submit = () => bench.pane.getByRole("button", { name: "Record reading" }).click();

async function openReading(): Promise<void> {
  await bench.pane.getByRole("tab", { name: "Record" }).click();
  const back = bench.pane.getByRole("button", { name: "All entries" });
  if (await back.isVisible()) await back.click();
  await bench.pane.getByRole("button", { name: "Reading", exact: true }).click();
}

/** How many readings the log holds. */
async function readings(): Promise<number> {
  const { sheets } = await bench.contents();
  return (sheets["Readings"] ?? []).filter(([id]) => /^R\d+$/.test(String(id))).length;
}

describe("bad input in the pane", () => {
  it("is refused with the field, what was given and what is allowed, and writes nothing", async () => {
    const before = await readings();
    await openReading();
    await field("pH as read").fill("111.8");
    await field("Sample temp").fill("77");
    await submit();
    const form = bench.pane.getByRole("form", { name: "Reading" });
    const said = await form.innerText();
    expect(said).toMatch(/pH as read.*111\.8.*14/s);
    expect(await readings()).toBe(before);
  });

  it("shows both readings of a number that could be two", async () => {
    await field("pH as read").fill("11.2");
    await field("Sample temp").fill("1,500");
    await submit();
    const said = await bench.pane.getByRole("form", { name: "Reading" }).innerText();
    expect(said).toMatch(/1500/);
    expect(said).toMatch(/1\.5\b/);
  });

  it("names a renamed column, writes nothing and keeps what was typed", async () => {
    const before = await readings();
    const heading = await bench.cellOf("Readings", "pH as read", 0);
    await bench.setCell(heading, "acidity");
    await field("pH as read").fill("11.18");
    await field("Sample temp").fill("77");
    await submit();
    await expect.poll(() => bench.pane.getByRole("main").innerText()).toMatch(/pH as read/);
    expect(await bench.pane.getByRole("main").innerText()).toMatch(/Readings/);
    expect(await field("pH as read").inputValue()).toBe("11.18");
    expect(await readings()).toBe(before);
    await bench.setCell(heading, "pH as read");
  });

  it("is written as text where it looks like a formula", async () => {
    const before = await readings();
    await openReading();
    await field("pH as read").fill("11.19");
    await field("Sample temp").fill("77");
    await bench.pane.getByText("More details", { exact: true }).click();
    await field("Note").fill("=1+1");
    await submit();
    await bench.pane.getByRole("form", { name: "Reading" }).waitFor({ state: "detached" });
    expect(await bench.lookUp("Readings", `R${String(before + 1).padStart(3, "0")}`, "Note")).toBe("=1+1");
  });
});
