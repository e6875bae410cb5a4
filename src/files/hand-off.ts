/** A values-only copy of a workbook: it reads as before, and no formula, hence no add-in function, is left in it. */
import { strFromU8, strToU8, zipSync, type Zippable } from "fflate";
import { FileRefused, unpack } from "./unpack.ts";

/** A copy is the same file of the same workbook; zip entries hold local clock time. */
const entryDate = new Date(1980, 0, 1);

/** Errors that say a formula is not worked out: frozen, they would stand for a figure for ever. */
const unfinished = /<v>(#NAME\?|#BUSY!|#GETTING_DATA|#CONNECT!)<\/v>/;

const formula = /<f\b[^>]*\/>|<f\b[^>]*>[\s\S]*?<\/f>/;

const everyFormula = new RegExp(formula, "g");

const cell = /<c\b[^>]*>[\s\S]*?<\/c>/g;

/** The order of calculation, and the panes that a workbook opens with, go with the formulas. */
function isDropped(part: string): boolean {
  return part === "xl/calcChain.xml" || part.startsWith("xl/webextensions/");
}

function unfinishedCells(cells: string): readonly string[] {
  return [...cells.matchAll(cell)]
    .filter(([text]) => unfinished.test(text) && formula.test(text))
    .map(([text]) => /\br="([A-Z]+\d+)"/.exec(text)?.[1] ?? "");
}

/** Text of cells cannot hold "<", so elements can be told by their tags; only cells have formulas to lose. */
function withoutFormulas(name: string, xml: string): string {
  if (!xml.trimEnd().endsWith("</worksheet>")) throw new FileRefused("A sheet of the workbook is cut short, so no copy was made.");
  return xml.replace(/<sheetData>[\s\S]*<\/sheetData>/, (cells) => {
    const [first] = unfinishedCells(cells);
    if (first !== undefined) throw new FileRefused(`Cell ${first} of ${name.replace("xl/worksheets/", "").replace(".xml", "")} is not worked out yet (#NAME? or #BUSY!), so no copy was made.`);
    // Metadata of a spilled formula (cm) without the formula makes Excel repair the file.
    return cells.replace(everyFormula, "").replace(/(<c\b[^>]*?) cm="\d+"/g, "$1");
  });
}

function withoutColumnFormulas(xml: string): string {
  return xml.replace(/<(calculatedColumnFormula|totalsRowFormula)\b(?:[^>]*\/>|[\s\S]*?<\/\1>)/g, "");
}

/** Takes out what points to dropped parts; targets are relative to the part's folder or begin at the root. */
function withoutDropped(xml: string, folder: string): string {
  return xml
    .replace(/<Override\b[^>]*?PartName="\/([^"]*)"[^>]*?\/>/g, (element, part: string) => (isDropped(part) ? "" : element))
    .replace(/<Relationship\b[^>]*?Target="([^"]*)"[^>]*?\/>/g, (element, target: string) =>
      isDropped(target.startsWith("/") ? target.slice(1) : folder + target) ? "" : element);
}

function withoutAddInNames(xml: string): string {
  return xml.replace(/<definedName\b[^>]*>[^<]*(?:_xldudf_|BATH\.[A-Z])[^<]*<\/definedName>/g, "");
}

function copied(name: string, xml: string): string {
  if (name.startsWith("xl/worksheets/") && !name.includes("/_rels/")) return withoutFormulas(name, xml);
  if (name.startsWith("xl/tables/")) return withoutColumnFormulas(xml);
  if (name === "[Content_Types].xml" || name === "_rels/.rels") return withoutDropped(xml, "");
  if (name === "xl/_rels/workbook.xml.rels") return withoutDropped(xml, "xl/");
  return name === "xl/workbook.xml" ? withoutAddInNames(xml) : xml;
}

/**
 * The .xlsx file with every formula replaced by the value that stood beside it. Throws FileRefused where
 * the file is none, is beyond the limits of `unpack`, or a cell is not worked out yet.
 */
export function valuesOnly(file: Uint8Array): Uint8Array {
  const parts: Zippable = {};
  for (const [name, bytes] of Object.entries(unpack(file))) {
    if (isDropped(name)) continue;
    const isText = name.endsWith(".xml") || name.endsWith(".rels");
    parts[name] = [isText ? strToU8(copied(name, strFromU8(bytes))) : bytes, { mtime: entryDate }];
  }
  return zipSync(parts);
}
