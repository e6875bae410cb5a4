/** Invented data: no claim, owner or policy here exists. */
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";

import { beforeAll, describe, expect, it } from "vitest";

import { claimCopy } from "../../../src/advice/claim-copy/claim-copy.ts";
import { leftOut } from "../../../src/advice/claim-copy/others-words.ts";
import { plainCopy } from "../../../src/files/plain-copy.ts";
import { jobLog } from "../../../src/joblog/job-log.ts";
import { layOut } from "../../../src/joblog/layout/lay-out.ts";
import type { LogContent, LogRow } from "../../../src/joblog/model/definition.ts";
import type { SheetPlan } from "../../../src/joblog/model/plan.ts";
import { day, demoBath as bath, moment } from "../../demo/demo-week-times.ts";
import { workedOut } from "../joblog/evaluate/worked-out.ts";
import { demoRowsAnd, demoWith } from "../joblog/sheets/worked-log.ts";
import { hasOpenXmlValidator, validateFile } from "./open-xml-validator.ts";
import { partsOf } from "./read-parts.ts";

const claim = "D-0431";

const claims: readonly LogRow<"claims">[] = [
  {
    claim: "D-0427",
    loss: "kitchen fire, row house",
    insurer: "Fernholt Mutual",
    adjuster: "J. Obrecht",
    arrived: day(-5),
    policy: "FM-7781204",
    owner: "Tamsin Quarrell",
    lossAddress: "14 Weir Row",
    invoice: "INV-0427-1",
    preparedBy: "Perpetua Sandglass",
    preparedOn: day(3),
  },
  {
    claim,
    loss: "garage electrical fire",
    insurer: "Insurer B (invented)",
    adjuster: "adjuster 2",
    arrived: day(-4),
    policy: "PB-5510",
    owner: "Odo Vance",
    lossAddress: "3 Mill Lane",
    invoice: "INV-0431-7",
  },
  { claim: "D-0436", insurer: "Insurer B (invented)", owner: "R. Quillfeather", note: "sister of the mayor" },
];

const items: readonly LogRow<"items">[] = [
  { id: "I001", claim: "D-0427", quantity: 1, item: "carillon clock", material: "brass", route: "hand" },
  {
    id: "I002",
    claim,
    quantity: 6,
    item: "torque wrench",
    material: "steel",
    route: "bath",
    bath,
    outcome: "restored",
  },
  { id: "I003", claim, quantity: 2, item: "lamp", note: "stood beside Tamsin Quarrell's boxes", route: "none" },
  { id: "I004", claim: "D-0436", quantity: 3, item: "porcelain heron", replacementValue: 918.27 },
];

const load = (id: string, of: string, clock: string, baskets: number, note?: string): LogRow<"loads"> => ({
  id,
  bath,
  claim: of,
  when: moment(1, clock),
  baskets,
  soil: "medium",
  minutes: 8,
  ...(note === undefined ? {} : { note }),
});

const typedRows = demoWith({
  claims,
  items,
  loads: [
    load("L001", "D-0427", "10:00", 11, "soot of the organ pipes"),
    load("L002", claim, "11:00", 3, "after d-0427"),
    load("L003", claim, "12:00", 1, "clean"),
  ],
  shares: [
    { bath, claim: "D-0427", units: 11 },
    { bath, claim, units: 4 },
  ],
  readings: demoRowsAnd("readings", {
    id: "R090",
    bath,
    when: moment(1, "13:00"),
    purpose: "check",
    ph: 11.3,
    temperature: 77,
    note: "after the organ pipes of D-0427",
  }),
  additions: demoRowsAnd("additions", {
    id: "A090",
    bath,
    when: moment(1, "11:30"),
    kind: "concentrate",
    purpose: "top-up",
    amount: 0.71,
    account: "claims",
    phBefore: 10.8,
    phAfter: 11.2,
    note: "for the cello case, see FM-7781204",
  }),
  costLines: demoRowsAnd("costLines", {
    id: "C090",
    claim: "D-0436",
    date: day(1),
    what: "Courier for the heron",
    document: "X-99123",
    amount: 77.41,
    account: "claims",
  }),
});

const content: LogContent = {
  ...typedRows,
  fields: { ...typedRows.fields, statementClaim: "D-0427" },
};

/** What stands in rows of other claims alone. */
const secrets = [
  "D-0427",
  "D-0436",
  "Fernholt",
  "Obrecht",
  "FM-7781204",
  "Quarrell",
  "Weir Row",
  "Quillfeather",
  "mayor",
  "kitchen fire",
  "carillon",
  "heron",
  "918.27",
  "organ pipes",
  "cello case",
  "77.41",
  "X-99123",
  "INV-0427-1",
  "Sandglass",
  "L001",
];

