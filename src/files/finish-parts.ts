import { strFromU8, strToU8, unzipSync, type Zippable, zipSync } from "fflate";

import { columnLetters } from "../joblog/layout/addresses.ts";
import { fontName, fontSize } from "../joblog/layout/styles.ts";
import type { SheetPlan, WorkbookPlan } from "../joblog/model/plan.ts";

/**
 * Number of the calculation engine that files of Excel 2019 to 365 carry (from memory of such files).
 * An older number makes Excel work everything out at opening.
 */
export const calculationEngine = "191029";

/** A file carries dates; fixed ones make the same file of the same plan, in every time zone. */
export const fileDate = new Date("2027-03-01T00:00:00Z");

/** Zip entries hold local clock time. */
export const entryDate = new Date(2027, 2, 1);

function printArea(plan: SheetPlan, index: number): string {
  const name = plan.name.replaceAll("'", "''");
  const area = `'${name}'!$A:$${columnLetters(plan.lastPrintedColumn)}`;
  return `<definedName name="_xlnm.Print_Area" localSheetId="${String(index)}">${area}</definedName>`;
}

/** The library has no setting for the engine's number and takes no print area of whole columns. */
function finishWorkbook(xml: string, plan: WorkbookPlan): string {
  const areas = plan.sheets.map(printArea).join("");
  return xml
    .replace(/<calcPr[^>]*\/>/, `<calcPr calcId="${calculationEngine}"/>`)
    .replace("</definedNames>", `${areas}</definedNames>`);
}

/** Without its filter a table shows no buttons over wrapped headers; hidden buttons make Excel drop the table. */
function finishTable(xml: string): string {
  return xml
    .replace(/<autoFilter[^>]*>.*?<\/autoFilter>|<autoFilter[^>]*\/>/s, "")
    .replace(' totalsRowLabel="Total"', "")
    .replace(/ ref="([^"]*)">/, ' ref="$1" totalsRowShown="0">');
}

/**
 * A file's first font is the one by whose digits columns are measured (ECMA-376, 18.3.1.13). Where the library's own is
 * not installed, a wider one stands in, columns grow and a page fitted to the paper shrinks (from 8 points to 6, seen with LibreOffice).
 */
function finishStyles(xml: string): string {
  const usual = `<font><sz val="${String(fontSize)}"/><name val="${fontName}"/><family val="2"/></font>`;
  return xml.replace(/(<fonts[^>]*>)<font>.*?<\/font>/s, `$1${usual}`);
}

function finishPart(name: string, xml: string, plan: WorkbookPlan): string {
  if (name === "xl/styles.xml") return finishStyles(xml);
  if (name === "xl/workbook.xml") return finishWorkbook(xml, plan);
  return name.startsWith("xl/tables/") ? finishTable(xml) : xml;
}

/** Corrects in the written parts what the file library cannot be told. */
export function finishParts(file: Uint8Array, plan: WorkbookPlan): Uint8Array {
  const parts: Zippable = {};
  for (const [name, bytes] of Object.entries(unzipSync(file))) {
    const isText = name.endsWith(".xml");
    parts[name] = [isText ? strToU8(finishPart(name, strFromU8(bytes), plan)) : bytes, { mtime: entryDate }];
  }
  return zipSync(parts);
}
