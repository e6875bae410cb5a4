import { strToU8, type Zippable, zipSync } from "fflate";

import type { SheetState, WorkbookState } from "../../state/workbook-state.ts";
import { entryDate } from "../finish-parts.ts";
import { SharedTexts } from "./cells-xml.ts";
import { chartPart } from "./chart-xml.ts";
import { drawingPart, type DrawnChart } from "./drawing-xml.ts";
import type { ShownSheet, ShownValues } from "./known-values.ts";
import { FileLooks } from "./looks.ts";
import { sheetPart } from "./sheet-xml.ts";
import { tablePart } from "./table-xml.ts";
import { workbookPart } from "./workbook-xml.ts";
import { declaration, element, textOf } from "./xml.ts";

const relationTypes = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const contentTypes = "application/vnd.openxmlformats-officedocument";

interface Relation {
  readonly type: string;
  readonly target: string;
}

/** Numbered in their order, as those who refer to them count. */
function relationsPart(relations: readonly Relation[]): string {
  const written = relations.map(({ type, target }, index) =>
    element("Relationship", { Id: `rId${String(index + 1)}`, Type: type, Target: target }),
  );
  return (
    declaration +
    element("Relationships", { xmlns: "http://schemas.openxmlformats.org/package/2006/relationships" }, ...written)
  );
}

/** The parts of a file in the making. */
class Parts {
  readonly texts = new Map<string, string>();
  private readonly types = new Map<string, string>();

  add(path: string, type: string, text: string): void {
    this.texts.set(path, text);
    this.types.set(`/${path}`, type);
  }

  private contentTypes(): string {
    const overrides = [...this.types].map(([PartName, ContentType]) => element("Override", { PartName, ContentType }));
    return (
      declaration +
      element(
        "Types",
        { xmlns: "http://schemas.openxmlformats.org/package/2006/content-types" },
        element("Default", {
          Extension: "rels",
          ContentType: "application/vnd.openxmlformats-package.relationships+xml",
        }),
        element("Default", { Extension: "xml", ContentType: "application/xml" }),
        ...overrides,
      )
    );
  }

  zipped(): Uint8Array {
    const entries: Zippable = {};
    for (const [path, text] of [["[Content_Types].xml", this.contentTypes()] as const, ...this.texts])
      entries[path] = [strToU8(text), { mtime: entryDate }];
    return zipSync(entries);
  }
}

/**
 * LibreOffice shows the values that stand in a file only where it bears this name, and works others out anew, which
 * makes #NAME? of every function of the add-in (seen with 7.4).
 */
const trustedApplication = "Microsoft Excel";

function propertiesPart(): string {
  const namespace = "http://schemas.openxmlformats.org/officeDocument/2006/extended-properties";
  return (
    declaration +
    element(
      "Properties",
      { xmlns: namespace },
      element("Application", {}, trustedApplication),
      element("AppVersion", {}, "16.0300"),
    )
  );
}

/** A workbook that was started empty keeps a blank first sheet, which nobody meant. */
function isLeftOver(sheet: SheetState): boolean {
  const { name, typed, worked, dressed, tables, figures } = sheet;
  return name === "Sheet1" && [typed, worked, dressed, tables, figures].every(({ length }) => length === 0);
}

const nothingShown: ShownSheet = { values: [], spills: new Map(), spilled: [], heights: new Map() };

export interface WrittenFile {
  readonly file: Uint8Array;
  /** What an .xlsx file cannot hold, each in words that go on after "without". */
  readonly lost: readonly string[];
}

class FileWriter {
  private readonly parts = new Parts();
  private readonly looks = new FileLooks();
  private readonly texts = new SharedTexts();
  private readonly lost: string[] = [];
  private tables = 0;
  private charts = 0;
  private drawings = 0;

  private sheet(state: SheetState, shown: ShownSheet, number: number, isActive: boolean): void {
    const relations: Relation[] = [];
    const relate = (type: string, target: string): string => {
      relations.push({ type: `${relationTypes}/${type}`, target });
      return `rId${String(relations.length)}`;
    };
    const lost = (what: string): void => {
      this.lost.push(`${state.name}: ${what}`);
    };
    const charts = this.chartsOf(state, lost);
    const drawing = charts.length === 0 ? undefined : relate("drawing", this.drawing(state, shown, charts));
    const tables = state.tables.map((table) => {
      this.tables += 1;
      const path = `tables/table${String(this.tables)}.xml`;
      this.parts.add(`xl/${path}`, `${contentTypes}.spreadsheetml.table+xml`, tablePart(state, table, this.tables));
      return relate("table", `../${path}`);
    });
    const means = { looks: this.looks, texts: this.texts, lost, isActive, drawing, tables };
    const name = `sheet${String(number)}.xml`;
    this.parts.add(
      `xl/worksheets/${name}`,
      `${contentTypes}.spreadsheetml.worksheet+xml`,
      sheetPart(state, shown, means),
    );
    if (relations.length > 0) this.parts.texts.set(`xl/worksheets/_rels/${name}.rels`, relationsPart(relations));
  }

