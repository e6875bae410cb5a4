import { describe, expect, it } from "vitest";

import { readWorkbook } from "../../../../src/files/read/read-workbook.ts";
import type { ReadWorkbook } from "../../../../src/files/read/reading.ts";
import type { SheetState, StateValue } from "../../../../src/state/workbook-state.ts";
import { packed, type PackedBook, type PackedSheet } from "./packed.ts";
import { gridFunctions } from "./written-logs.ts";

function opened(book: PackedBook): ReadWorkbook {
  return readWorkbook(packed(book), gridFunctions);
}

function sheetOf({ state }: ReadWorkbook, at = 0): SheetState {
  const sheet = state.sheets[at];
  if (sheet === undefined) throw new RangeError("There is no such sheet.");
  return sheet;
}

function oneSheet(rows: string, more: Partial<PackedSheet> & Omit<PackedBook, "sheets"> = {}): ReadWorkbook {
  return opened({ ...more, sheets: [{ name: "Prices", ...more, rows }] });
}

/** Formulas by the row and column of their cells. */
function formulasOf(sheet: SheetState): Readonly<Record<string, string | undefined>> {
  return Object.fromEntries(
    sheet.worked.map(([row, column, , formula]) => [`${String(row)},${String(column)}`, sheet.formulas[formula]]),
  );
}

function typedOf(sheet: SheetState): readonly StateValue[] {
  return sheet.typed.map(([, , , value]) => value);
}

const about = ({ losses }: ReadWorkbook): string =>
  losses.map(({ what, sheet }) => `${sheet ?? ""}: ${what}`).join("\n");

describe("cells", () => {
  it("follow one another where they do not say where they stand", () => {
    const sheet = sheetOf(
      oneSheet(
        '<row><c><v>1</v></c><c r="D1"><v>2</v></c><c><v>3</v></c></row><row r="5"><c><v>4</v></c></row><row><c><v>5</v></c></row>',
      ),
    );
    expect(sheet.typed.map(([row, column, , value]) => [row, column, value])).toEqual([
      [0, 0, 1],
      [0, 3, 2],
      [0, 4, 3],
      [4, 0, 4],
      [5, 0, 5],
    ]);
  });

  it("hold texts of every kind, numbers to the last digit, yes, no and errors", () => {
    const sheet = sheetOf(
      oneSheet(
        '<row><c t="s"><v>0</v></c><c t="s"><v>1</v></c><c t="inlineStr"><is><t xml:space="preserve"> a </t></is></c><c t="b"><v>1</v></c><c t="b"><v>0</v></c><c t="e"><v>#N/A</v></c><c><v>46447.284722222219</v></c><c><v>1E-7</v></c><c t="d"><v>2027-03-01T06:00:00</v></c></row>',
        {
          strings: [
            "<t>one_x000D_two _x005F_x000D_</t>",
            "<r><rPr><b/></rPr><t>bo</t></r><r><t>ld</t></r><rPh><t>no</t></rPh>",
          ],
        },
      ),
    );
    expect(typedOf(sheet)).toEqual([
      "one\rtwo _x000D_",
      "bold",
      " a ",
      true,
      false,
      { error: "#N/A" },
      46447.284722222219,
      1e-7,
      46447.25,
    ]);
  });

  it("with an empty text are blank", () => {
    const sheet = sheetOf(
      oneSheet('<row><c t="s"><v>0</v></c><c t="inlineStr"><is><t/></is></c><c t="str"><v></v></c></row>', {
        strings: ["<t/>"],
      }),
    );
    expect(sheet.typed).toEqual([]);
  });

  it("stand under any prefix", () => {
    const file = packed({
      sheets: [{ name: "A", rows: "" }],
      parts: {
        "xl/worksheets/sheet1.xml":
          '<x:worksheet xmlns:x="urn:x"><x:sheetData><x:row r="1"><x:c r="B1"><x:f>1+1</x:f><x:v>2</x:v></x:c></x:row></x:sheetData></x:worksheet>',
      },
    });
    expect(formulasOf(sheetOf(readWorkbook(file, gridFunctions)))).toEqual({ "0,1": "=1+1" });
  });
});

