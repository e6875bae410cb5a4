import type { BookState, SheetState } from "../../state/workbook-state.ts";
import { calculationEngine } from "../finish-parts.ts";
import { storedFormula } from "../stored-formula.ts";
import { fixedReference } from "./references.ts";
import { declaration, element, textOf } from "./xml.ts";

function definedName(
  name: string,
  text: string,
  more: Readonly<Record<string, string | number | undefined>> = {},
): string {
  return element("definedName", { name, ...more }, textOf(text));
}

function printNames({ name, print }: SheetState, localSheetId: number): readonly string[] {
  const titles = [print.printTitleColumns, print.printTitleRows]
    .flatMap((lines) => (lines === undefined ? [] : [fixedReference(lines, name)]))
    .filter((lines) => lines !== undefined);
  const area = print.printArea === undefined ? undefined : fixedReference(print.printArea, name);
  return [
    ...(area === undefined ? [] : [definedName("_xlnm.Print_Area", area, { localSheetId })]),
    ...(titles.length === 0 ? [] : [definedName("_xlnm.Print_Titles", titles.join(","), { localSheetId })]),
  ];
}

function names(book: BookState, sheets: readonly SheetState[]): string {
  const own = book.names.flatMap(({ name, refersTo, comment, sheet }) => {
    const localSheetId = sheet === undefined ? undefined : sheets.findIndex(({ id }) => id === sheet);
    if (localSheetId === -1) return [];
    const area = refersTo.includes("!") ? fixedReference(refersTo, "") : undefined;
    return [definedName(name, area ?? storedFormula(refersTo), { comment, localSheetId })];
  });
  const all = [...own, ...sheets.flatMap(printNames)];
  return all.length === 0 ? "" : element("definedNames", {}, ...all);
}

/** The part that lists the sheets and defines the names. */
export function workbookPart(book: BookState, sheets: readonly SheetState[]): string {
  const active = Math.max(
    0,
    sheets.findIndex(({ id }) => id === book.activeSheet),
  );
  const listed = sheets.map(({ name, visible }, index) =>
    element("sheet", {
      name,
      sheetId: index + 1,
      state: visible ? undefined : "hidden",
      "r:id": `rId${String(index + 1)}`,
    }),
  );
  return (
    declaration +
    element(
      "workbook",
      {
        xmlns: "http://schemas.openxmlformats.org/spreadsheetml/2006/main",
        "xmlns:r": "http://schemas.openxmlformats.org/officeDocument/2006/relationships",
      },
      element("bookViews", {}, element("workbookView", { activeTab: active })),
      element("sheets", {}, ...listed),
      names(book, sheets),
      element("calcPr", { calcId: calculationEngine }),
    )
  );
}
