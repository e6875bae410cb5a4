import { XMLParser } from "fast-xml-parser";
import { strFromU8, unzipSync } from "fflate";

/** An XML element as the reader gives it: attributes begin with "@". */
export type Element = Readonly<Record<string, unknown>>;

const parser = new XMLParser({
  ignoreAttributes: false,
  attributeNamePrefix: "@",
  parseAttributeValue: false,
  parseTagValue: false,
  trimValues: false,
  isArray: (_name, path) =>
    typeof path === "string" &&
    /\.(row|c|tableColumn|dataValidation|conditionalFormatting|cfRule|definedName|sheet|ser)$/.test(path),
});

/** The parts of an .xlsx file by name, as text. */
export function partsOf(file: Uint8Array): ReadonlyMap<string, string> {
  return new Map(Object.entries(unzipSync(file)).map(([name, bytes]) => [name, strFromU8(bytes)]));
}

/** A part as elements. Throws where the file lacks it. */
export function parsed(parts: ReadonlyMap<string, string>, name: string): Element {
  const xml = parts.get(name);
  if (xml === undefined) throw new RangeError(`The file has no part ${name}.`);
  return parser.parse(xml) as Element;
}

/** The element or text at a path of names; undefined where there is none. */
export function at(element: unknown, ...path: readonly string[]): unknown {
  let found = element;
  for (const name of path) found = typeof found === "object" && found !== null ? (found as Element)[name] : undefined;
  return found;
}

/** The elements at a path, none where it ends early. */
export function listAt(element: unknown, ...path: readonly string[]): readonly Element[] {
  const found = at(element, ...path);
  if (Array.isArray(found)) return found as readonly Element[];
  return typeof found === "object" && found !== null ? [found as Element] : [];
}

/** Every cell of a worksheet part by its address. */
export function cellsOf(parts: ReadonlyMap<string, string>, sheet: number): ReadonlyMap<string, Element> {
  const rows = listAt(parsed(parts, `xl/worksheets/sheet${String(sheet)}.xml`), "worksheet", "sheetData", "row");
  return new Map(rows.flatMap((row) => listAt(row, "c").map((cell) => [String(cell["@r"]), cell] as const)));
}
