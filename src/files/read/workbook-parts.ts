import { FileRefused, unpack } from "../unpack.ts";
import { requireAsPacked } from "./checked-parts.ts";
import { type FileLooks, readLooks } from "./looks/looks.ts";
import { PackageParts, type Relation } from "./package-parts.ts";
import { refuseOtherPackages, refuseWhatIsNotPacked } from "./refuse-foreign.ts";
import { hasRuns, richText } from "./texts.ts";
import { childOf, childrenOf, isOn, numberOf, type XmlElement } from "./xml-tree.ts";

/** A name of the workbook's part, as it stands there. */
interface FileName {
  readonly name: string;
  readonly text: string;
  /** Position of the one sheet that it counts on. */
  readonly sheet: number | undefined;
  readonly hidden: boolean;
  readonly comment: string | undefined;
}

/** A sheet that the workbook's part lists. */
interface ListedSheet {
  readonly name: string;
  readonly part: string;
  /** `worksheet` for one with cells. */
  readonly kind: string;
  readonly visible: boolean;
  /** Its position among all sheets, by which names mean it. */
  readonly position: number;
}

/** What all sheets of a file share. */
export interface WorkbookParts {
  readonly parts: PackageParts;
  readonly sheets: readonly ListedSheet[];
  readonly active: number;
  readonly names: readonly FileName[];
  readonly strings: readonly string[];
  /** Whether some text wears several looks. */
  readonly richStrings: boolean;
  readonly looks: FileLooks;
  readonly datesFrom1904: boolean;
  readonly isProtected: boolean;
}

const mebibyte = 1 << 20;
/** What `unpack` takes in, said here in words that fit. */
const largest = 64 * mebibyte;

function unpacked(file: Uint8Array): PackageParts {
  refuseWhatIsNotPacked(file);
  if (file.length > largest)
    throw new FileRefused(
      "The file is larger than 64 MB, which is more than can be opened here. Keep the sheets that you need in a copy of it, and open that.",
    );
  let parts: ReturnType<typeof unpack>;
  try {
    parts = unpack(file);
  } catch (error) {
    if (error instanceof FileRefused && /unpacks to far more/.test(error.message)) throw error;
    throw new FileRefused(
      "The file is damaged or was cut short on its way here. Copy or download it again, or let Excel repair it and save it.",
    );
  }
  requireAsPacked(file, parts);
  return new PackageParts(parts);
}

function sheetsOf(book: XmlElement, relations: readonly Relation[]): readonly ListedSheet[] {
  return childrenOf(childOf(book, "sheets"), "sheet").flatMap(({ attributes }, position): readonly ListedSheet[] => {
    const relation = relations.find(({ id }) => id === attributes[":id"]);
    if (relation === undefined) return [];
    const name = attributes["name"] ?? `Sheet${String(position + 1)}`;
    const visible = (attributes["state"] ?? "visible") === "visible";
    return [{ name, part: relation.target, kind: relation.type, visible, position }];
  });
}

function namesOf(book: XmlElement): readonly FileName[] {
  return childrenOf(childOf(book, "definedNames"), "definedName").map(({ attributes, text }) => ({
    name: attributes["name"] ?? "",
    text: text.trim(),
    sheet: numberOf(attributes["localSheetId"]),
    hidden: isOn(attributes["hidden"]),
    comment: attributes["comment"],
  }));
}

/** Opens the packed file as far as its sheets. Throws FileRefused with one sentence of what is wrong and one of what helps. */
export function workbookParts(file: Uint8Array): WorkbookParts {
  const parts = unpacked(file);
  refuseOtherPackages(parts);
  const main = parts.relations("").find(({ type }) => type === "officeDocument")?.target ?? "xl/workbook.xml";
  if (!parts.has(main))
    throw new FileRefused(
      "The file is packed as Office files are, but it holds no workbook. Open it in the program that made it.",
    );
  const book = parts.tree(main);
  if (book.name !== "workbook")
    throw new FileRefused("This is an Office file, but no workbook. Open it in the program that made it.");
  const relations = parts.relations(main);
  const partOf = (type: string): string | undefined => relations.find((one) => one.type === type)?.target;
  const strings = partOf("sharedStrings");
  const items = strings === undefined || !parts.has(strings) ? [] : childrenOf(parts.tree(strings), "si");
  return {
    parts,
    sheets: sheetsOf(book, relations),
    active: numberOf(childOf(book, "bookViews", "workbookView")?.attributes["activeTab"]) ?? 0,
    names: namesOf(book),
    strings: items.map(richText),
    richStrings: items.some(hasRuns),
    looks: readLooks(parts, partOf("styles"), partOf("theme")),
    datesFrom1904: isOn(childOf(book, "workbookPr")?.attributes["date1904"]),
    isProtected: isOn(childOf(book, "workbookProtection")?.attributes["lockStructure"]),
  };
}