describe("formulas", () => {
  it("that are shared move their references alone", () => {
    const shared = `IF(A1="A1",SUM($A$1:B2)*Stock[[#This Row],[A1]]+Stock[B1]+'A1 B2'!C3+LOG10(A$2)+SUM(A:A)+SUM(3:3)+1E5,_xlfn.IFS(A1,Rate_A1))`;
    const sheet = sheetOf(
      oneSheet(
        `<row r="1"><c r="C1"><f t="shared" si="0" ref="C1:D3">${shared}</f><v>1</v></c></row><row r="3"><c r="D3"><f t="shared" si="0"/><v>1</v></c></row>`,
      ),
    );
    expect(formulasOf(sheet)["2,3"]).toBe(
      `=IF(B3="A1",SUM($A$1:C4)*Stock[[#This Row],[A1]]+Stock[B1]+'A1 B2'!D5+LOG10(B$2)+SUM(B:B)+SUM(5:5)+1E5,IFS(B3,Rate_A1))`,
    );
  });

  it("lose what files put before new functions and ours, in any case, but not within a text", () => {
    const stored = [
      "_xldudf_BATH_PHAT(1,2)",
      "_xldudf_bath_tank_volume (1)",
      "_XLFN._XLWS.SORT(_xlfn.SEQUENCE(3))",
      '"_xlfn.X("&amp;_xlfn.CONCAT(1)',
      "_xlfn.LET(_xlpm.a,1,_xlpm.a)",
    ];
    const sheet = sheetOf(
      oneSheet(`<row>${stored.map((formula) => `<c><f>${formula}</f><v>1</v></c>`).join("")}</row>`),
    );
    expect(Object.values(formulasOf(sheet))).toEqual([
      "=BATH.PHAT(1,2)",
      "=BATH.TANK.VOLUME (1)",
      "=SORT(SEQUENCE(3))",
      '="_xlfn.X("&CONCAT(1)',
      "=LET(a,1,a)",
    ]);
  });

  it("that the grid cannot work out keep the file's value, and it is said what they need", () => {
    const read = oneSheet(
      [
        ["SUM(A1:A2)*2", "1"],
        ["XMATCH(1,A1:A2)", "2"],
        ["Rate*2", "3"],
        ["[1]Other!A1", "4"],
        ["Gone!A1+1", "5"],
        ["Stock[Amount]", "6"],
        ["IF(TRUE,Here,#N/A)+1E+5", "7"],
        ["SUM(A:A,$1:$2,Prices!A1,'Prices'!$A$1:INDEX(A1:A9,2))+ROUND(2.5,0)", "8"],
        ['COUNTIF(A1:A9,"=SORTBY(x")', "9"],
        ["SUM(Prices:Gone!A1)", "10"],
      ]
        .map(([formula, value]) => `<row><c/><c><f>${formula ?? ""}</f><v>${value ?? ""}</v></c></row>`)
        .join(""),
      { names: '<definedName name="Rate">0.07</definedName><definedName name="Here">Prices!$A$1</definedName>' },
    );
    expect(sheetOf(read).kept).toEqual([2, 3, 4, 5, 6, 10].map((value) => [value - 1, 1, value]));
    expect(sheetOf(read).worked).toHaveLength(10);
    const said = about(read);
    for (const word of [
      "the function XMATCH",
      "the name Rate",
      "another workbook",
      "the sheet Gone",
      "a part of table Stock",
    ])
      expect(said).toContain(`1 formula needs ${word}, which cannot be worked out here`);
    expect(read.state.book.names).toEqual([
      { name: "Rate", refersTo: "0.07" },
      { name: "Here", refersTo: "Prices!$A$1" },
    ]);
    expect(said).toContain("the name Rate, which stands for 0.07 and not for cells");
  });

  it("that fill several cells are the formula of their first cell", () => {
    const read = oneSheet(
      '<row><c><f t="array" ref="A1:A3">B1:B3*2</f><v>2</v></c><c><v>1</v></c></row><row><c><v>4</v></c><c><v>2</v></c></row><row><c><v>6</v></c><c><v>3</v></c></row><row><c><f t="array" ref="A4:A5">XMATCH(B1:B2,B1:B3)</f><v>1</v></c></row><row><c><v>2</v></c></row>',
    );
    const sheet = sheetOf(read);
    expect(sheet.typed.filter(([, column]) => column === 0).map(([row, , , value]) => [row, value])).toEqual([[4, 2]]);
    expect(sheet.kept).toEqual([[3, 0, 1]]);
    expect(about(read)).toContain("formulas that fill several cells");
  });
});