let plans: readonly SheetPlan[];
let file: Uint8Array;
let parts: ReadonlyMap<string, string>;

beforeAll(async () => {
  plans = claimCopy(await workedOut(content), claim, "US");
  file = plainCopy(plans);
  parts = partsOf(file);
});

const texts = (name: string): readonly unknown[] =>
  plans.flatMap((plan) =>
    plan.name === name ? plan.cells.flatMap((cell) => (cell.kind === "value" ? [cell.value] : [])) : [],
  );

describe("a copy of one claim", () => {
  it("holds no word or number of another claim, in no part of the file", () => {
    const whole = [...parts].map(([name, text]) => name + text).join("\n");
    const typed = JSON.stringify(layOut(jobLog, { system: "US" }, content));
    for (const secret of secrets) {
      // What the log does not hold would prove nothing.
      expect(typed, secret).toContain(secret);
      expect(whole.toLowerCase(), secret).not.toContain(secret.toLowerCase());
    }
  });

  it("holds the claim's own statement, pieces and loads, and its bath's readings and additions", () => {
    expect(plans.map(({ name }) => name)).toEqual([
      "Claim statement",
      "Items",
      "Loads",
      "Shares",
      "Readings",
      "Additions",
    ]);
    expect(texts("Claim statement")).toEqual(
      expect.arrayContaining(["Odo Vance", "PB-5510", "3 Mill Lane", bath, claim]),
    );
    expect(texts("Items")).toEqual(expect.arrayContaining(["torque wrench", "lamp", 6]));
    expect(texts("Loads")).toEqual(expect.arrayContaining(["L002", "L003", "clean"]));
    expect(texts("Readings")).toEqual(expect.arrayContaining(["R001", "R090", 11.3]));
    expect(texts("Additions")).toEqual(expect.arrayContaining([0.71, 11.2]));
  });

  it("says where a text of the claim's own rows named another", () => {
    expect(texts("Loads").filter((text) => text === leftOut)).toHaveLength(1);
    expect(texts("Items").filter((text) => text === leftOut)).toHaveLength(1);
  });

  it("gives the other claims of a bath as one line, and both add up to the bath's cost", () => {
    const shares = plans.find(({ name }) => name === "Shares");
    const last = Math.max(...(shares?.cells ?? []).map(({ row }) => row));
    const line = (row: number): readonly unknown[] =>
      (shares?.cells ?? []).filter((cell) => cell.row === row).map((cell) => (cell.kind === "value" ? cell.value : ""));
    const [its, rest] = [line(last - 1), line(last)];
    expect([its[1], its[3], its[4], rest[1], rest[3]]).toEqual([claim, 4, 15, "other claims", 11]);
    expect(Number(its[7])).toBeGreaterThan(0);
    expect(Number(its[7]) + Number(rest[7])).toBeCloseTo(Number(its[6]), 6);
  });

  it("prints at 8 points or more, one page wide on Letter and A4", () => {
    // Column widths count digits of 7 pixels and 5 pixels beside them (ECMA-376, 18.3.1.13); 0.75 points a pixel.
    const points = (widths: readonly number[]): number => widths.reduce((sum, one) => sum + (one * 7 + 5) * 0.75, 0);
    for (const { name, columnWidths, orientation, pagesWide } of plans) {
      const inches = orientation === "landscape" ? 11 : 210 / 25.4;
      expect(pagesWide, name).toBe(1);
      expect((10 * (inches - 0.5) * 72) / points(columnWidths), name).toBeGreaterThanOrEqual(8);
    }
  });

  it("holds values alone: no formula, no name, no table, no function", () => {
    for (const [name, text] of parts) {
      expect(text, name).not.toMatch(/<f[ >]|BATH\.|_xldudf/);
      expect(name).not.toMatch(/tables|calcChain|externalLinks/);
    }
    expect(
      parts
        .get("xl/workbook.xml")
        ?.match(/<definedName [^>]*/g)
        ?.every((one) => one.includes("_xlnm")),
    ).toBe(true);
  });

  it.skipIf(!hasOpenXmlValidator)("passes the Open XML validator [needs the Open XML validator]", async () => {
    const folder = await mkdtemp(join(tmpdir(), "claim-copy-"));
    await writeFile(join(folder, "copy.xlsx"), file);
    const result = await validateFile(join(folder, "copy.xlsx"));
    await rm(folder, { recursive: true });
    expect(result.errors).toEqual([]);
  });
});

it("the invoice number and who signed are the claim's own, whichever claim the sheet shows", () => {
  expect(texts("Claim statement")).toContain("INV-0431-7");
  expect(texts("Claim statement")).not.toContain("Prepared by");
});
