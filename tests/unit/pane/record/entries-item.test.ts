import { beforeAll, describe, expect, test } from "vitest";

import type { LogSnapshot } from "../../../../src/joblog/model/log-snapshot.ts";
import { itemEntry } from "../../../../src/pane/record/forms/item/item-entry.ts";
import { demoLog } from "../../excel/log/demo-log.ts";
import { asked, bath, fill, said, withRows } from "./entry-forms.ts";

const plates = {
  claim: "D-0427",
  room: "kitchen",
  item: "dinner plates",
  quantity: "18",
  material: "glazed ceramic",
  route: "bath",
  bath,
  outcome: "restored",
  photo: "P-001",
};

let log: LogSnapshot;

beforeAll(async () => {
  log = await demoLog("2027-03-01T07:30", {
    items: [{ id: "I001", claim: "D-0427", room: "kitchen", item: "saucepan", quantity: 2, material: "aluminum" }],
  });
}, 120_000);

describe("the item form", () => {
  test("writes one row and says where it counts and how the claim balances", () => {
    const filled = fill(itemEntry, log, plates);
    expect(filled.problems).toEqual([]);
    expect(filled.meaning.rows[0]).toMatchObject({
      table: "items",
      row: { id: "I002", item: "dinner plates", quantity: 18, bath, outcome: "restored" },
    });
    expect(said(filled)).toContain(
      "Counts as restored. Claim D-0427: 20 pieces listed, 2 pending; not counted in yet (Record, Count in).",
    );
    expect(asked(filled)).toBe("");
  });

  test("starts with claim and room of the last item", () => {
    expect(fill(itemEntry, log, {}).values).toMatchObject({ claim: "D-0427", room: "kitchen" });
  });

  test("wants a reason code for a piece that is not restorable, and a sentence and a photo for the adjuster", () => {
    const toaster = {
      ...plates,
      item: "toaster",
      quantity: "1",
      route: "none",
      bath: "",
      outcome: "not restorable",
      photo: "",
    };
    const filled = fill(itemEntry, log, toaster);
    expect(filled.problems.map(({ key }) => key)).toEqual(["reason"]);
    expect(filled.meaning.rows).toEqual([]);
    expect(said(filled)).toMatch(/reason in a sentence[\s\S]*No photo yet/);
    expect(fill(itemEntry, log, { ...toaster, reason: "MELT" }).problems).toEqual([]);
  });

  test("asks before a metal that alkali attacks goes into the bath, and not about tinted glass or leather", () => {
    for (const material of [
      "aluminum",
      "galvanized steel",
      "pewter",
      "zinc alloy",
      "brass, solder joints",
      "Tin",
      "lead crystal",
    ]) {
      expect(asked(fill(itemEntry, log, { ...plates, material })), material).toMatch(/alkali attacks/);
    }
    for (const material of ["tinted glass", "leather", "stainless steel"])
      expect(asked(fill(itemEntry, log, { ...plates, material })), material).toBe("");
    expect(asked(fill(itemEntry, log, { ...plates, material: "aluminum", route: "hand" }))).toBe("");
  });

  test("asks about a word that the shop put on its list", () => {
    const listed = withRows(log, "keepOutWords", [{ word: "Bakelite", kind: "metal", sought: "_bakelite_" }]);
    const radio = { ...plates, material: "bakelite, chrome" };
    expect(asked(fill(itemEntry, log, radio))).toBe("");
    expect(asked(fill(itemEntry, listed, radio))).toMatch(/"bakelite" in this line/);
    // Another list than the usual one takes no question away.
    expect(asked(fill(itemEntry, listed, { ...plates, material: "pewter" }))).toMatch(/"pewter" in this line/);
  });

  test("asks before batteries and aerosols go into a tank", () => {
    expect(asked(fill(itemEntry, log, { ...plates, item: "drill batteries" }))).toMatch(
      /^"batteries" in this line: .* never go in a tank/,
    );
  });

  test("looks through every text of the line, and says which word it stopped at", () => {
    const cases = [
      [{ item: "aluminum pot", material: "" }, /^"aluminum" in this line: alkali attacks/],
      [{ note: "screws of Zamak" }, /^"zamak" in this line: alkali attacks/],
      [{ condition: "pot metal base cracked" }, /^"pot metal" in this line: alkali attacks/],
      [{ item: "camp stove, propane" }, /^"propane" in this line: .*hazardous-waste collection/],
      [{ note: "e-cigarette inside" }, /^"e cigarette" in this line: .*never go in a tank/],
      [{ item: "paint tins" }, /never go in a tank[\s\S]*^"tins" in this line: alkali attacks/m],
    ] as const;
    for (const [change, question] of cases)
      expect(asked(fill(itemEntry, log, { ...plates, ...change }))).toMatch(question);
    for (const item of ["plant pot", "place setting", "lead-free goblets", "plates, fuel oil soot"])
      expect(asked(fill(itemEntry, log, { ...plates, item }))).toBe("");
  });

  test("says how many were counted in", () => {
    const counted = withRows(log, "itemCounts", [{ claim: "D-0427", received: 40 }]);
    expect(said(fill(itemEntry, counted, plates))).toContain("2 pending; 40 counted in.");
  });

  test("asks before old paint goes into a bath that another claim shares", () => {
    const load = { id: "L001", bath, claim: "D-0431", baskets: 1 };
    expect(asked(fill(itemEntry, withRows(log, "loads", [load]), { ...plates, pre1978: "yes" }))).toMatch(
      /wipe-tested/,
    );
    expect(asked(fill(itemEntry, log, { ...plates, pre1978: "yes" }))).toBe("");
  });

  // 30 of 38 is 79 %, 20 of 38 is 53 %.
  test("tests the economy only against an agreed share", () => {
    const costly = { ...plates, restoreCost: "30", replacementValue: "38" };
    expect(said(fill(itemEntry, log, costly))).toContain("79% of the replacement value. No share is agreed yet");
    const agreed = { ...log, fields: { ...log.fields, economicShare: 0.6 } };
    expect(said(fill(itemEntry, agreed, costly))).toContain("over the agreed 60%");
    expect(said(fill(itemEntry, agreed, { ...costly, restoreCost: "20" }))).toContain(
      "53% of the replacement value: within the agreed 60%",
    );
  });

  test("closes a pending item of the list: fills its blank cells, asks for nothing that is known", () => {
    const filled = fill(itemEntry, log, {
      earlier: "I001 · saucepan",
      route: "hand",
      outcome: "restored",
      reason: "AMPHOTERIC",
    });
    expect(filled.problems).toEqual([]);
    expect(filled.meaning.rows).toEqual([]);
    expect(filled.meaning.fills).toEqual([
      {
        table: "items",
        key: "I001",
        cells: expect.objectContaining({ route: "hand", outcome: "restored", reason: "AMPHOTERIC" }) as unknown,
      },
    ]);
    expect(said(filled)).toContain(
      "Counts as hand cleaned. Claim D-0427: 2 pieces listed, none pending; not counted in yet (Record, Count in).",
    );
    expect(filled.groups.flatMap((group) => group.fields.map(({ key }) => key))).not.toContain("quantity");
  });

  test("counts a pending item of the list once, before its outcome is said", () => {
    expect(said(fill(itemEntry, log, { earlier: "I001 · saucepan" }))).toContain(
      "Counts as pending. Claim D-0427: 2 pieces listed, 2 pending;",
    );
  });

  test("a pending item is closed only by an outcome, and warned about like a new one", () => {
    expect(fill(itemEntry, log, { earlier: "I001 · saucepan", route: "bath" }).problems.map(({ key }) => key)).toEqual([
      "outcome",
    ]);
    expect(asked(fill(itemEntry, log, { earlier: "I001 · saucepan", route: "bath", outcome: "restored" }))).toMatch(
      /alkali attacks/,
    );
  });

  test("refuses 0 pieces, half a piece and a bath that is not in the log", () => {
    const keys = (change: Record<string, string>): readonly string[] =>
      fill(itemEntry, log, { ...plates, ...change }).problems.map(({ key }) => key);
    expect(keys({ quantity: "0" })).toEqual(["quantity"]);
    expect(keys({ quantity: "1.5" })).toEqual(["quantity"]);
    expect(keys({ bath: "B-none" })).toEqual(["bath"]);
  });
});
