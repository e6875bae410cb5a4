/** @module-tag landing */
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { beforeAll, describe, expect, it } from "vitest";

import { filledFromPlan, type OpenedLog } from "../../../../src/files/read/fill-from-plan.ts";
import { readWorkbook } from "../../../../src/files/read/read-workbook.ts";
import { jobLog } from "../../../../src/joblog/job-log.ts";
import { layOut } from "../../../../src/joblog/layout/lay-out.ts";
import { hasLibreOffice, recalculated } from "../libre-office.ts";
import { differences, type Facts, planFacts, stateFacts } from "./facts.ts";
import { gridFunctions, writtenLog } from "./written-logs.ts";

let file: Uint8Array;
let expected: Facts;

beforeAll(async () => {
  const written = await writtenLog("US");
  file = written.file;
  expected = planFacts(written.plan, written.valueOf);
});

function opened(saved: Uint8Array): OpenedLog {
  return filledFromPlan(readWorkbook(saved, gridFunctions));
}

/** The file with its parts changed as another program does when it saves them. */
function resaved(change: (name: string, xml: string) => string): Uint8Array {
  const parts = Object.entries(unzipSync(file)).map(([name, bytes]) => [
    name,
    name.endsWith(".xml") ? strToU8(change(name, strFromU8(bytes))) : bytes,
  ]);
  return zipSync(Object.fromEntries(parts) as Record<string, Uint8Array>);
}

const isSheet = (name: string): boolean => name.startsWith("xl/worksheets/sheet");
const isTable = (name: string): boolean => name.startsWith("xl/tables/");

const tables = jobLog.sheets.flatMap((sheet) => sheet.tables);

/** The log's computed columns. */
/** Sheets whose only table has its headings high enough to be frozen. */
const frozen = layOut(jobLog, { system: "US" }, { fields: {}, rows: {} }).sheets.filter(
  ({ frozenRows }) => frozenRows > 0,
).length;

const calculated = tables.flatMap(({ columns }) => columns).filter(({ role }) => role === "computed").length;