describe("days", () => {
  const styles =
    '<numFmts><numFmt numFmtId="170" formatCode="0.0&quot; days&quot;"/></numFmts><cellXfs><xf/><xf numFmtId="14"/><xf numFmtId="20"/><xf numFmtId="22"/><xf numFmtId="46"/><xf numFmtId="170"/></cellXfs>';
  const rows = `<row>${["", "1", "2", "3", "4", "5"].map((look) => `<c s="${look}"><v>1000.5</v></c>`).join("")}</row>`;

  it("counted from 1904 become days counted from 1900, times and numbers stay, and it is said", () => {
    const read = oneSheet(rows, {
      styles,
      book: '<workbookPr date1904="1"/>',
      after:
        '<dataValidations><dataValidation type="date" operator="greaterThan" sqref="B1"><formula1>1000</formula1></dataValidation></dataValidations>',
    });
    expect(typedOf(sheetOf(read))).toEqual([1000.5, 2462.5, 1000.5, 2462.5, 1000.5, 1000.5]);
    expect(sheetOf(read).validations[0]?.criterion).toEqual({
      type: "dateIsAfter",
      values: ["=2462"],
      dateValue: "exactDate",
    });
    expect(read.changes).toHaveLength(1);
    expect(read.changes[0]).toContain("days from 1904");
  });

  it("counted from 1900 stay", () => {
    const read = oneSheet(rows, { styles });
    expect(typedOf(sheetOf(read))).toEqual([1000.5, 1000.5, 1000.5, 1000.5, 1000.5, 1000.5]);
    expect(read.changes).toEqual([]);
  });
});

