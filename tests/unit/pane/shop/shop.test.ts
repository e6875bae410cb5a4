import { beforeAll, describe, expect, it } from "vitest";

import { readLog } from "../../../../src/excel/log-workbook.ts";
import type { LogSnapshot } from "../../../../src/joblog/model/log-snapshot.ts";
import { stockMoveEntry } from "../../../../src/pane/record/forms/stock-move/stock-move-entry.ts";
import { importPlan } from "../../../../src/pane/shop/import-plan.ts";
import { limitsForm } from "../../../../src/pane/shop/limits-form.ts";
import { readShopFile } from "../../../../src/pane/shop/read-shop-file.ts";
import { rowForm } from "../../../../src/pane/shop/row-form.ts";
import { saveShop } from "../../../../src/pane/shop/save-shop.ts";
import { type ShopFile, shopFile } from "../../../../src/pane/shop/shop-file.ts";
import { moment, openDemoLog } from "../../excel/log/demo-log.ts";
import { fill, said } from "../record/entry-forms.ts";

let log: LogSnapshot;

beforeAll(async () => {
  log = await openDemoLog("2027-03-02T17:00");
}, 120_000);

async function readAgain(): Promise<LogSnapshot> {
  const read = await readLog();
  if (read === undefined) throw new Error("no log");
  return read;
}

const words = (findings: readonly { readonly text: string }[]): string => findings.map(({ text }) => text).join("\n");

describe("the shop's limits", () => {
  it("start as the log has them, and nothing is to be written", () => {
    const { values, problems, changes } = limitsForm(log, "US").fill({});
    expect(values["usualDrop"]).toBe("0.5");
    expect([problems, changes]).toEqual([[], undefined]);
  });

  it("change by what was typed alone", async () => {
    const { changes } = limitsForm(log, "US").fill({ bathLife: "5", sewerLow: "6", sewerHigh: "10" });
    expect(changes?.fields).toEqual({
      bathLife: { before: 7, after: 5 },
      sewerLow: { before: undefined, after: 6 },
      sewerHigh: { before: undefined, after: 10 },
    });
    await saveShop.run(changes ?? {});
    expect((await readAgain()).fields).toMatchObject({ bathLife: 5, sewerLow: 6, sewerHigh: 10, usualDrop: 0.5 });
  }, 60_000);

  it("are refused out of range, blank where one must stand, and crossed", () => {
    const form = limitsForm(log, "US");
    expect(form.saved({})).toBe("Limits");
    expect(rowForm(log, "US", "people", undefined).saved({ initials: " KL " })).toBe("person KL");
    expect(rowForm(log, "US", "tanks", "T1").saved({})).toBe("tank T1");
    expect(form.fill({ usualDrop: "9" }).problems[0]?.message).toMatch(/"9" is out of range\. Allowed: 0\.05 to 3/);
    expect(form.fill({ usualDrop: "" }).problems.map(({ key }) => key)).toEqual(["usualDrop"]);
    expect(form.fill({ sewerLow: "10", sewerHigh: "6" }).problems.map(({ key }) => key)).toEqual(["sewerHigh"]);
    expect(form.fill({ sewerLow: "10", sewerHigh: "6" }).changes).toBeUndefined();
  });
});

describe("a row of the shop's lists", () => {
  // 24 × 16 × 12 / 231 − 0.6 gal.
  it("shows its computed figure while it is typed, and writes only what differs", () => {
    const { findings, changes } = rowForm(log, "US", "tanks", "T2").fill({ fillDepth: "12" });
    expect(words(findings)).toContain("Working volume 19.35 gal.");
    expect(changes?.changes?.[0]?.cells).toEqual({ fillDepth: { before: 11.5, after: 12 } });
  });

  it("names the baths that a changed tank or price works out anew", () => {
    expect(words(rowForm(log, "US", "tanks", "T1").fill({ fillDepth: "24" }).findings)).toContain(
      "Recalculated with it: B-T1-0301.",
    );
    expect(words(rowForm(log, "US", "concentrates", "CN-1").fill({ packPrice: "150" }).findings)).toMatch(
      /30\.00 per gal[^]*recalculated and repriced: B-T1-0301/,
    );
  });

  it("takes a typed unit, and says the hardness class", () => {
    // A grain per US gallon is 17.118 mg/L.
    const { converted, findings } = rowForm(log, "US", "waters", undefined).fill({ water: "WELL", hardness: "10 gpg" });
    expect(converted["hardness"]).toMatch(/^171\.18 mg\/L/);
    expect(words(findings)).toContain("Hardness class: hard.");
  });

  it("asks what a bare hardness is in, and gives one of the log back with its unit", () => {
    const bare = rowForm(log, "US", "waters", undefined).fill({ water: "WELL", hardness: "18", alkalinity: "4.8" });
    expect(bare.problems.map(({ message }) => message)).toEqual([
      'Hardness: "18" has no unit. Write "18 gpg" (308 mg/L) or "18 mg/L".',
      'Alkalinity: "4.8" has no unit. Write "4.8 meq/L" (240 mg/L) or "4.8 mg/L".',
    ]);
    const held = rowForm(log, "US", "waters", "RO").fill({ tds: "15" });
    expect(held.values).toMatchObject({ hardness: "7 mg/L", alkalinity: "5 mg/L" });
    expect(held.problems).toEqual([]);
    expect(Object.keys(held.changes?.changes?.[0]?.cells ?? {})).toEqual(["tds"]);
  });

  it("is added once, and refused under a name that is taken", async () => {
    const { changes } = rowForm(log, "US", "people", undefined).fill({ initials: "KT", name: "=K. T." });
    await saveShop.run(changes ?? {});
    const after = await readAgain();
    expect(after.rows.people[0]?.cells).toMatchObject({ initials: "KT", name: "=K. T." });
    expect(rowForm(after, "US", "people", undefined).fill({ initials: "kt" }).problems[0]?.message).toContain(
      '"KT" is in the log already',
    );
  }, 60_000);
});

