import type { Workbook } from "../../workbook/workbook.ts";
import { ClientObject, partOf } from "../requests/client-object.ts";
import type { Requests } from "../requests/requests.ts";

/** Page set-up is kept and read back; the grid cannot show or print it. */
abstract class NotedObject<Face extends object> extends ClientObject<string, Face> {
  constructor(requests: Requests, kind: string, worksheet: ClientObject<string, object>) {
    super(
      requests,
      kind,
      partOf(worksheet, kind, (sheet) => sheet),
    );
  }

  protected fetch(property: string, sheet: string, workbook: Workbook): unknown {
    return workbook.notesOf(sheet).get(`${this.kind}.${property}`) ?? null;
  }

  protected note(member: string, value: unknown): void {
    this.change(
      member,
      (sheet, workbook) => {
        workbook.notesOf(sheet).set(`${this.kind}.${member}`, value);
      },
      value,
    );
  }
}

const parts = ["leftHeader", "centerHeader", "rightHeader", "leftFooter", "centerFooter", "rightFooter"] as const;

class HeaderFooterObject
  extends NotedObject<Excel.HeaderFooter>
  implements Pick<Excel.HeaderFooter, (typeof parts)[number]>
{
  protected readonly scalars = parts;

  get leftHeader(): string {
    return this.loadedValue("leftHeader") as string;
  }
  set leftHeader(text: string) {
    this.note("leftHeader", text);
  }
  get centerHeader(): string {
    return this.loadedValue("centerHeader") as string;
  }
  set centerHeader(text: string) {
    this.note("centerHeader", text);
  }
  get rightHeader(): string {
    return this.loadedValue("rightHeader") as string;
  }
  set rightHeader(text: string) {
    this.note("rightHeader", text);
  }
  get leftFooter(): string {
    return this.loadedValue("leftFooter") as string;
  }
  set leftFooter(text: string) {
    this.note("leftFooter", text);
  }
  get centerFooter(): string {
    return this.loadedValue("centerFooter") as string;
  }
  set centerFooter(text: string) {
    this.note("centerFooter", text);
  }
  get rightFooter(): string {
    return this.loadedValue("rightFooter") as string;
  }
  set rightFooter(text: string) {
    this.note("rightFooter", text);
  }
}

class HeadersFootersObject
  extends NotedObject<Excel.HeaderFooterGroup>
  implements Pick<Excel.HeaderFooterGroup, "defaultForAllPages">
{
  protected readonly scalars: readonly string[] = [];

  get defaultForAllPages(): Excel.HeaderFooter {
    return this.part("defaultForAllPages", () => new HeaderFooterObject(this.requests, "HeaderFooter", this).face);
  }
}

const margins = ["leftMargin", "rightMargin", "topMargin", "bottomMargin", "headerMargin", "footerMargin"] as const;

export class PageLayoutObject
  extends NotedObject<Excel.PageLayout>
  implements
    Pick<
      Excel.PageLayout,
      | "orientation"
      | "zoom"
      | "headersFooters"
      | "setPrintTitleRows"
      | "setPrintTitleColumns"
      | "setPrintArea"
      | "centerHorizontally"
      | "paperSize"
      | (typeof margins)[number]
    >
{
  protected readonly scalars = [
    "orientation",
    "zoom",
    "centerHorizontally",
    "paperSize",
    "printTitleRows",
    "printTitleColumns",
    "printArea",
    ...margins,
  ];

  constructor(requests: Requests, worksheet: ClientObject<string, object>) {
    super(requests, "PageLayout", worksheet);
  }

  get orientation(): Excel.PageOrientation {
    return this.loadedValue("orientation") as Excel.PageOrientation;
  }
  set orientation(orientation: Excel.PageLayout["orientation"]) {
    this.note("orientation", orientation);
  }
  get zoom(): Excel.PageLayoutZoomOptions {
    return this.loadedValue("zoom") as Excel.PageLayoutZoomOptions;
  }
  set zoom(zoom: Excel.PageLayoutZoomOptions) {
    this.note("zoom", zoom);
  }
  get centerHorizontally(): boolean {
    return this.loadedValue("centerHorizontally") as boolean;
  }
  set centerHorizontally(center: boolean) {
    this.note("centerHorizontally", center);
  }
  get paperSize(): Excel.PaperType {
    return this.loadedValue("paperSize") as Excel.PaperType;
  }
  set paperSize(size: Excel.PageLayout["paperSize"]) {
    this.note("paperSize", size);
  }

  get leftMargin(): number {
    return this.loadedValue("leftMargin") as number;
  }
  set leftMargin(points: number) {
    this.note("leftMargin", points);
  }
  get rightMargin(): number {
    return this.loadedValue("rightMargin") as number;
  }
  set rightMargin(points: number) {
    this.note("rightMargin", points);
  }
  get topMargin(): number {
    return this.loadedValue("topMargin") as number;
  }
  set topMargin(points: number) {
    this.note("topMargin", points);
  }
  get bottomMargin(): number {
    return this.loadedValue("bottomMargin") as number;
  }
  set bottomMargin(points: number) {
    this.note("bottomMargin", points);
  }
  get headerMargin(): number {
    return this.loadedValue("headerMargin") as number;
  }
  set headerMargin(points: number) {
    this.note("headerMargin", points);
  }
  get footerMargin(): number {
    return this.loadedValue("footerMargin") as number;
  }
  set footerMargin(points: number) {
    this.note("footerMargin", points);
  }

  get headersFooters(): Excel.HeaderFooterGroup {
    return this.part("headersFooters", () => new HeadersFootersObject(this.requests, "HeaderFooterGroup", this).face);
  }

  setPrintTitleRows(rows: Excel.Range | string): void {
    this.note("printTitleRows", rows);
  }

  setPrintTitleColumns(columns: Excel.Range | string): void {
    this.note("printTitleColumns", columns);
  }

  setPrintArea(area: Excel.Range | Excel.RangeAreas | string): void {
    this.note("printArea", area);
  }
}