describe("sheets", () => {
  it("with an apostrophe in their name are renamed, wherever something speaks of them", () => {
    const other = "Joe&apos;s prices";
    const quoted = "'Joe''s prices'!";
    const read = opened({
      sheets: [
        { name: other, rows: "<row><c><v>1</v></c></row>" },
        {
          name: "Sums",
          rows: `<row><c><f>${quoted}A1+SUM(${quoted}$A$1:A1)&amp;"${quoted}"</f><v>2</v></c></row>`,
          after: `<conditionalFormatting sqref="A1"><cfRule type="expression" priority="1"><formula>${quoted}A1&gt;0</formula></cfRule></conditionalFormatting><dataValidations><dataValidation type="list" sqref="B1"><formula1>${quoted}$A$1:$A$3</formula1></dataValidation><dataValidation type="list" sqref="C1"><formula1>"Joe's,Ann's"</formula1></dataValidation></dataValidations>`,
        },
      ],
      names: `<definedName name="First">${quoted}$A$1</definedName>`,
    });
    expect(read.state.sheets.map(({ name }) => name)).toEqual(["Joe’s prices", "Sums"]);
    const sums = sheetOf(read, 1);
    expect(sums.formulas).toEqual([`='Joe’s prices'!A1+SUM('Joe’s prices'!$A$1:A1)&"${quoted}"`]);
    expect(sums.kept).toEqual([]);
    expect(sums.conditionalFormats[0]?.rule).toMatchObject({ values: ["='Joe’s prices'!A1>0"] });
    expect(sums.validations.map(({ criterion }) => criterion.values)).toEqual([
      ["'Joe’s prices'!$A$1:$A$3"],
      ["Joe's", "Ann's"],
    ]);
    expect(read.state.book.names).toEqual([{ name: "First", refersTo: "'Joe’s prices'!$A$1" }]);
    expect(read.changes[0]).toContain("Sheet Joe's prices is called Joe’s prices here");
  });

  it("keep order, visibility, sizes, frozen lines, merged cells and print set-up", () => {
    const read = opened({
      sheets: [
        { name: "Hidden", rows: "", entry: 'state="veryHidden"' },
        {
          name: "Q&amp;A &lt;1&gt;",
          before:
            '<sheetPr><tabColor theme="4" tint="-0.25"/><pageSetUpPr fitToPage="1"/></sheetPr><sheetViews><sheetView showGridLines="0" workbookViewId="0"><pane xSplit="1" ySplit="2" state="frozen"/></sheetView></sheetViews><cols><col min="2" max="3" width="10.7109375"/><col min="4" max="16384" width="9" hidden="1"/></cols>',
          rows: '<row r="1" ht="30" customHeight="1"><c><v>1</v></c></row><row r="2" hidden="1"><c><v>2</v></c></row><row r="3" ht="40"/>',
          after:
            '<mergeCells><mergeCell ref="A1:B2"/></mergeCells><pageMargins left="0.7" right="0.7" top="0.75" bottom="0.75" header="0.3" footer="0.3"/><pageSetup paperSize="9" orientation="landscape" fitToHeight="0"/><headerFooter><oddHeader>Plain &amp;&amp; simple</oddHeader><oddFooter>&amp;L&amp;A&amp;Rpage &amp;P</oddFooter></headerFooter>',
        },
      ],
      book: '<bookViews><workbookView activeTab="1"/></bookViews>',
      names: `<definedName name="_xlnm.Print_Titles" localSheetId="1">'Q&amp;A &lt;1&gt;'!$A:$A,'Q&amp;A &lt;1&gt;'!$1:$2</definedName><definedName name="_xlnm.Print_Area" localSheetId="1">'Q&amp;A &lt;1&gt;'!$A$1:$C$9</definedName>`,
      parts: {
        "xl/theme/theme1.xml":
          '<a:theme xmlns:a="urn:a"><a:themeElements><a:clrScheme><a:dk1><a:sysClr lastClr="000000"/></a:dk1><a:lt1><a:sysClr lastClr="FFFFFF"/></a:lt1><a:dk2><a:srgbClr val="44546A"/></a:dk2><a:lt2><a:srgbClr val="E7E6E6"/></a:lt2><a:accent1><a:srgbClr val="4472C4"/></a:accent1></a:clrScheme></a:themeElements></a:theme>',
        "xl/_rels/workbook.xml.rels":
          '<Relationships><Relationship Id="r1" Type="x/worksheet" Target="worksheets/sheet1.xml"/><Relationship Id="r2" Type="x/worksheet" Target="worksheets/sheet2.xml"/><Relationship Id="r9" Type="x/theme" Target="theme/theme1.xml"/></Relationships>',
      },
    });
    expect(read.state.sheets.map(({ name, visible }) => [name, visible])).toEqual([
      ["Hidden", false],
      ["Q&A <1>", true],
    ]);
    const sheet = sheetOf(read, 1);
    expect(read.state.book.activeSheet).toBe(sheet.id);
    // The shade that Excel shows for this accent, a quarter darker.
    expect(sheet.tabColor).toBe("#2F5597");
    expect(sheet.gridlines).toBe(false);
    expect(sheet.frozen).toEqual({ rows: 2, columns: 1 });
    expect(sheet.columnSizes[1]).toEqual({ size: 75 });
    expect(sheet.columnSizes[25]).toEqual({ size: 63, hidden: true });
    expect(sheet.rowSizes).toEqual({ 0: { size: 40 }, 1: { hidden: true } });
    expect(sheet.merges).toEqual(["A1:B2"]);
    // Inches in points leave a last digit over.
    const print = JSON.parse(
      JSON.stringify(sheet.print, (_, value: unknown) =>
        typeof value === "number" ? Number(value.toFixed(6)) : value,
      ),
    ) as unknown;
    expect(print).toEqual({
      orientation: "Landscape",
      zoom: { horizontalFitToPages: 1 },
      paperSize: "A4",
      printTitleRows: "$1:$2",
      printTitleColumns: "$A:$A",
      printArea: "A1:C9",
      leftMargin: 50.4,
      rightMargin: 50.4,
      topMargin: 54,
      bottomMargin: 54,
      headerMargin: 21.6,
      footerMargin: 21.6,
      centerHeader: "Plain && simple",
      leftFooter: "&A",
      rightFooter: "page &P",
    });
  });

  it("keep their groups of columns, folded where all of a group is hidden, and say what is lost of groups in groups", () => {
    const read = opened({
      sheets: [
        {
          name: "Groups",
          before:
            '<cols><col min="2" max="3" width="9" hidden="1" outlineLevel="1"/><col min="4" max="4" width="9" collapsed="1"/><col min="5" max="5" width="9" outlineLevel="1"/><col min="6" max="6" width="9" hidden="1" outlineLevel="2"/></cols>',
          rows: "<row><c><v>1</v></c></row>",
        },
      ],
    });
    const sheet = sheetOf(read, 0);
    expect(sheet.columnGroups).toEqual([
      { first: 1, last: 2, folded: true },
      { first: 4, last: 5, folded: false },
    ]);
    expect(sheet.columnSizes[1]).toEqual({ size: 63 });
    expect(sheet.columnSizes[5]).toEqual({ size: 63, hidden: true });
    expect(about(read)).toContain("groups of columns within groups");
  });

  it("that are protected stay locked only where nothing may be typed", () => {
    const styles = '<cellXfs><xf/><xf><protection locked="0"/></xf></cellXfs>';
    const protection = '<sheetProtection sheet="1"/>';
    const locked = oneSheet("<row><c><v>1</v></c></row>", { styles, after: protection });
    expect(sheetOf(locked).locked).toBe(true);
    const free = oneSheet('<row><c s="1"><v>1</v></c></row>', { styles, after: protection });
    expect(sheetOf(free).locked).toBe(false);
    expect(about(free)).toContain("every cell can be typed into");
  });

  it("say what on them is left out", () => {
    const read = oneSheet("<row><c><v>1</v></c></row>", {
      after:
        '<hyperlinks><hyperlink ref="A1"/></hyperlinks><conditionalFormatting sqref="A1"><cfRule type="dataBar" priority="1"/></conditionalFormatting>',
      relations: [
        ["comments", "../comments1.xml"],
        ["pivotTable", "../pivotTables/pivotTable1.xml"],
      ],
      parts: { "xl/externalLinks/externalLink1.xml": "<x/>" },
    });
    const said = about(read);
    for (const word of [
      "Prices: links",
      "Prices: comments",
      "Prices: pivot tables",
      "Prices: data bars",
      ": links to other workbooks",
    ])
      expect(said).toContain(word);
  });
});

