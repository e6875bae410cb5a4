import { strToU8, unzipSync, zipSync } from "fflate";
import { describe, expect, it } from "vitest";

import { readWorkbook } from "../../../../src/files/read/read-workbook.ts";
import { FileRefused } from "../../../../src/files/unpack.ts";
import { packed } from "./packed.ts";
import { gridFunctions, writtenLog } from "./written-logs.ts";

const small = { name: "Prices", rows: '<row r="1"><c r="A1"><v>1</v></c></row>' };

/** What the person reads in place of the workbook. */
function refusal(file: Uint8Array): string {
  try {
    readWorkbook(file, gridFunctions);
  } catch (error) {
    if (!(error instanceof FileRefused)) throw error;
    return error.message;
  }
  throw new Error("The file was opened.");
}

const oldContainer = [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1];

function inTwoBytes(text: string): readonly number[] {
  return Array.from(text, (letter) => [letter.charCodeAt(0), 0]).flat();
}

function withParts(parts: Readonly<Record<string, string>>): Uint8Array {
  return packed({ sheets: [small], parts });
}

describe("a file that is no workbook to open here", () => {
  it.each<[string, () => Uint8Array, RegExp]>([
    ["nothing", () => new Uint8Array(), /is empty.*again/],
    ["a text", () => strToU8("Bath,pH\nB-1,11.2\n"), /no Excel workbook.*save it from there as \.xlsx/],
    ["a picture", () => Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a]), /no Excel workbook/],
    [
      "a workbook with a password",
      () => Uint8Array.from([...oldContainer, ...inTwoBytes("Root Entry"), 0, 0, ...inTwoBytes("EncryptedPackage")]),
      /password.*take the password off/,
    ],
    [
      "an old workbook under a new name",
      () => Uint8Array.from([...oldContainer, ...inTwoBytes("Root Entry"), 0, 0, ...inTwoBytes("Workbook")]),
      /old Excel format \(\.xls\).*save it/,
    ],
    ["a workbook with macros", () => withParts({ "xl/vbaProject.bin": "x" }), /macros.*without macros/],
    [
      "a workbook with macros by its list of types",
      () =>
        withParts({
          "[Content_Types].xml":
            '<Types><Override PartName="/xl/workbook.xml" ContentType="application/vnd.ms-excel.sheet.macroEnabled.main+xml"/></Types>',
        }),
      /macros/,
    ],
    ["a binary workbook", () => withParts({ "xl/workbook.bin": "x" }), /\.xlsb.*\.xlsx/],
    [
      "an OpenDocument workbook",
      () =>
        zipSync({
          mimetype: strToU8("application/vnd.oasis.opendocument.spreadsheet"),
          "content.xml": strToU8("<x/>"),
        }),
      /OpenDocument.*\.xlsx/,
    ],
    ["some packed files", () => zipSync({ "photo.jpg": strToU8("x") }), /no Excel workbook/],
    [
      "a packed document",
      () =>
        zipSync({
          "[Content_Types].xml": strToU8("<Types/>"),
          "_rels/.rels": strToU8(
            '<Relationships><Relationship Id="a" Type="x/officeDocument" Target="word/document.xml"/></Relationships>',
          ),
          "word/document.xml": strToU8("<document/>"),
        }),
      /Office file, but no workbook/,
    ],
    ["a workbook cut short", () => packed({ sheets: [small] }).slice(0, 600), /damaged or was cut short.*again/],
    [
      "a part cut short",
      () => withParts({ "xl/worksheets/sheet1.xml": "<worksheet><sheetData><row>" }),
      /damaged or cut short/,
    ],
    [
      "a text that is not there",
      () => packed({ sheets: [{ name: "A", rows: '<row r="1"><c r="A1" t="s"><v>7</v></c></row>' }] }),
      /refers to a text.*repair/,
    ],
    [
      "types of a document's own",
      () =>
        withParts({
          "xl/worksheets/sheet1.xml":
            '<!DOCTYPE x [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;&a;&a;">]><worksheet><sheetData><row r="1"><c r="A1" t="str"><v>&b;</v></c></row></sheetData></worksheet>',
        }),
      /document types of its own/,
    ],
  ])("%s is refused in words", (_, file, words) => {
    expect(refusal(file())).toMatch(words);
  });

  it("that lacks a sheet's part says which", () => {
    const parts = unzipSync(packed({ sheets: [small] }));
    delete parts["xl/worksheets/sheet1.xml"];
    expect(refusal(zipSync(parts))).toMatch(/\(xl\/worksheets\/sheet1\.xml\) is missing/);
  });

  it("in which one byte was changed on the way is refused, wherever it was", () => {
    const file = packed({ sheets: [small, { name: "More", rows: "<row><c><v>12345678</v></c></row>" }] });
    const stored = zipSync(unzipSync(file), { level: 0 });
    const at = Buffer.from(stored).indexOf("12345678");
    expect(at).toBeGreaterThan(0);
    expect(readWorkbook(stored, gridFunctions).state.sheets[1]?.typed).toEqual([[0, 0, 0, 12_345_678]]);
    const changed = stored.slice();
    changed[at + 3] = "9".charCodeAt(0);
    expect(refusal(changed)).toMatch(/\(xl\/worksheets\/sheet2\.xml\) is not what was packed.*again/);
  });

  it("that unpacks to hundreds of megabytes is refused before it is unpacked", { tags: "landing" }, () => {
    const bomb = zipSync({ "xl/worksheets/sheet1.xml": new Uint8Array(300 << 20) }, { level: 9 });
    expect(bomb.length).toBeLessThan(1 << 20);
    const start = performance.now();
    expect(refusal(bomb)).toMatch(/unpacks to far more/);
    expect(performance.now() - start).toBeLessThan(500);
  });

  it("that a grid in a page could not hold is refused with the cell", () => {
    const far = packed({ sheets: [{ name: "Far", rows: '<row r="1048576"><c r="XFD1048576"><v>1</v></c></row>' }] });
    expect(far.length).toBeLessThan(6000);
    expect(refusal(far)).toMatch(/Sheet Far is filled as far as cell XFD1048576.*row 20,000 and column SF.*Clear/);
    const line = Array.from({ length: 251 }, () => "<c><v>1</v></c>").join("");
    const many = packed({
      sheets: [{ name: "Many", rows: Array.from({ length: 2000 }, () => `<row>${line}</row>`).join("") }],
    });
    expect(refusal(many)).toMatch(/more than 500,000 cells/);
  });

  it("but blank cells with a look far away only lose it, and that is said", () => {
    const far = packed({
      sheets: [
        {
          name: "Far",
          rows: '<row r="1"><c r="A1"><v>1</v></c></row><row r="1048576"><c r="XFD1048576" s="1"/></row>',
        },
      ],
    });
    const { state, losses } = readWorkbook(far, gridFunctions);
    expect(state.sheets[0]?.typed).toEqual([[0, 0, 0, 1]]);
    expect(state.sheets[0]?.rows).toBe(100);
    expect(losses).toEqual([{ what: "looks of blank cells beyond row 20,000 and column SF", sheet: "Far" }]);
  });

  it("is a whole log's file cut anywhere", async () => {
    const { file } = await writtenLog("US");
    for (const part of [0.1, 0.5, 0.9, 0.999])
      expect(refusal(file.slice(0, Math.floor(file.length * part)))).toMatch(/cut short/);
  });
});
