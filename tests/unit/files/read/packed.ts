import { strToU8, zipSync } from "fflate";

const main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const relationships = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const packageRelationships = "http://schemas.openxmlformats.org/package/2006/relationships";

/** A sheet's part in hand-written pieces. */
export interface PackedSheet {
  readonly name: string;
  /** Rows, as they stand in sheetData. */
  readonly rows: string;
  /** What stands before the rows, and after them. */
  readonly before?: string;
  readonly after?: string;
  /** Attributes of the sheet's entry in the workbook. */
  readonly entry?: string;
  /** Tables' parts as far as their content. */
  readonly tables?: readonly string[];
  /** More relations of the part, by type and target. */
  readonly relations?: readonly (readonly [type: string, target: string])[];
}

export interface PackedBook {
  readonly sheets: readonly PackedSheet[];
  readonly names?: string;
  /** Elements at the beginning of the workbook's part. */
  readonly book?: string;
  readonly strings?: readonly string[];
  /** The inside of the part of styles. */
  readonly styles?: string;
  readonly parts?: Readonly<Record<string, string>>;
}

function relationsPart(relations: readonly (readonly [type: string, target: string])[]): string {
  const list = relations.map(
    ([type, target], index) =>
      `<Relationship Id="r${String(index + 1)}" Type="${relationships}/${type}" Target="${target}"/>`,
  );
  return `<Relationships xmlns="${packageRelationships}">${list.join("")}</Relationships>`;
}

/** An .xlsx file of hand-written parts. */
export function packed({
  sheets,
  names = "",
  book = "",
  strings = [],
  styles = "",
  parts = {},
}: PackedBook): Uint8Array {
  const files: Record<string, string> = {
    "[Content_Types].xml": '<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"/>',
    "_rels/.rels": relationsPart([["officeDocument", "xl/workbook.xml"]]),
    "xl/styles.xml": `<styleSheet xmlns="${main}">${styles}</styleSheet>`,
    "xl/sharedStrings.xml": `<sst xmlns="${main}">${strings.map((item) => `<si>${item}</si>`).join("")}</sst>`,
  };
  const entries = sheets.map((sheet, index) => {
    const number = String(index + 1);
    const tables = sheet.tables ?? [];
    const relations = [
      ...tables.map((_, at): readonly [string, string] => ["table", `../tables/table${number}_${String(at + 1)}.xml`]),
      ...(sheet.relations ?? []),
    ];
    for (const [at, table] of tables.entries())
      files[`xl/tables/table${number}_${String(at + 1)}.xml`] = table.replace("<table ", `<table xmlns="${main}" `);
    if (relations.length > 0) files[`xl/worksheets/_rels/sheet${number}.xml.rels`] = relationsPart(relations);
    files[`xl/worksheets/sheet${number}.xml`] =
      `<worksheet xmlns="${main}" xmlns:r="${relationships}">${sheet.before ?? ""}<sheetData>${sheet.rows}</sheetData>${sheet.after ?? ""}</worksheet>`;
    return `<sheet name="${sheet.name}" sheetId="${number}" ${sheet.entry ?? ""} r:id="r${number}"/>`;
  });
  files["xl/workbook.xml"] =
    `<workbook xmlns="${main}" xmlns:r="${relationships}">${book}<sheets>${entries.join("")}</sheets><definedNames>${names}</definedNames></workbook>`;
  files["xl/_rels/workbook.xml.rels"] = relationsPart([
    ...sheets.map((_, index): readonly [string, string] => ["worksheet", `worksheets/sheet${String(index + 1)}.xml`]),
    ["styles", "styles.xml"],
    ["sharedStrings", "sharedStrings.xml"],
  ]);
  return zipSync(
    Object.fromEntries(Object.entries({ ...files, ...parts }).map(([name, text]) => [name, strToU8(text)])),
  );
}
