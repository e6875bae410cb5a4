import { describe, expect, it } from "vitest";

import type { Host } from "../../../src/workbench/host/create-host.ts";
import { enter, read, testHost } from "./test-host.ts";

/** A1 is typed, A2 asks the add-in, A3 reckons with its answer, A4 asks with that, A5 with A1 alone. */
async function chain(): Promise<Host> {
  const host = testHost();
  await enter(host, "A1:A5", [[1], ["=BATH.TWICE(A1)"], ["=A2+1"], ["=BATH.TWICE(A3)"], ["=A1+1"]]);
  return host;
}

const shown = async (host: Host): Promise<readonly unknown[]> => (await read(host, "A1:A5", "values")).flat();

const former = [1, 2, 3, 6, 2];
const worked = [5, 10, 11, 22, 6];

describe("functions that answer later than the write", () => {
  it.each([
    ["#BUSY!", [5, "#BUSY!", "#BUSY!", "#BUSY!", 6]],
    ["former value", [5, 2, 3, 6, 6]],
    ["0", [5, 0, 0, 0, 6]],
  ] as const)("show %s, and all that depends on them does", async (until, meanwhile) => {
    const host = await chain();
    expect(await shown(host)).toEqual(former);
    host.answerLate({ until, seed: 1 });
    expect(await shown(host)).toEqual(former);
    expect(await enter(host, "A1", [[5]])).toEqual([[5]]);
    expect(await shown(host)).toEqual(meanwhile);
    expect(host.workbook.answers.areComplete).toBe(false);
    host.workbook.answers.answerAll();
    expect(await shown(host)).toEqual(worked);
    expect(host.workbook.answers.areComplete).toBe(true);
  });

  it("answer one after the other, a dependent never before what it depends on", async () => {
    const orders = new Set<string>();
    for (let seed = 0; seed < 20; seed += 1) {
      const host = await chain();
      host.answerLate({ until: "#BUSY!", seed });
      await enter(host, "A1", [[5]]);
      while (!host.workbook.answers.areComplete) {
        host.workbook.answers.answerSome();
        const cells = await shown(host);
        orders.add(cells.join());
        if (cells[1] === "#BUSY!") expect(cells.slice(2, 4)).toEqual(["#BUSY!", "#BUSY!"]);
      }
      expect(await shown(host)).toEqual(worked);
    }
    expect([...orders].sort()).toEqual(["5,#BUSY!,#BUSY!,#BUSY!,6", "5,10,11,#BUSY!,6", "5,10,11,22,6"]);
  });

  it("show any of the three by the seed, and the same for the same seed", async () => {
    const look = async (seed: number): Promise<string> => {
      const host = await chain();
      host.answerLate({ until: "any of them", seed });
      await enter(host, "A1", [[5]]);
      return (await shown(host)).join();
    };
    const looks = await Promise.all(Array.from({ length: 30 }, (_, seed) => look(seed)));
    expect(new Set(looks.map((one) => one.split(",")[1]))).toEqual(new Set(["#BUSY!", "2", "0"]));
    expect(await look(7)).toBe(looks[7]);
  });

  it("keep the figure from before the first of two writes as long as neither is answered", async () => {
    const host = await chain();
    host.answerLate({ until: "former value", seed: 1 });
    await enter(host, "A1", [[5]]);
    await enter(host, "A1", [[7]]);
    expect(await shown(host)).toEqual([7, 2, 3, 6, 8]);
    host.workbook.answers.answerAll();
    expect(await shown(host)).toEqual([7, 14, 15, 30, 8]);
  });

  it("have nothing former in a new cell", async () => {
    const host = await chain();
    host.answerLate({ until: "former value", seed: 1 });
    expect(await enter(host, "B1", [["=BATH.TWICE(A1)"]])).toEqual([["#BUSY!"]]);
  });

  it("answer by themselves within the time given, and say when calculation has finished", async () => {
    const host = await chain();
    const calculated: string[] = [];
    await host.Excel.run(async (context) => {
      context.workbook.worksheets.onCalculated.add(({ worksheetId }) => {
        calculated.push(worksheetId);
        return Promise.resolve();
      });
      await context.sync();
    });
    host.answerLate({ until: "0", seed: 1, within: 15 });
    await enter(host, "A1", [[5]]);
    expect(calculated).toEqual([]);
    await host.workbook.answers.complete();
    await Promise.resolve();
    expect(await shown(host)).toEqual(worked);
    expect(calculated.length).toBeGreaterThan(0);
  });

  it("say so too where they answer at once", async () => {
    const host = await chain();
    let calculated = 0;
    const registration = await host.Excel.run(async (context) => {
      const added = context.workbook.worksheets.onCalculated.add(() => {
        calculated += 1;
        return Promise.resolve();
      });
      await context.sync();
      return added;
    });
    await enter(host, "A1", [[5]]);
    expect(calculated).toBe(1);
    registration.remove();
    await registration.context.sync();
    await enter(host, "A1", [[6]]);
    expect(calculated).toBe(1);
  });
});
