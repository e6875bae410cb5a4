import { describe, expect, it } from "vitest";

import type { LogRow } from "../../../../src/joblog/model/definition.ts";
import { usualKeepOutWords, usualSought } from "../../../../src/joblog/sheets/items/keep-out-words.ts";
import { weekItems } from "./demo-week-facts.ts";
import { weekWith } from "./week-of-sheets.ts";
import { workedLog } from "./worked-log.ts";

const piece = (id: string, more: LogRow<"items">): LogRow<"items"> => ({
  id,
  claim: "D-0427",
  quantity: 1,
  item: "piece",
  ...more,
});

describe("the pieces of a claim", () => {
  it("balance, those restored by hand among the hand cleaned", async () => {
    const log = await workedLog(weekWith());
    // Added up by hand from the invented week's item list.
    const counts = ["pieces", "restored", "handCleaned", "notRestorable", "returned", "pending", "difference"] as const;
    expect(counts.map((column) => log.cell("itemCounts", "D-0427", column))).toEqual([132, 76, 45, 11, 0, 0, 0]);
    expect(counts.map((column) => log.cell("itemCounts", "D-0431", column))).toEqual([91, 51, 19, 21, 0, 0, 0]);
    expect(counts.map((column) => log.cell("itemCounts", "D-0436", column))).toEqual([71, 61, 9, 1, 0, 0, 0]);
  });

  it("are said to balance only where they were counted in", async () => {
    const itemCounts = [{ claim: "D-0427", received: 132 }, { claim: "D-0431" }, { claim: "D-0436", received: 0 }];
    const log = await workedLog(
      weekWith({}, { items: [...weekItems, piece("I100", { claim: "D-0431" })], itemCounts }),
    );
    expect(itemCounts.map(({ claim }) => log.cell("itemCounts", claim, "balance"))).toEqual([
      "balances, all accounted for",
      "not counted in, some pending",
      "71 more than came in",
    ]);
  });

  it("are held against the count at the door, and an outcome that is none does not pass", async () => {
    const log = await workedLog(
      weekWith(
        {},
        {
          items: [...weekItems, piece("I100", { outcome: "lost", quantity: 3 }), piece("I101", { claim: "D-0431" })],
          itemCounts: [{ claim: "D-0427" }, { claim: "D-0431", received: 95 }, { claim: "D-0436", received: 70 }],
        },
      ),
    );
    expect(log.cell("items", "I100", "standing")).toBe("no such outcome");
    expect(log.cell("itemCounts", "D-0427", "balance")).toBe("3 not accounted for");
    expect(log.cell("itemCounts", "D-0431", "balance")).toBe("3 not accounted for");
    expect(log.cell("itemCounts", "D-0431", "pending")).toBe(1);
    expect(log.cell("itemCounts", "D-0436", "balance")).toBe("1 more than came in");
  });
});

