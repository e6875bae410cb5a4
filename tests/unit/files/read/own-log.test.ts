import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { describe, expect, it } from "vitest";

import { filledFromPlan } from "../../../../src/files/read/fill-from-plan.ts";
import { readWorkbook } from "../../../../src/files/read/read-workbook.ts";
import type { WorkbookState } from "../../../../src/state/workbook-state.ts";
import { countedByKind, differences, type Facts, planFacts, stateFacts } from "./facts.ts";
import { gridFunctions, writtenLog } from "./written-logs.ts";

function readLog(file: Uint8Array): WorkbookState {
  return filledFromPlan(readWorkbook(file, gridFunctions)).state;
}

describe.each(["US", "metric"] as const)("a log in %s units, written and read", (system) => {
  it("holds every cell, look, rule, table, name and chart", async () => {
    const { plan, file, valueOf } = await writtenLog(system);
    const read = filledFromPlan(readWorkbook(file, gridFunctions));
    const expected = planFacts(plan, valueOf);
    expect(differences(expected, stateFacts(read.state))).toEqual([]);
    const counts = countedByKind(expected);
    expect(Object.keys(counts)).toHaveLength(24);
    expect(counts).toMatchObject({ sheets: 1, chart: 7 });
    expect(
      Math.min(...[counts["typed"], counts["formula"], counts["look"], counts["border"]].map(Number)),
    ).toBeGreaterThan(1000);
    expect(
      Math.min(...[counts["calculated column"], counts["validation"], counts["conditional format"]].map(Number)),
    ).toBeGreaterThan(150);
    expect(read.ownLog).toEqual({ version: 1, system });
    expect(read.losses).toEqual([]);
    expect(read.changes).toEqual([]);
  });
});

/** The file with the first place of a part that matches changed. */
function tampered(file: Uint8Array, part: RegExp, from: RegExp, to: string): Uint8Array {
  const parts = unzipSync(file);
  let isDone = false;
  for (const [name, bytes] of Object.entries(parts)) {
    if (isDone || !part.test(name)) continue;
    const text = strFromU8(bytes);
    if (!from.test(text)) continue;
    parts[name] = strToU8(text.replace(from, to));
    isDone = true;
  }
  if (!isDone) throw new RangeError(`Nothing matches ${String(from)}.`);
  return zipSync(parts);
}

describe("the comparison", () => {
  it("sees what is changed in a file, and its kind", async () => {
    const { plan, file, valueOf } = await writtenLog("US");
    const expected: Facts = planFacts(plan, valueOf);
    const sheet = /xl\/worksheets\/sheet/;
    const changes: readonly (readonly [kind: string, part: RegExp, from: RegExp, to: string])[] = [
      ["typed", sheet, /(s="\d+")><v>46(\d{3}\.\d+)<\/v>/, "$1><v>47$2</v>"],
      ["formula", sheet, /<f>([^<]*)&lt;=0/, "<f>$1&lt;0"],
      ["look", /styles/, /<sz val="15"\/>/, '<sz val="14"/>'],
      ["border", /styles/, /style="thin"/, 'style="thick"'],
      ["format", /styles/, /formatCode="0\.0"/, 'formatCode="0.000"'],
      ["validation ", sheet, /<formula1>0\.1<\/formula1>/, "<formula1>0.2</formula1>"],
      ["validation words", sheet, /errorTitle="Check: /, 'errorTitle="check: '],
      ["conditional format", /styles/, /FFFADFDA/, "FFFADFDB"],
      ["tab color", sheet, /<tabColor rgb="FF3/, '<tabColor rgb="FF4'],
      ["gridlines", sheet, /showGridLines="0"/, 'showGridLines="1"'],
      ["frozen", sheet, /ySplit="\d+"/, 'ySplit="1"'],
      ["folded", sheet, / outlineLevel="1"/, ""],
      ["width", sheet, /width="\d+/, 'width="99'],
      ["height", sheet, / ht="\d+/, ' ht="99'],
      ["print", sheet, /orientation="landscape"/, 'orientation="portrait"'],
      ["table", /xl\/tables/, /TableStyleLight1/, "TableStyleLight2"],
      ["calculated column", /xl\/tables/, /<calculatedColumnFormula>/, "<calculatedColumnFormula>1+"],
      ["name", /workbook\.xml$/, /\$C\$7</, "$C$9<"],
      ["series", /xl\/charts/, /prstDash val="dash"/, 'prstDash val="solid"'],
      ["axis titles", /xl\/charts/, />Date and time</, ">Date<"],
    ];
    const wrong = changes.reduce((changed, [, part, from, to]) => tampered(changed, part, from, to), file);
    const found = differences(expected, stateFacts(readLog(wrong)));
    for (const [kind] of changes)
      expect(
        found.some((difference) => difference.startsWith(kind)),
        kind,
      ).toBe(true);
  });
});
