/** The least that is a workbook in the file format of Office Open XML (ECMA-376): one sheet, one formula with its value. */
import { strToU8, zipSync } from "fflate";

const main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const packages = "http://schemas.openxmlformats.org/package/2006";
const relations = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const types = "application/vnd.openxmlformats-officedocument.spreadsheetml";
const head = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';

const escaped = (text: string): string =>
  text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll('"', "&quot;");

export interface SmallWorkbook {
  readonly sheet: string;
  /** What A1 holds, without the equals sign and spelled as in files. */
  readonly formula: string;
  readonly value: number;
}

export function smallWorkbook({ sheet, formula, value }: SmallWorkbook): Uint8Array {
  const parts: Readonly<Record<string, string>> = {
    "[Content_Types].xml":
      `<Types xmlns="${packages}/content-types">` +
      '<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>' +
      '<Default Extension="xml" ContentType="application/xml"/>' +
      `<Override PartName="/xl/workbook.xml" ContentType="${types}.sheet.main+xml"/>` +
      `<Override PartName="/xl/worksheets/sheet1.xml" ContentType="${types}.worksheet+xml"/></Types>`,
    "_rels/.rels":
      `<Relationships xmlns="${packages}/relationships">` +
      `<Relationship Id="rId1" Type="${relations}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
    "xl/workbook.xml":
      `<workbook xmlns="${main}" xmlns:r="${relations}">` +
      `<sheets><sheet name="${escaped(sheet)}" sheetId="1" r:id="rId1"/></sheets></workbook>`,
    "xl/_rels/workbook.xml.rels":
      `<Relationships xmlns="${packages}/relationships">` +
      `<Relationship Id="rId1" Type="${relations}/worksheet" Target="worksheets/sheet1.xml"/></Relationships>`,
    "xl/worksheets/sheet1.xml": `<worksheet xmlns="${main}"><sheetData><row r="1"><c r="A1"><f>${escaped(formula)}</f><v>${String(value)}</v></c></row></sheetData></worksheet>`,
  };
  return zipSync(Object.fromEntries(Object.entries(parts).map(([name, xml]) => [name, strToU8(head + xml)])));
}
