/** A values-only copy of a workbook: it reads as before, and no formula, hence no add-in function, is left in it. */
import { strFromU8, strToU8, type Zippable, zipSync } from "fflate";

import { isUnfinished } from "../joblog/model/log-snapshot.ts";
import { type Cut, cutElements, type ReadElement } from "./cut-elements.ts";
import { FileRefused, unpack } from "./unpack.ts";

/** A copy is the same file of the same workbook; zip entries hold local clock time. */
const entryDate = new Date(1980, 0, 1);

/** The order of calculation, and the panes that a workbook opens with, go with the formulas. */
function isDropped(part: string): boolean {
  return part === "xl/calcChain.xml" || part.startsWith("xl/webextensions/");
}

/** Formulas stand in cells of a sheet, and beside the columns of a table. Metadata of a spilled formula (cm) without the formula makes Excel repair the file. */
function cutOfSheet(sheet: string): (element: ReadElement) => Cut {
  return ({ name, parent, attributes, children }) => {
    if (name === "f" && parent === "c") return "element";
    if (name !== "c") return undefined;
    const value = children.find((child) => child.name === "v")?.text ?? "";
    // Frozen, they would stand for a figure for ever.
    if (children.some((child) => child.name === "f") && isUnfinished(value)) {
      throw new FileRefused(
        `Cell ${attributes["r"] ?? ""} of ${sheet} is not worked out yet (#NAME? or #BUSY!), so no copy was made.`,
      );
    }
    return { attribute: "cm" };
  };
}

function cutOfTable({ name }: ReadElement): Cut {
  return name === "calculatedColumnFormula" || name === "totalsRowFormula" ? "element" : undefined;
}

/** What points to dropped parts; targets are relative to the part's folder or begin at the root. */
function cutOfPointer(folder: string): (element: ReadElement) => Cut {
  return ({ name, attributes: { PartName: part, Target: target } }) => {
    const named = name === "Override" ? part : name === "Relationship" ? target : undefined;
    if (named === undefined) return undefined;
    return isDropped(named.startsWith("/") ? named.slice(1) : folder + named) ? "element" : undefined;
  };
}

function cutOfWorkbook({ name, text }: ReadElement): Cut {
  return name === "definedName" && /_xldudf_|BATH\.[A-Z]/.test(text) ? "element" : undefined;
}

/** What is cut out of a part; undefined where it stays as it is. */
function cutOf(part: string): ((element: ReadElement) => Cut) | undefined {
  if (part.startsWith("xl/worksheets/") && part.endsWith(".xml"))
    return cutOfSheet(part.replace("xl/worksheets/", "").replace(".xml", ""));
  if (part.startsWith("xl/tables/") && part.endsWith(".xml")) return cutOfTable;
  if (part === "[Content_Types].xml" || part === "_rels/.rels") return cutOfPointer("");
  if (part === "xl/_rels/workbook.xml.rels") return cutOfPointer("xl/");
  return part === "xl/workbook.xml" ? cutOfWorkbook : undefined;
}

function copied(part: string, bytes: Uint8Array): Uint8Array {
  const cut = cutOf(part);
  if (cut === undefined) return bytes;
  try {
    return strToU8(cutElements(strFromU8(bytes), cut));
  } catch (error) {
    if (error instanceof FileRefused) throw error;
    throw new FileRefused(`The part ${part} of the workbook is damaged or cut short, so no copy was made.`);
  }
}

/**
 * The .xlsx file with every formula replaced by the value that stood beside it. Throws FileRefused where
 * the file is none, is beyond the limits of `unpack`, or a cell is not worked out yet.
 */
export function valuesOnly(file: Uint8Array): Uint8Array {
  const parts: Zippable = {};
  for (const [name, bytes] of Object.entries(unpack(file))) {
    if (isDropped(name)) continue;
    parts[name] = [copied(name, bytes), { mtime: entryDate }];
  }
  return zipSync(parts);
}