describe("rules", () => {
  it("on lists of another sheet are found in the extensions, where Excel keeps them", () => {
    const read = opened({
      sheets: [
        {
          name: "A",
          rows: "<row><c><v>1</v></c></row>",
          after:
            '<extLst><ext><x14:dataValidations xmlns:x14="urn:x14" xmlns:xm="urn:xm"><x14:dataValidation type="list" allowBlank="1" showErrorMessage="1" errorTitle="Check" error="Choose one."><x14:formula1><xm:f>\'Other sheet\'!$A$1:$A$2</xm:f></x14:formula1><xm:sqref>B2:B9 D2</xm:sqref></x14:dataValidation></x14:dataValidations></ext></extLst>',
        },
        { name: "Other sheet", rows: "<row><c><v>1</v></c></row>" },
      ],
    });
    expect(sheetOf(read).validations).toEqual([
      {
        ranges: ["B2:B9", "D2"],
        criterion: { type: "isValueInRange", values: ["'Other sheet'!$A$1:$A$2"], displayStyle: "arrow" },
        blocks: true,
        words: {
          rule: { list: { inCellDropDown: true, source: "='Other sheet'!$A$1:$A$2" } },
          ignoreBlanks: true,
          errorAlert: { showAlert: true, style: "Stop", title: "Check", message: "Choose one." },
        },
      },
    ]);
  });

  it("of every kind become the grid's, and those that it has not are said", () => {
    const rule = (type: string, more: string, inner: string): string =>
      `<dataValidation type="${type}" showErrorMessage="1" ${more}>${inner}</dataValidation>`;
    const read = oneSheet('<row r="1"><c r="A1" s="1"><v>46000</v></c><c r="B1" s="2"><v>1</v></c></row>', {
      styles:
        '<numFmts><numFmt numFmtId="170" formatCode="0.0&quot; times&quot;"/></numFmts><cellXfs><xf/><xf numFmtId="14"/><xf numFmtId="170"/></cellXfs>',
      names: '<definedName name="Soils">Prices!$A$1:$A$3</definedName>',
      after: `<dataValidations>${[
        rule("whole", 'operator="between" sqref="C1"', "<formula1>1</formula1><formula2>9</formula2>"),
        rule("decimal", 'operator="greaterThanOrEqual" sqref="A1"', "<formula1>36526</formula1>"),
        rule("decimal", 'operator="lessThan" sqref="B1"', "<formula1>D1</formula1>"),
        rule("list", 'sqref="D1"', "<formula1>Soils</formula1><formula2>0</formula2>"),
        rule("list", 'sqref="E1"', "<formula1>OFFSET(A1,0,0)</formula1>"),
        rule("custom", 'sqref="F1:F2 H5"', "<formula1>F1&gt;$A1</formula1>"),
        rule("textLength", 'sqref="G1"', "<formula1>5</formula1>"),
      ].join("")}</dataValidations>`,
    });
    expect(
      sheetOf(read).validations.map(({ ranges, criterion, blocks }) => [
        ranges.join(" "),
        criterion.type,
        criterion.values,
        blocks,
      ]),
    ).toEqual([
      ["C1", "isBetween", ["1", "9"], true],
      ["A1", "dateIsOnOrAfter", ["=36526"], true],
      ["B1", "isLessThan", ["=D1"], true],
      ["D1", "isValueInRange", ["Prices!$A$1:$A$3"], true],
      ["F1:F2", "customFormula", ["=F1>$A1"], false],
      ["H5", "customFormula", ["=H5>$A5"], false],
    ]);
    expect(about(read)).toContain("Prices: rules for the length of a text");
    expect(about(read)).toContain("Prices: lists of choices that a formula makes");
  });

  it("for looks are formulas of each area's first cell", () => {
    const read = oneSheet("<row><c><v>1</v></c></row>", {
      styles:
        '<dxfs><dxf><font><b/><color rgb="FF8A1F11"/></font><fill><patternFill><bgColor rgb="fffadfda"/></patternFill></fill></dxf></dxfs>',
      after:
        '<conditionalFormatting sqref="B2:B9 D4"><cfRule type="cellIs" operator="between" dxfId="0" priority="2"><formula>1</formula><formula>$A2</formula></cfRule></conditionalFormatting><conditionalFormatting sqref="A1"><cfRule type="containsText" operator="containsText" text="x" dxfId="0" priority="1" stopIfTrue="1"><formula>NOT(ISERROR(SEARCH("x",A1)))</formula></cfRule></conditionalFormatting>',
    });
    const style = { bold: true, textColor: "#8A1F11", fillColor: "#FADFDA" };
    expect(sheetOf(read).conditionalFormats).toEqual([
      {
        ranges: ["A1"],
        rule: { type: "CellIsRule", operator: "customFormula", values: ['=NOT(ISERROR(SEARCH("x",A1)))'], style },
        stopIfTrue: true,
      },
      {
        ranges: ["B2:B9"],
        rule: { type: "CellIsRule", operator: "customFormula", values: ["=AND(B2>=(1),B2<=($A2))"], style },
      },
      {
        ranges: ["D4"],
        rule: { type: "CellIsRule", operator: "customFormula", values: ["=AND(D4>=(1),D4<=($A4))"], style },
      },
    ]);
  });
});