  private chartsOf(state: SheetState, lost: (what: string) => void): readonly Omit<DrawnChart, "relation">[] {
    return state.figures.flatMap((figure) => {
      const { chart, other } = figure;
      if (chart === undefined) lost(`a drawing (${other?.name ?? other?.tag ?? "of no name"})`);
      else if (other !== undefined) lost(`some looks of the chart ${chart.name}`);
      return chart === undefined ? [] : [{ figure, name: chart.name }];
    });
  }

  private drawing(state: SheetState, shown: ShownSheet, charts: readonly Omit<DrawnChart, "relation">[]): string {
    this.drawings += 1;
    const name = `drawing${String(this.drawings)}.xml`;
    const relations: Relation[] = [];
    const drawn = charts.flatMap(({ figure, name: chartName }): readonly DrawnChart[] => {
      if (figure.chart === undefined) return [];
      this.charts += 1;
      const path = `charts/chart${String(this.charts)}.xml`;
      this.parts.add(`xl/${path}`, `${contentTypes}.drawingml.chart+xml`, chartPart(figure.chart, state.name));
      relations.push({ type: `${relationTypes}/chart`, target: `../${path}` });
      return [{ figure, name: chartName, relation: `rId${String(relations.length)}` }];
    });
    this.parts.add(`xl/drawings/${name}`, `${contentTypes}.drawing+xml`, drawingPart(state, shown, drawn));
    this.parts.texts.set(`xl/drawings/_rels/${name}.rels`, relationsPart(relations));
    return `../drawings/${name}`;
  }

  write({ book, sheets: all }: WorkbookState, shown: ShownValues): WrittenFile {
    const filled = all.filter((sheet) => !isLeftOver(sheet));
    const sheets = filled.some(({ visible }) => visible) ? filled : all;
    const activeSheet = sheets.some(({ id }) => id === book.activeSheet) ? book.activeSheet : (sheets[0]?.id ?? "");
    sheets.forEach((sheet, index) => {
      this.sheet(sheet, shown.get(sheet.id) ?? nothingShown, index + 1, sheet.id === activeSheet);
    });
    this.parts.add(
      "xl/workbook.xml",
      `${contentTypes}.spreadsheetml.sheet.main+xml`,
      workbookPart({ ...book, activeSheet }, sheets),
    );
    this.parts.add("xl/styles.xml", `${contentTypes}.spreadsheetml.styles+xml`, this.looks.part());
    this.parts.add("xl/sharedStrings.xml", `${contentTypes}.spreadsheetml.sharedStrings+xml`, this.strings());
    const sheetRelations = sheets.map((_, index) => ({
      type: `${relationTypes}/worksheet`,
      target: `worksheets/sheet${String(index + 1)}.xml`,
    }));
    const others = ["styles", "sharedStrings"].map((one) => ({
      type: `${relationTypes}/${one}`,
      target: `${one}.xml`,
    }));
    this.parts.texts.set("xl/_rels/workbook.xml.rels", relationsPart([...sheetRelations, ...others]));
    this.parts.add("docProps/app.xml", `${contentTypes}.extended-properties+xml`, propertiesPart());
    this.parts.texts.set(
      "_rels/.rels",
      relationsPart([
        { type: `${relationTypes}/officeDocument`, target: "xl/workbook.xml" },
        { type: `${relationTypes}/extended-properties`, target: "docProps/app.xml" },
      ]),
    );
    return { file: this.parts.zipped(), lost: this.lost };
  }

  private strings(): string {
    const items = this.texts.items.map((text) => {
      const space = /^\s|\s$|\n/.test(text) ? "preserve" : undefined;
      return element("si", {}, element("t", { "xml:space": space }, textOf(text)));
    });
    return (
      declaration +
      element(
        "sst",
        { xmlns: "http://schemas.openxmlformats.org/spreadsheetml/2006/main", uniqueCount: items.length },
        ...items,
      )
    );
  }
}

/**
 * A workbook's state as an .xlsx file that goes on working in Excel: every formula with the value that it showed. Throws
 * a RangeError where a formula has none.
 */
export function writeState(state: WorkbookState, shown: ShownValues): WrittenFile {
  return new FileWriter().write(state, shown);
}