describe("a log that a program saved which", () => {
  it("drops calculated columns, frozen rows, gridlines and table styles, and spells in its own way, is whole again", () => {
    const saved = resaved((name, xml) => {
      if (isTable(name))
        return xml
          .replaceAll(/<calculatedColumnFormula>.*?<\/calculatedColumnFormula>/gs, "")
          .replaceAll(/<tableStyleInfo[^>]*\/>/g, "");
      if (name === "xl/styles.xml")
        return xml
          .replaceAll("yyyy-mm-dd", "yyyy\\-mm\\-dd")
          .replaceAll(/rgb="([0-9A-F]+)"/g, (_, color: string) => `rgb="${color.toLowerCase()}"`);
      if (!isSheet(name)) return xml;
      return xml
        .replaceAll(/<pane [^>]*\/>/g, "")
        .replaceAll(/showGridLines="0"/g, "")
        .replaceAll("_xldudf_BATH_", "_xldudf_bath_")
        .replaceAll("MAXIFS(", "maxifs(")
        .replaceAll(/<f>[^<]*<\/f>/g, (formula) =>
          formula.replaceAll(/\bFALSE\b(?!\()/g, "FALSE()").replaceAll(/\bTRUE\b(?!\()/g, "TRUE()"),
        )
        .replaceAll(/<formula1>&quot;[^<]*<\/formula1>/g, "$&<formula2>0</formula2>")
        .replaceAll(/(<c [^>]*?) t="b"><v>1<\/v>/g, '$1><f aca="false">TRUE()</f><v>1</v>');
    });
    const { state, changes } = opened(saved);
    expect(differences(expected, stateFacts(state))).toEqual([]);
    expect(changes).toHaveLength(1);
    for (const words of [
      `calculated columns (${String(calculated)})`,
      "frozen rows",
      "hidden gridlines",
      "styles of tables",
    ])
      expect(changes[0]).toContain(words);
  });

  it("writes texts into the cells, no values beside formulas and numbered charts is whole again but for its charts' names by number", () => {
    const strings = [
      ...strFromU8(unzipSync(file)["xl/sharedStrings.xml"] ?? new Uint8Array()).matchAll(/<si>(.*?)<\/si>/gs),
    ].map(([, item]) => item ?? "");
    const saved = resaved((name, xml) => {
      if (name.startsWith("xl/drawings/"))
        return xml.replaceAll(/(<xdr:cNvPr [^>]*?)name="[^"]*"/g, '$1name="Chart 1"');
      if (!isSheet(name)) return xml;
      return xml
        .replaceAll(
          / t="s"><v>(\d+)<\/v>/g,
          (_, index: string) => ` t="inlineStr"><is>${strings[Number(index)] ?? ""}</is>`,
        )
        .replaceAll(/(<\/f>)<v>[^<]*<\/v>/g, "$1");
    });
    const { state, changes } = opened(saved);
    expect(differences(expected, stateFacts(state))).toEqual([]);
    expect(changes).toEqual([]);
  });

  it("says of tables that they have no headings and lists a part of their columns is whole again", () => {
    const saved = resaved((name, xml) => {
      if (!isTable(name)) return xml;
      let count = 0;
      return xml
        .replace(/<table /, '<table headerRowCount="0" ')
        .replaceAll(/<tableColumn [^>]*?(?:\/>|>.*?<\/tableColumn>)/gs, (column) => {
          count += 1;
          return count % 3 === 0 ? "" : column;
        });
    });
    const { state, changes } = opened(saved);
    expect(differences(expected, stateFacts(state))).toEqual([]);
    expect(changes[0]).toMatch(/calculated columns \(\d+\)/);
  });

  it("drops everything and is of another version keeps what its rows have in common", () => {
    const saved = resaved((name, xml) =>
      isTable(name) ? xml.replaceAll(/<calculatedColumnFormula>.*?<\/calculatedColumnFormula>/gs, "") : xml,
    );
    const read = readWorkbook(saved, gridFunctions);
    const elsewhere = {
      ...read,
      // The log's own writer calls itself by Excel's name.
      isByExcel: false,
      state: {
        ...read.state,
        book: { ...read.state.book, names: read.state.book.names.filter(({ name }) => name !== "Log.Version") },
      },
    };
    const { state, ownLog, changes } = filledFromPlan(elsewhere);
    expect(ownLog).toBeUndefined();
    const found = differences(expected, stateFacts(state)).filter((difference) =>
      difference.startsWith("calculated column"),
    );
    expect(found).toEqual([]);
    expect(changes[0]).toContain(`${String(calculated)} were found by what their rows have in common`);
  });
});

/** What LibreOffice changes for good: digits after the fifteenth, a pixel of a height, widths and a margin of its own. */
function isItsOwn(difference: string): boolean {
  const [kind = "", before = "", after = ""] = /^([a-z ]+?) .*?: (.*) became (.*)$/s.exec(difference)?.slice(1) ?? [];
  const [was, is] = [Number(before), Number(after)];
  switch (kind) {
    case "typed":
      return Math.abs(was - is) <= Math.abs(was) * 1e-14;
    case "height":
      return Math.abs(was - is) <= 1;
    case "width":
      return before === "nothing";
    case "format":
      return before === "nothing" && after === '"0"';
    case "print":
      return before === after.replace(/36\.8503\d+/, "21.599999999999998");
    default:
      return false;
  }
}

describe("a log that LibreOffice saved", () => {
  it.skipIf(!hasLibreOffice)(
    "opens with every cell, look, rule, table, name and chart [needs LibreOffice]",
    { timeout: 180_000 },
    async () => {
      const { state, ownLog, changes, losses } = opened(await recalculated(file));
      expect(ownLog).toEqual({ version: 1, system: "US" });
      const found = differences(expected, stateFacts(state));
      expect(found.length).toBeGreaterThan(0);
      expect(found.filter((difference) => !isItsOwn(difference))).toEqual([]);
      expect(changes).toEqual([
        `Another program had saved this log without some of what belongs to it; filled in as Bathsheet makes it: hidden gridlines (19), calculated columns (${String(calculated)}), styles of tables (${String(tables.length)}), frozen rows (${String(frozen)}).`,
      ]);
      expect(losses).toEqual([]);
    },
  );
});
