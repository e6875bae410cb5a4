import type { PrintState } from "../../state/workbook-state.ts";
import { splitSheet } from "./read-address.ts";
import { childOf, childrenOf, isOn, numberOf, type XmlElement } from "./xml-tree.ts";

const pointsInInch = 72;

/** Paper by the format's number and Office.js' word (ECMA-376, 18.3.1.63); US Letter is the usual one and has no entry. */
const papers: Readonly<Record<number, string>> = {
  3: "Tabloid",
  4: "Ledger",
  5: "Legal",
  6: "Statement",
  7: "Executive",
  8: "A3",
  9: "A4",
  11: "A5",
  12: "B4",
  13: "B5",
};

type Margin = "leftMargin" | "rightMargin" | "topMargin" | "bottomMargin" | "headerMargin" | "footerMargin";

function margins(element: XmlElement | undefined): Partial<Record<Margin, number>> {
  const found: Partial<Record<Margin, number>> = {};
  for (const side of ["left", "right", "top", "bottom", "header", "footer"] as const) {
    const inches = numberOf(element?.attributes[side]);
    if (inches !== undefined) found[`${side}Margin`] = inches * pointsInInch;
  }
  return found;
}

/** The three parts of a header or footer; what stands before the first mark belongs to the middle. */
function parts(text: string): readonly (readonly [side: "L" | "C" | "R", text: string])[] {
  const found: ["L" | "C" | "R", string][] = [];
  let side: "L" | "C" | "R" = "C";
  let from = 0;
  const close = (end: number): void => {
    if (end > from) found.push([side, text.slice(from, end)]);
  };
  for (let at = text.indexOf("&"); at >= 0; at = text.indexOf("&", at + 2)) {
    const mark = text[at + 1];
    if (mark !== "L" && mark !== "C" && mark !== "R") continue;
    close(at);
    side = mark;
    from = at + 2;
  }
  close(text.length);
  return found;
}

const sideNames = { L: "left", C: "center", R: "right" } as const;

function headerFooter(element: XmlElement | undefined): PrintState {
  const found: Partial<Record<`${"left" | "center" | "right"}${"Header" | "Footer"}`, string>> = {};
  for (const where of ["Header", "Footer"] as const)
    for (const [side, text] of parts(childOf(element, `odd${where}`)?.text ?? ""))
      found[`${sideNames[side]}${where}`] = text;
  return found;
}

function zoom(page: XmlElement | undefined, fits: boolean): NonNullable<PrintState["zoom"]> | undefined {
  const { fitToWidth, fitToHeight, scale } = page?.attributes ?? {};
  if (!fits) {
    const percent = numberOf(scale);
    return percent === undefined || percent === 100 ? undefined : { scale: percent };
  }
  const wide = numberOf(fitToWidth) ?? 1;
  const tall = numberOf(fitToHeight) ?? 1;
  return {
    ...(wide > 0 ? { horizontalFitToPages: wide } : {}),
    ...(tall > 0 ? { verticalFitToPages: tall } : {}),
  };
}

/** Those that somebody set; the others follow from the paper. */
function pageBreaks(root: XmlElement): readonly number[] {
  return childrenOf(childOf(root, "rowBreaks"), "brk")
    .filter(({ attributes }) => isOn(attributes["man"]))
    .flatMap(({ attributes }) => numberOf(attributes["id"]) ?? [])
    .filter((row) => row > 0);
}

/** How a sheet's part says that it is printed. Titles and area are names of the workbook. */
export function readPrintSetUp(
  root: XmlElement,
  named: { readonly area: string | undefined; readonly titles: string | undefined },
): PrintState {
  const page = childOf(root, "pageSetup");
  const fits = isOn(childOf(root, "sheetPr", "pageSetUpPr")?.attributes["fitToPage"]);
  const scaled = zoom(page, fits);
  const paper = papers[numberOf(page?.attributes["paperSize"]) ?? 1];
  const titles = (named.titles ?? "")
    .split(/,(?=(?:[^']*'[^']*')*[^']*$)/)
    .map((one) => splitSheet(one).local)
    .filter((one) => /^\$?[A-Z]*\$?\d*:\$?[A-Z]*\$?\d*$/.test(one));
  const titleRows = titles.find((one) => /\d/.test(one));
  const titleColumns = titles.find((one) => /[A-Z]/.test(one) && !/\d/.test(one));
  const area = named.area === undefined ? undefined : splitSheet(named.area).local.replaceAll("$", "");
  const breaks = pageBreaks(root);
  return {
    ...(breaks.length === 0 ? {} : { pageBreaks: breaks }),
    ...(page === undefined
      ? {}
      : { orientation: page.attributes["orientation"] === "landscape" ? "Landscape" : "Portrait" }),
    ...(scaled === undefined ? {} : { zoom: scaled }),
    ...(paper === undefined ? {} : { paperSize: paper }),
    ...(isOn(childOf(root, "printOptions")?.attributes["horizontalCentered"]) ? { centerHorizontally: true } : {}),
    ...(titleRows === undefined ? {} : { printTitleRows: titleRows }),
    ...(titleColumns === undefined ? {} : { printTitleColumns: titleColumns }),
    ...(area === undefined || area.includes("REF!") || area.includes(",") ? {} : { printArea: area }),
    ...margins(childOf(root, "pageMargins")),
    ...headerFooter(childOf(root, "headerFooter")),
  };
}
