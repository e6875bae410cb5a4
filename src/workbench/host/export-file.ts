import { strToU8, type Zippable, zipSync } from "fflate";

import type { Model } from "./library.ts";

/** Parts that the grid writes in a shape that Excel repairs: its charts, and what holds them. */
function isDrawing(path: string): boolean {
  return /^xl\/(?:charts|drawings)\//.test(path);
}

/** Corrects what the grid's export gets wrong by the file format's schema: colors without alpha, an alert style of no name. */
function mended(path: string, xml: string): string {
  const text = xml.replace(/ errorStyle=""/g, "").replace(/ rgb="([0-9A-Fa-f]{6})"/g, ' rgb="FF$1"');
  if (path === "[Content_Types].xml")
    return text.replace(/<Override\b[^>]*PartName="\/xl\/(?:charts|drawings)\/[^>]*?\/>/g, "");
  if (path.endsWith(".rels"))
    return text.replace(/<Relationship\b[^>]*Target="[^"]*(?:charts|drawings)\/[^>]*?\/>/g, "");
  return text.replace(/<drawing\b[^>]*\/>/g, "");
}

/** The workbook as an .xlsx file, as far as the grid writes one: without charts, table names and add-in formulas. */
export async function exportFile(model: Model): Promise<Uint8Array> {
  const { files } = await model.exportXLSX();
  const parts: Zippable = {};
  for (const file of files) {
    if ("content" in file && !isDrawing(file.path)) parts[file.path] = strToU8(mended(file.path, file.content));
  }
  return zipSync(parts);
}