describe("a reorder rule", () => {
  // The first two days used concentrate on one day: 3.275 and 0.903 gal. 4 days of 4.178 gal, and 5 gal in reserve.
  it("is set where the shop's lists are, and says the stock at which to order", async () => {
    const { changes, problems } = rowForm(log, "US", "stockBalance", undefined).fill({
      concentrate: "CN-1",
      leadDays: "4",
      safety: "5",
    });
    expect(problems).toEqual([]);
    await saveShop.run(changes ?? {});
    const after = await readAgain();
    expect(after.rows.stockBalance[0]?.cells).toMatchObject({ concentrate: "CN-1", leadDays: 4, safety: 5 });
    expect(words(rowForm(after, "US", "stockBalance", "CN-1").fill({}).findings)).toContain(
      "Reorder at 21.71 gal, at 4.18 gal a day of use.",
    );
    expect(
      rowForm(after, "US", "stockBalance", "CN-1")
        .fill({ leadDays: "0" })
        .problems.map(({ key }) => key),
    ).toEqual(["leadDays"]);
  }, 60_000);
});

describe("the shop's defaults as a file", () => {
  const text = (change: (file: ShopFile) => unknown = (file) => file): string =>
    JSON.stringify(change(shopFile(log, "US")));
  const refusals = (given: string): string => {
    const reading = readShopFile(given, "US");
    return reading.read === "refused" ? reading.problems.join("\n") : "read";
  };
  const withTank =
    (cells: Readonly<Record<string, unknown>>) =>
    (file: ShopFile): unknown => ({
      ...file,
      tables: { ...file.tables, tanks: [{ ...file.tables.tanks[0], ...cells }] },
    });

  it("come back as they went, and then change nothing", () => {
    const reading = readShopFile(text(), "US");
    if (reading.read === "refused") throw new Error(reading.problems.join("\n"));
    expect(importPlan(log, reading).lines).toEqual([]);
    expect(text()).not.toContain("D-0427");
  });

  it("say line by line what they would change, and change it in one batch", async () => {
    const now = await readAgain();
    const reading = readShopFile(
      text((file) => ({
        ...file,
        limits: { ...file.limits, meterLimit: 0.1 },
        tables: {
          ...file.tables,
          waters: [{ water: "WELL", hardness: 300, tested: "2027-02-01" }],
          tanks: [{ ...file.tables.tanks[0], displacement: 4 }],
          keepOutWords: [...file.tables.keepOutWords, { word: "bakelite", kind: "metal", counts: "whole word" }],
        },
      })),
      "US",
    );
    if (reading.read === "refused") throw new Error(reading.problems.join("\n"));
    const plan = importPlan(now, { ...reading, limits: { meterLimit: 0.1 } });
    expect(plan.lines).toEqual([
      "Meter off by at most, pH: 0.05 → 0.1",
      "tank T1, Displacement: 3.5 → 4",
      "New water: WELL",
      "New word: bakelite",
    ]);
    await saveShop.run(plan.changes);
    const after = await readAgain();
    expect(after.fields.meterLimit).toBe(0.1);
    expect(after.rows.tanks.map(({ cells }) => cells.displacement)).toEqual([4, 0.6]);
    expect(after.rows.waters.at(-1)?.cells).toMatchObject({
      water: "WELL",
      hardness: 300,
      tested: moment("2027-02-01"),
    });
    expect(after.rows.keepOutWords.at(-1)?.cells).toMatchObject({ word: "bakelite", sought: "_bakelite_" });
  }, 60_000);

  it("are read from a file of before there was a list of words", () => {
    const reading = readShopFile(
      text((file) => ({ ...file, tables: { ...file.tables, keepOutWords: undefined } })),
      "US",
    );
    if (reading.read === "refused") throw new Error(reading.problems.join("\n"));
    expect(importPlan(log, reading).lines).toEqual([]);
  });

  it("are refused where the file is another kind, version or unit system, or too large", () => {
    expect(refusals("no JSON")).toMatch(/no file of shop defaults/);
    expect(refusals("[]")).toMatch(/no file of shop defaults/);
    expect(refusals(text((file) => ({ ...file, version: 2 })))).toMatch(/version 2/);
    expect(refusals(text((file) => ({ ...file, units: "metric" })))).toMatch(/metric units and this log in US units/);
    expect(refusals(text((file) => ({ ...file, tables: 5 })))).toMatch(/damaged/);
    expect(refusals(" ".repeat(1_000_001))).toMatch(/too large/);
  });

  it("are refused whole, every fault with the file, the row and the field", () => {
    expect(refusals(text((file) => ({ ...file, limits: { ...file.limits, usualDrop: 9, speed: 1 } })))).toMatch(
      /^Shop defaults, limits, Drop allowed, pH: "9" is out of range.*\nShop defaults, limits: "speed" is not known\.$/,
    );
    expect(refusals(text(withTank({ fillDepth: -1 })))).toMatch(
      /^Shop defaults, tank T1, Fill depth: "-1" is out of range/,
    );
    expect(refusals(text(withTank({ length: undefined, width: null })))).toBe(
      "Shop defaults, tank T1, Inside length: missing.\nShop defaults, tank T1, Inside width: neither a number nor text.",
    );
    expect(refusals(text(withTank({ length: "" })))).toBe("Shop defaults, tank T1, Inside length: missing.");
    expect(refusals(text(withTank({ tank: "*" })))).toMatch(/cannot be looked up/);
    expect(
      refusals(
        text((file) => ({
          ...file,
          tables: {
            ...file.tables,
            concentrates: [{ concentrate: "X", builder: "magic" }],
            people: [{ initials: "a" }, { initials: "A", name: true }],
          },
        })),
      ),
    ).toMatch(
      /^Shop defaults, concentrate X, .*"magic" is not one of unknown, hydroxide[^]*Shop defaults, person A, Name: neither a number nor text\.\nShop defaults, person A: is listed twice\.$/,
    );
  });

  it("are refused by the number of a row that has no name, and by a list that is none", () => {
    const { tanks } = shopFile(log, "US").tables;
    const withTanks =
      (given: unknown) =>
      (file: ShopFile): unknown => ({ ...file, tables: { ...file.tables, tanks: given } });
    expect(refusals(text(withTanks([tanks[0], { ...tanks[1], tank: undefined }])))).toBe(
      "Shop defaults, tank 2, Tank: missing.",
    );
    expect(refusals(text(withTanks([tanks[0], 7])))).toBe("Shop defaults, tank 2: no entry.");
    expect(refusals(text(withTanks({ tank: "T1" })))).toBe("Shop defaults, Tanks: no list.");
    expect(refusals(text(withTanks(undefined)))).toBe("Shop defaults, Tanks: no list.");
  });

  it("are refused with limits that cross, whatever else is wrong with them", () => {
    expect(
      refusals(text((file) => ({ ...file, limits: { ...file.limits, sewerLow: 10, sewerHigh: 6, usualDrop: 9 } }))),
    ).toMatch(/Drop allowed[^]*\nShop defaults, limits, [^\n]*: 6 is not above 10, [^\n]*\.$/);
  });

  it("are refused with a name that is an object's own business", () => {
    expect(
      refusals(
        '{"kind":"Bathsheet shop defaults","version":1,"units":"US","limits":{"__proto__":{"usualDrop":1}},"tables":{"tanks":[],"waters":[],"concentrates":[],"people":[]}}',
      ),
    ).toBe('Shop defaults, limits: "__proto__" is not known.');
  });
});

describe("the stock form", () => {
  it("lists the concentrate in the balance with its first count", () => {
    const filled = fill(stockMoveEntry, log, { amount: "10" }, "2027-03-02T17:00");
    expect(filled.problems).toEqual([]);
    expect(filled.meaning.rows.map(({ table }) => table)).toEqual(["stockMoves", "stockBalance"]);
    expect(said(filled)).toContain("First count");
  });

  it("says what a receipt is worth, and refuses an issue of nothing", () => {
    expect(said(fill(stockMoveEntry, log, { kind: "receipt", amount: "5", price: "27.80" }))).toContain(
      "Worth 139.00.",
    );
    expect(fill(stockMoveEntry, log, { kind: "issue", amount: "0" }).problems.map(({ key }) => key)).toEqual([
      "amount",
    ]);
  });
});
