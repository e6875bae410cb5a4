import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { describe, expect, it } from "vitest";

import { cutElements } from "../../../src/files/cut-elements.ts";
import { valuesOnly } from "../../../src/files/hand-off.ts";

const main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

function copyOf(part: string, xml: string): string {
  const copied = unzipSync(valuesOnly(zipSync({ [part]: strToU8(xml) })))[part];
  if (copied === undefined) throw new Error(`no ${part}`);
  return strFromU8(copied);
}

const sheetOf = (cells: string): string =>
  copyOf(
    "xl/worksheets/sheet1.xml",
    `<worksheet xmlns="${main}"><sheetData><row r="1">${cells}</row></sheetData></worksheet>`,
  );
const sheetWith = (cells: string): string =>
  `<worksheet xmlns="${main}"><sheetData><row r="1">${cells}</row></sheetData></worksheet>`;

describe("a sheet's formulas", () => {
  it.each<[string, string, string]>([
    [
      "in CDATA, with what looks like the end of a formula",
      '<c r="A1"><f><![CDATA[IF(A2<1,"</f>","<f>")]]></f><v>1</v></c>',
      '<c r="A1"><v>1</v></c>',
    ],
    [
      "with a greater-than sign in an attribute",
      '<c r="A1" note="a>b"><f ref="A1>A2" t="shared">1</f><v>2</v></c>',
      '<c r="A1" note="a>b"><v>2</v></c>',
    ],
    [
      "without a text of their own",
      '<c r="A1"><f t="shared" si="0"/><v>2</v></c><c r="B1"><f t="shared" si="0" /></c>',
      '<c r="A1"><v>2</v></c><c r="B1"></c>',
    ],
    [
      "with metadata of a spill, in either quotes and order",
      `<c r="A1" cm='1' s="4"><f t="array">1</f><v>2</v></c><c cm = "12" r="B1"/>`,
      `<c r="A1" s="4"><v>2</v></c><c r="B1"/>`,
    ],
    [
      "beside values that hold entities and blanks",
      '<c r="A1" t="str"><f>A2&amp;"&lt;f&gt;"</f><v xml:space="preserve"> a &amp; &#60;f&#62; </v></c>',
      '<c r="A1" t="str"><v xml:space="preserve"> a &amp; &#60;f&#62; </v></c>',
    ],
  ])("go %s", (_, cells, left) => {
    expect(sheetOf(cells)).toBe(sheetWith(left));
  });

  it("go under a prefix, and those of another vocabulary stay", () => {
    const xml = (formula: string): string =>
      `<?xml version="1.0"?>\r\n<x:worksheet xmlns:x="${main}" xmlns:o="urn:other"><x:sheetData><x:row><x:c r="A1">${formula}<o:f>kept</o:f><x:v>1</x:v></x:c></x:row></x:sheetData><x:ext><f>kept</f></x:ext></x:worksheet>`;
    expect(copyOf("xl/worksheets/sheet1.xml", xml("<x:f>1+0</x:f>"))).toBe(xml(""));
  });

  it("stay where they are no cell's: in comments, in conditions and in checks", () => {
    const kept = '<!-- <c r="A1"><f>1</f></c> --><c r="A1"><!-- <f>1</f> --><v>1</v></c>';
    expect(sheetOf(kept)).toBe(sheetWith(kept));
    const rules = `<worksheet xmlns="${main}"><sheetData/><conditionalFormatting sqref="A1"><cfRule><formula>A1&gt;1</formula></cfRule></conditionalFormatting><extLst><f>A1</f></extLst></worksheet>`;
    expect(copyOf("xl/worksheets/sheet1.xml", rules)).toBe(rules);
  });

  it("leave line ends, emojis and blanks between attributes as they were", () => {
    const xml = (formula: string): string =>
      `<worksheet xmlns="${main}">\r\n<sheetData>\r\n\t<row  r = '1' ><c r="A1"\r\n s="1">${formula}<v>😀 é\r</v></c></row >\r\n</sheetData></worksheet>\r\n`;
    expect(copyOf("xl/worksheets/sheet1.xml", xml("<f>\r\n1 > 0 😀</f>"))).toBe(xml(""));
  });

  it("that are not worked out are found behind CDATA and a prefix too", () => {
    expect(() => sheetOf('<c r="D4" t="e"><f>1</f><v><![CDATA[#NAME?]]></v></c>')).toThrow(/Cell D4 of sheet1/);
    expect(() =>
      copyOf(
        "xl/worksheets/sheet2.xml",
        `<x:worksheet xmlns:x="${main}"><x:c r="E5"><x:f>1</x:f><x:v>#BUSY!</x:v></x:c></x:worksheet>`,
      ),
    ).toThrow(/Cell E5 of sheet2/);
    const typed = '<c r="A1" t="str"><v>#NAME?</v></c>';
    expect(sheetOf(typed)).toBe(sheetWith(typed));
  });
});

describe("the other parts", () => {
  it("lose a table's formulas, whatever stands in them", () => {
    const table = (formula: string): string =>
      `<table xmlns="${main}" name="T>1"><tableColumns><tableColumn id="1" name="a &lt; b">${formula}</tableColumn></tableColumns></table>`;
    expect(
      copyOf(
        "xl/tables/table1.xml",
        table(
          "<calculatedColumnFormula><![CDATA[</calculatedColumnFormula>]]></calculatedColumnFormula><totalsRowFormula>1</totalsRowFormula>",
        ),
      ),
    ).toBe(table(""));
  });

  it("lose names of add-in functions alone", () => {
    const names = (more: string): string =>
      `<workbook xmlns="${main}"><definedNames>${more}<definedName name="Area">Job!$A$1</definedName></definedNames></workbook>`;
    expect(
      copyOf(
        "xl/workbook.xml",
        names(
          '<definedName name="d" comment="a>b">BATH.DOSE(1)</definedName><definedName name="e"><![CDATA[_xldudf_BATH_DOSE(1)]]></definedName>',
        ),
      ),
    ).toBe(names(""));
  });

  it("lose pointers to what is dropped, relative or from the root", () => {
    const relations = (more: string): string =>
      `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${more}<Relationship Id="a" Target="worksheets/sheet1.xml"/></Relationships>`;
    expect(
      copyOf(
        "xl/_rels/workbook.xml.rels",
        relations(
          '<Relationship Id="b" Target="calcChain.xml"/><Relationship Id="c" Target="/xl/calcChain.xml"></Relationship>',
        ),
      ),
    ).toBe(relations(""));
  });

  it("stay byte for byte where nothing is cut, and are refused where they are cut short", () => {
    const bytes = Uint8Array.from([0xef, 0xbb, 0xbf, ...strToU8("<a/>")]);
    expect(unzipSync(valuesOnly(zipSync({ "xl/styles.xml": bytes })))["xl/styles.xml"]).toEqual(bytes);
    for (const xml of [
      `<worksheet xmlns="${main}"><sheetData>`,
      "<worksheet><sheetData></worksheet>",
      "",
      '<worksheet a="1" a="2"/>',
      "<worksheet>&unknown;</worksheet>",
    ]) {
      expect(() => copyOf("xl/worksheets/sheet1.xml", xml), xml).toThrow(/cut short/);
    }
  });
});

describe("cutting", () => {
  it("of an element takes what is in it along, and of an attribute only its own", () => {
    expect(
      cutElements('<a><b k="1"><c k="2"/></b><c k="3" m="&gt;"/></a>', ({ name }) =>
        name === "b" ? "element" : { attribute: "k" },
      ),
    ).toBe('<a><c m="&gt;"/></a>');
  });
});