describe("an item", () => {
  it.each([
    { what: "without an outcome is pending", row: {}, standing: "pending", check: "" },
    {
      what: "restored by hand is hand cleaned",
      row: { outcome: "restored", route: "hand" },
      standing: "hand cleaned",
      check: "",
    },
    {
      what: "restored by a specialist says so",
      row: { outcome: "restored", route: "specialist" },
      standing: "specialist",
      check: "",
    },
    {
      what: "not restorable asks for its code",
      row: { outcome: "not restorable", reasonText: "char" },
      standing: "reason missing",
      check: "give a reason code",
    },
    {
      what: "with a code asks for the sentence",
      row: { outcome: "not restorable", reason: "BURN" },
      standing: "not restorable",
      check: "give the reason in a sentence",
    },
    {
      what: "restored on no route asks how",
      row: { outcome: "restored", route: "none" },
      standing: "restored",
      check: "give a route: restored how?",
    },
    {
      what: "of aluminum is kept out of the bath",
      row: { route: "bath", bath: "B-T1-0301", material: "cast aluminum" },
      standing: "pending",
      check: "keep out of alkali: metal",
    },
    {
      what: "of tin and old paint is kept out",
      row: { route: "bath", bath: "B-T1-0301", material: "tin, old paint" },
      standing: "pending",
      check: "keep out of alkali: metal",
    },
    ...[
      ...[
        { item: "aluminum pot" },
        { item: "POT", note: "Zamak feet" },
        { item: "lamp", condition: "pewter finial bent" },
        { item: "stained glass panel" },
      ],
      ...[
        { item: "clock", reasonText: "white metal case" },
        { item: "frame", material: "anodized" },
      ],
      ...["brass", "bronze", "spelter", "pot metal", "magnesium", "tinplate", "galvanized steel", "die-cast"].map(
        (material) => ({ material }),
      ),
    ].map((texts) => ({
      what: `whose texts say ${Object.values(texts).join(", ")} is kept out of alkali`,
      row: { route: "bath", bath: "B-T1-0301", ...texts },
      standing: "pending",
      check: "keep out of alkali: metal",
    })),
    ...[
      ...["propane torch", "butane lighter", "paint thinner", "ammunition box", "box of fireworks", "e-cigarette"],
      ...["lithium pack", "solvent rags", "can of paint", "fuel can", "fire extinguisher"],
    ].map((item) => ({
      what: `called ${item} is kept out of the tank`,
      row: { route: "bath", bath: "B-T1-0301", item },
      standing: "pending",
      check: "keep out of the tank: hazard",
    })),
    ...[
      ...["plant pot", "flower pot, setting of four", "tinted, leather-bound", "misleading label", "lead-free crystal"],
      ...["old painted toy; lead wipe clear", "plate, fuel oil soot", "batter bowl, lighter soot than the rest"],
      ...["stainless steel pot", "mercury glass vase", "painting, canned goods label", "stained oak, glass top"],
    ].map((item) => ({
      what: `called ${item} raises no false alarm`,
      row: { route: "bath", bath: "B-T1-0301", item },
      standing: "pending",
      check: "",
    })),
    {
      what: "of tinted glass is not taken for tin",
      row: { route: "bath", bath: "B-T1-0301", material: "tinted glass" },
      standing: "pending",
      check: "",
    },
    {
      what: "of aluminum may be cleaned by hand",
      row: { route: "hand", material: "aluminum" },
      standing: "pending",
      check: "",
    },
    {
      what: "with a battery is kept out of the tank",
      row: { route: "bath", bath: "B-T1-0301", item: "toy with batteries" },
      standing: "pending",
      check: "keep out of the tank: hazard",
    },
    {
      what: "from before 1978 is not for a shared bath",
      row: { route: "bath", bath: "B-T1-0301", pre1978: "yes" },
      standing: "pending",
      check: "isolate: this bath is shared",
    },
    {
      what: "from before 1978 may go into a bath of its own",
      row: { route: "bath", bath: "B-T2-0303", pre1978: "yes" },
      standing: "pending",
      check: "",
    },
    {
      what: "without pieces asks for them",
      row: { quantity: undefined },
      standing: "pending",
      check: "give the pieces",
    },
  ])("$what", async ({ row, standing, check }) => {
    const log = await workedLog(weekWith({}, { items: [piece("I1", row)], readings: [], benchTests: [] }));
    expect(log.cell("items", "I1", "standing")).toBe(standing);
    expect(log.cell("items", "I1", "check")).toBe(check);
  });

  it("is looked through for the words on the sheet Shop, which a shop may add to", async () => {
    const items = [
      piece("I1", { route: "bath", bath: "B-T1-0301", material: "Bakelite" }),
      piece("I2", { route: "bath", bath: "B-T1-0301", material: "bakelites" }),
      piece("I3", { route: "bath", bath: "B-T1-0301", material: "celluloid sheet" }),
      piece("I4", { route: "bath", bath: "B-T1-0301", material: "pewter" }),
    ];
    const keepOutWords = [
      { word: "bakelite", kind: "metal", counts: "whole word" },
      { word: "Cellul", kind: "hazard", counts: "beginning" },
      { kind: "metal", counts: "whole word" },
      { word: " Pitch-pine " },
    ];
    const log = await workedLog(
      weekWith(
        {},
        {
          items: [...items, piece("I5", { route: "bath", bath: "B-T1-0301", material: "pitch-pine, oiled" })],
          keepOutWords,
        },
      ),
    );
    expect(["I1", "I2", "I3", "I4", "I5"].map((id) => log.cell("items", id, "check"))).toEqual([
      "keep out of alkali: metal",
      "",
      "keep out of the tank: hazard",
      "",
      "keep out of the tank: hazard",
    ]);
  });

  it("is not said to be safe where no words are listed", async () => {
    const items = [
      piece("I1", { route: "bath", bath: "B-T1-0301" }),
      piece("I2", { route: "hand", material: "pewter" }),
    ];
    const log = await workedLog(weekWith({}, { items, keepOutWords: [{ kind: "metal" }] }));
    expect(["I1", "I2"].map((id) => log.cell("items", id, "check"))).toEqual([
      "no words listed on Shop: look yourself",
      "",
    ]);
  });

  it("is looked through for the usual words as its form looks for them", async () => {
    const log = await workedLog(weekWith());
    const sought = usualKeepOutWords.map(({ word }) => log.cell("keepOutWords", String(word), "sought"));
    expect(sought).toEqual(usualKeepOutWords.map(usualSought));
  });

  it("is tested for its cost only where a share is agreed", async () => {
    const items = [
      piece("I1", { restoreCost: 40, replacementValue: 100 }),
      piece("I2", { restoreCost: 50, replacementValue: 100 }),
    ];
    const without = await workedLog(weekWith({}, { items }));
    expect(without.cell("items", "I1", "economic")).toBe("");
    const agreed = await workedLog(weekWith({ economicShare: 0.5 }, { items }));
    expect(["I1", "I2"].map((id) => agreed.cell("items", id, "economic"))).toEqual([
      "within the share",
      "over the share",
    ]);
  });
});
