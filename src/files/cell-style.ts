import type { Alignment, Border, Style } from "@cj-tech-master/excelts";

import { fontName, fontSize, signalLooks, styleLooks } from "../joblog/layout/styles.ts";
import type { SignalLook } from "../joblog/model/definition.ts";
import type { CellPlan, Look } from "../joblog/model/plan.ts";

function argb(color: string): { readonly argb: string } {
  return { argb: `FF${color.slice(1)}` };
}

function borders(color: string): NonNullable<Style["border"]> {
  const edge: Border = { style: "thin", color: argb(color) };
  return { top: edge, bottom: edge, left: edge, right: edge };
}

function shared(look: Look): Partial<Style> {
  return {
    font: {
      ...(look.color === undefined ? {} : { color: argb(look.color) }),
      ...(look.bold === true ? { bold: true } : {}),
      ...(look.italic === true ? { italic: true } : {}),
    },
    ...(look.border === undefined ? {} : { border: borders(look.border) }),
  };
}

function horizontal(cell: CellPlan): Partial<Alignment> {
  if (cell.align === "right") return { horizontal: "right" };
  return cell.align === "left" || isWords(cell) ? { horizontal: "left", indent: 1 } : {};
}

/** Words stand clear of a number that ends at their left edge; every number of the log has a format of its own. */
function isWords(cell: CellPlan): boolean {
  return (
    cell.style.startsWith("header") ||
    cell.style === "fieldHelp" ||
    cell.numberFormat === "@" ||
    cell.numberFormat === "General"
  );
}

/** Look, font and number format of a cell. */
export function fileStyle(cell: CellPlan): Partial<Style> {
  const look = styleLooks[cell.style];
  const base = shared(look);
  return {
    ...base,
    font: { name: fontName, size: look.size ?? fontSize, family: 2, ...base.font },
    alignment: {
      vertical: "top",
      ...horizontal(cell),
      ...(look.wrap === true ? { wrapText: true } : {}),
    },
    ...(look.fill === undefined ? {} : { fill: { type: "pattern", pattern: "solid", fgColor: argb(look.fill) } }),
    ...(cell.numberFormat === undefined || cell.numberFormat === "General" ? {} : { numFmt: cell.numberFormat }),
  };
}

/** Colours of a conditional format; a differential fill keeps its colour in the background. */
export function signalStyle(signal: SignalLook): Partial<Style> {
  const look = signalLooks[signal];
  return {
    ...shared(look),
    ...(look.fill === undefined ? {} : { fill: { type: "pattern", pattern: "solid", bgColor: argb(look.fill) } }),
  };
}
