import type { Area } from "../../address.ts";
import { ExcelError, invalidArgument } from "../../excel-error.ts";
import type { Workbook } from "../../workbook/workbook.ts";
import { rangeTarget } from "../ranges/range-target.ts";
import { ClientObject, partOf } from "../requests/client-object.ts";
import { CollectionObject } from "../requests/collection-object.ts";
import type { Finding, Requests } from "../requests/requests.ts";

/** The target is the name itself as it was defined. */
class NamedItemObject
  extends ClientObject<string, Excel.NamedItem>
  implements
    Pick<
      Excel.NamedItem,
      | "name"
      | "value"
      | "formula"
      | "type"
      | "visible"
      | "comment"
      | "scope"
      | "getRange"
      | "getRangeOrNullObject"
      | "delete"
      | "isNullObject"
    >
{
  protected readonly scalars = ["name", "value", "formula", "type", "visible", "comment", "scope"];

  constructor(requests: Requests, finding: Finding<string>) {
    super(requests, "NamedItem", finding);
  }

  protected fetch(property: string, name: string, workbook: Workbook): unknown {
    const area = workbook.names.find(name);
    const address = area === undefined ? "#REF!" : workbook.fixedAddressOf(area);
    switch (property) {
      case "name":
        return name;
      case "value":
      case "formula":
        return `=${address}`;
      case "type":
        return "Range";
      case "comment":
        return workbook.names.comments.get(name.toLowerCase()) ?? "";
      case "scope":
        return "Workbook";
      default:
        return true;
    }
  }

  get name(): string {
    return this.loadedValue("name") as string;
  }
  get value(): unknown {
    return this.loadedValue("value");
  }
  get formula(): unknown {
    return this.loadedValue("formula");
  }
  get type(): Excel.NamedItemType {
    return this.loadedValue("type") as Excel.NamedItemType;
  }
  get scope(): Excel.NamedItemScope {
    return this.loadedValue("scope") as Excel.NamedItemScope;
  }

  get visible(): boolean {
    return this.loadedValue("visible") as boolean;
  }
  set visible(visible: boolean) {
    this.change("visible", () => undefined, visible);
  }

  get comment(): string {
    return this.loadedValue("comment") as string;
  }
  set comment(comment: string) {
    this.change(
      "comment",
      (name, { names }) => {
        names.comments.set(name.toLowerCase(), comment);
      },
      comment,
    );
  }

  private range(orNull: boolean): Excel.Range {
    const found = partOf(this, "range of the name", (name, workbook): Area | undefined => workbook.names.find(name));
    return this.requests.make.range(this.requests, orNull ? { ...found, orNull: () => true } : found);
  }

  getRange(): Excel.Range {
    return this.range(false);
  }
  getRangeOrNullObject(): Excel.Range {
    return this.range(true);
  }

  delete(): void {
    this.change("delete", (name, { names }) => {
      names.remove(name);
    });
  }
}

export class NamesObject
  extends CollectionObject<Workbook, string, Excel.NamedItem, Excel.NamedItemCollection>
  implements Pick<Excel.NamedItemCollection, "add" | "getItem" | "getItemOrNullObject" | "getCount" | "items">
{
  constructor(requests: Requests) {
    super(requests, "NamedItemCollection", { what: "names", find: (workbook) => workbook });
  }

  protected entries(_owner: Workbook, workbook: Workbook): readonly string[] {
    return workbook.names.list();
  }

  protected item(name: string): Excel.NamedItem {
    return this.named(name, false);
  }

  private named(name: string, orNull: boolean): Excel.NamedItem {
    return new NamedItemObject(this.requests, {
      what: `name ${name}`,
      orNull: () => orNull,
      find: (workbook) => workbook.names.spelling(name),
    }).face;
  }

  getItem(name: string): Excel.NamedItem {
    return this.named(name, false);
  }
  getItemOrNullObject(name: string): Excel.NamedItem {
    return this.named(name, true);
  }

  add(name: string, reference: Excel.Range | string, comment?: string): Excel.NamedItem {
    const given = typeof reference === "string" ? undefined : rangeTarget(reference);
    this.change("add", (_owner, workbook) => {
      if (given === undefined && !(reference as string).startsWith("="))
        throw invalidArgument("A name needs a range or a formula beginning with =.", "NamedItemCollection.add");
      const area = given === undefined ? cellsOfFormula(reference as string, workbook) : given();
      workbook.names.add(name, area);
      if (comment !== undefined) workbook.names.comments.set(name.toLowerCase(), comment);
    });
    return this.named(name, false);
  }
}

function cellsOfFormula(formula: string, workbook: Workbook): Area {
  try {
    return workbook.area(formula.slice(1), workbook.grid.model.getters.getActiveSheetId());
  } catch (error) {
    if (error instanceof ExcelError && error.code === "InvalidArgument")
      throw new ExcelError(
        "NotImplemented",
        "The stand-in's names stand for cells, not for formulas.",
        "NamedItemCollection.add",
      );
    throw error;
  }
}