describe("tables", () => {
  const rows =
    '<row><c t="inlineStr"><is><t>Item</t></is></c><c t="inlineStr"><is><t>Price, $</t></is></c><c t="inlineStr"><is><t>Twice</t></is></c></row><row><c><v>1</v></c><c><v>2</v></c><c><f>Stock[[#This Row],[Price, $]]*2</f><v>4</v></c></row><row><c><v>1</v></c><c><v>2</v></c><c><f>Stock[[#This Row],[Price, $]]*2</f><v>4</v></c></row>';
  const columns =
    '<tableColumns count="3"><tableColumn id="1" name="Item"/><tableColumn id="2" name="Price, $"/><tableColumn id="3" name="Twice"><calculatedColumnFormula>Stock[[#This Row],[Price, $]]*2</calculatedColumnFormula></tableColumn></tableColumns>';
  const calculated = [{ header: "Twice", formula: "=Stock[[#This Row],[Price, $]]*2" }];

  it("keep name, place, style and calculated columns", () => {
    const read = oneSheet(rows, {
      tables: [
        `<table displayName="Stock" ref="A1:C3"><autoFilter ref="A1:C3"/>${columns}<tableStyleInfo name="TableStyleMedium2" showRowStripes="1"/></table>`,
      ],
    });
    expect(sheetOf(read).tables).toEqual([
      {
        name: "Stock",
        area: "A1:C3",
        style: "TableStyleMedium2",
        headerRow: true,
        totalsRow: false,
        filterButtons: true,
        bandedRows: true,
        bandedColumns: false,
        firstColumn: false,
        lastColumn: false,
        calculated,
      },
    ]);
    expect(read.losses).toEqual([]);
  });

  it("whose list of columns is damaged go by their headings", () => {
    const damaged =
      '<tableColumns count="1"><tableColumn id="3" name="Twice"><calculatedColumnFormula>Stock[[#This Row],[Price, $]]*2</calculatedColumnFormula></tableColumn></tableColumns>';
    const read = oneSheet(rows, {
      tables: [`<table displayName="Stock" ref="A1:C3" headerRowCount="0">${damaged}</table>`],
    });
    expect(sheetOf(read).tables[0]).toMatchObject({ name: "Stock", area: "A1:C3", headerRow: true, calculated });
    expect(sheetOf(read).kept).toEqual([]);
  });

  it("that have no headings stay as cells, and a row of totals stays below", () => {
    const headless = oneSheet("<row><c><v>1</v></c></row><row><c><v>2</v></c></row>", {
      tables: [
        '<table displayName="Bare" ref="A1:A2" headerRowCount="0"><tableColumns><tableColumn name="Column1"/></tableColumns></table>',
      ],
    });
    expect(sheetOf(headless).tables).toEqual([]);
    expect(about(headless)).toContain("table Bare, which has no headings");
    const totals = oneSheet(`${rows}<row><c/><c/><c><f>SUBTOTAL(109,Stock[Twice])</f><v>8</v></c></row>`, {
      tables: [`<table displayName="Stock" ref="A1:C4" totalsRowCount="1">${columns}</table>`],
    });
    expect(sheetOf(totals).tables[0]).toMatchObject({ area: "A1:C3", totalsRow: false });
    expect(about(totals)).toContain("the row of totals of table Stock");
  });

  it("with relative references give a new row what the last row has", () => {
    const read = oneSheet(
      '<row><c t="inlineStr"><is><t>A</t></is></c><c t="inlineStr"><is><t>B</t></is></c></row><row><c><v>1</v></c><c><f>A2*2</f><v>2</v></c></row><row><c><v>1</v></c><c><f>A3*2</f><v>2</v></c></row>',
      {
        tables: [
          '<table displayName="T" ref="A1:B3"><tableColumns><tableColumn name="A"/><tableColumn name="B"><calculatedColumnFormula>A2*2</calculatedColumnFormula></tableColumn></tableColumns></table>',
        ],
      },
    );
    expect(sheetOf(read).tables[0]?.calculated).toEqual([{ header: "B", formula: "=A3*2", row: 2 }]);
  });
});
