import { strToU8 } from "fflate";

import { unitSystems } from "../../core/units/unit-system.ts";
import { PackageParts } from "../../files/read/package-parts.ts";
import { readArea, splitSheet } from "../../files/read/read-address.ts";
import { childOf, childrenOf, isOn, numberOf, type XmlElement } from "../../files/read/xml-tree.ts";
import { FileRefused } from "../../files/unpack.ts";
import { jobLog } from "../../joblog/job-log.ts";
import { headerOf } from "../../joblog/model/headers.ts";
import { findField } from "../../joblog/model/references.ts";
import { typedFields, typedTables } from "../job/job-schema.ts";
import type { TypedBook, TypedSheet } from "../job/log-in-book.ts";
import { NotPlain } from "./not-plain.ts";
import { attribute, type ScannedTable, scanSheet, scanStrings } from "./scan-sheet.ts";
import { ScannedParts } from "./scanned-parts.ts";

/** Headings of a table's columns in which nobody types, in every system of units, by the table's name. */
const computedHeadings: ReadonlyMap<string, ReadonlySet<string>> = new Map(
  jobLog.sheets
    .flatMap(({ tables }) => tables)
    .map(({ name, columns }) => {
      const headings = (role: "input" | "computed"): readonly string[] =>
        columns
          .filter((column) => (column.role === "input") === (role === "input"))
          .flatMap((column) => unitSystems.map((system) => headerOf(column, system)));
      const typed = new Set(headings("input"));
      return [name.toLowerCase(), new Set(headings("computed").filter((heading) => !typed.has(heading)))];
    }),
);

const tableNames = new Set(typedTables.map(({ name }) => name.toLowerCase()));

const fieldNames = new Set(
  [...typedFields, findField(jobLog, "logVersion"), findField(jobLog, "unitSystem")].map(({ name }) =>
    name.toLowerCase(),
  ),
);

interface ListedTable {
  readonly name: string;
  readonly area: string;
  readonly totalsRow: boolean;
  readonly scanned: ScannedTable;
}

function missing(part: string): never {
  throw new NotPlain(part);
}

class BookScan {
  private readonly parts: ScannedParts;

  constructor(bytes: Uint8Array) {
    this.parts = new ScannedParts(bytes);
  }

  private need(name: string): string {
    return this.parts.text(name) ?? missing(name);
  }

  /** The small parts are read as trees, as the whole reader has them. */
  private small(name: string): PackageParts {
    const cut = name.lastIndexOf("/") + 1;
    const list = `${name.slice(0, cut)}_rels/${name.slice(cut)}.rels`;
    const both = [name, list].flatMap((one) => {
      const text = one === "" ? undefined : this.parts.text(one);
      return text === undefined ? [] : [[one, strToU8(text)] as const];
    });
    return new PackageParts(Object.fromEntries(both));
  }

  /** The place of a table stands in the first tag of its part; the long rest need not be read. */
  private tableIn(part: string): ListedTable {
    const tag = /<table\s[^>]*>/.exec(this.need(part))?.[0] ?? missing(part);
    const name = attribute(tag, "displayName") ?? attribute(tag, "name");
    const ref = attribute(tag, "ref") ?? "";
    const area = readArea(ref);
    if (name === undefined || area === undefined || tag.includes("&") || attribute(tag, "headerRowCount") === "0")
      throw new NotPlain(part);
    return {
      name,
      area: ref,
      totalsRow: (numberOf(attribute(tag, "totalsRowCount")) ?? 0) > 0,
      scanned: { ...area, computed: computedHeadings.get(name.toLowerCase()) ?? new Set() },
    };
  }

  run(): TypedBook {
    const types = this.need("[Content_Types].xml");
    if (/macroEnabled/i.test(types)) throw new NotPlain("The file");
    const main = this.small("")
      .relations("")
      .find(({ type }) => type === "officeDocument")?.target;
    if (main === undefined) throw new NotPlain("The file");
    const parts = this.small(main);
    const book = parts.tree(main);
    if (book.name !== "workbook" || isOn(childOf(book, "workbookPr")?.attributes["date1904"])) throw new NotPlain(main);
    const relations = parts.relations(main);
    const shared = relations.find(({ type }) => type === "sharedStrings")?.target;
    const strings = shared === undefined ? [] : scanStrings(this.need(shared));
    const names = namesOf(book);
    const wanted = new Set(
      names
        .filter(({ name }) => fieldNames.has(name.toLowerCase()))
        .map(({ refersTo }) => splitSheet(refersTo).sheet?.toLowerCase()),
    );
    const sheetNames: string[] = [];
    const sheets: TypedSheet[] = [];
    for (const { attributes } of childrenOf(childOf(book, "sheets"), "sheet")) {
      const relation = relations.find(({ id }) => id === attributes[":id"]);
      const name = attributes["name"];
      if (relation === undefined || name === undefined || name.includes("'")) throw new NotPlain(main);
      if (relation.type !== "worksheet") continue;
      sheetNames.push(name);
      const sheet = this.sheet(name, relation.target, wanted.has(name.toLowerCase()), strings);
      if (sheet !== undefined) sheets.push(sheet);
    }
    return { names, sheets, sheetNames };
  }

  /** Undefined for a sheet on which nothing is typed. */
  private sheet(name: string, part: string, isNamed: boolean, strings: readonly string[]): TypedSheet | undefined {
    const tables = this.relationsOf(part).map((target) => this.tableIn(target));
    if (!isNamed && !tables.some((table) => tableNames.has(table.name.toLowerCase()))) return undefined;
    const scanned = tables.map((table) => table.scanned);
    return { name, tables, cells: scanSheet(this.parts.bytesAsText(part) ?? missing(part), strings, scanned) };
  }

  private relationsOf(part: string): readonly string[] {
    const cut = part.lastIndexOf("/") + 1;
    const list = `${part.slice(0, cut)}_rels/${part.slice(cut)}.rels`;
    const text = this.parts.text(list);
    if (text === undefined) return [];
    return new PackageParts({ [list]: strToU8(text) })
      .relations(part)
      .filter(({ type }) => type === "table")
      .map(({ target }) => target);
  }
}

function namesOf(book: XmlElement): TypedBook["names"] {
  const seen = new Set<string>();
  return childrenOf(childOf(book, "definedNames"), "definedName").flatMap(({ attributes, text }) => {
    const name = attributes["name"] ?? "";
    if (!fieldNames.has(name.toLowerCase())) return [];
    if (seen.has(name.toLowerCase()) || attributes["localSheetId"] !== undefined || isOn(attributes["hidden"]))
      throw new NotPlain(name);
    seen.add(name.toLowerCase());
    return [{ name, refersTo: text.trim() }];
  });
}

/**
 * What a log's file shows where someone types, in a tenth of the time that reading it whole takes; undefined where the
 * file holds anything that this does not know, so that the whole reader has to read or refuse it.
 */
export function scanBook(bytes: Uint8Array): TypedBook | undefined {
  try {
    return new BookScan(bytes).run();
  } catch (error) {
    // Whatever is wrong with the file, the whole reader says it. A RangeError is a place beyond the file's end.
    if (error instanceof NotPlain || error instanceof FileRefused || error instanceof RangeError) return undefined;
    throw error;
  }
}
