import type { PrintState } from "../../state/workbook-state.ts";
import { element, textOf } from "./xml.ts";

/** Paper by Office.js' word and the format's number (ECMA-376, 18.3.1.63). */
const papers: Readonly<Record<string, number>> = {
  Letter: 1,
  Tabloid: 3,
  Ledger: 4,
  Legal: 5,
  Statement: 6,
  Executive: 7,
  A3: 8,
  A4: 9,
  A5: 11,
  B4: 12,
  B5: 13,
};

const pointsInInch = 72;

/** Excel's margins of a new sheet, in points. */
const usualMargins = { left: 50.4, right: 50.4, top: 54, bottom: 54, header: 21.6, footer: 21.6 } as const;

function margins(print: PrintState): string {
  if (Object.keys(print).every((member) => !member.endsWith("Margin"))) return "";
  const inches = (side: keyof typeof usualMargins): number =>
    Number(((print[`${side}Margin`] ?? usualMargins[side]) / pointsInInch).toFixed(9));
  return element("pageMargins", {
    left: inches("left"),
    right: inches("right"),
    top: inches("top"),
    bottom: inches("bottom"),
    header: inches("header"),
    footer: inches("footer"),
  });
}

function pageSetup({ orientation, paperSize, zoom }: PrintState): string {
  if (orientation === undefined && paperSize === undefined && zoom === undefined) return "";
  return element("pageSetup", {
    paperSize: papers[paperSize ?? "Letter"] ?? 1,
    scale: zoom?.scale,
    fitToWidth: fits(zoom) ? (zoom?.horizontalFitToPages ?? 0) : undefined,
    fitToHeight: fits(zoom) ? (zoom?.verticalFitToPages ?? 0) : undefined,
    orientation: orientation === "Landscape" ? "landscape" : "portrait",
  });
}

export function fits(zoom: PrintState["zoom"]): boolean {
  return zoom?.horizontalFitToPages !== undefined || zoom?.verticalFitToPages !== undefined;
}

function threeParts(left = "", center = "", right = ""): string {
  return [
    ["&L", left],
    ["&C", center],
    ["&R", right],
  ]
    .map(([mark = "", text = ""]) => (text === "" ? "" : mark + text))
    .join("");
}

function headerFooter(print: PrintState): string {
  const header = threeParts(print.leftHeader, print.centerHeader, print.rightHeader);
  const footer = threeParts(print.leftFooter, print.centerFooter, print.rightFooter);
  if (header === "" && footer === "") return "";
  return element(
    "headerFooter",
    {},
    header === "" ? "" : element("oddHeader", {}, textOf(header)),
    footer === "" ? "" : element("oddFooter", {}, textOf(footer)),
  );
}

/** A break follows the row that it names, counted from 1; the last column of a sheet is the format's 16383. */
function rowBreaks({ pageBreaks = [] }: PrintState): string {
  if (pageBreaks.length === 0) return "";
  const count = pageBreaks.length;
  const breaks = pageBreaks.map((row) => element("brk", { id: row, max: 16_383, man: 1 }));
  return element("rowBreaks", { count, manualBreakCount: count }, ...breaks);
}

/** How a sheet is printed, in the order of the schema. */
export function printXml(print: PrintState): string {
  const centered = print.centerHorizontally === true ? element("printOptions", { horizontalCentered: 1 }) : "";
  return centered + margins(print) + pageSetup(print) + headerFooter(print) + rowBreaks(print);
}
