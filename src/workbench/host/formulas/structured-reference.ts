/** The text between a table name's brackets, read as Excel reads it. */
type Portion = "#All" | "#Data" | "#Headers" | "#Totals" | "#This Row";

export interface StructuredReference {
  readonly portions: readonly Portion[];
  /** First and last column by header; both absent where the reference means all columns. */
  readonly from?: string;
  readonly to?: string;
}

const portions: readonly Portion[] = ["#All", "#Data", "#Headers", "#Totals", "#This Row"];

/** Characters that stand after an apostrophe in a column's name inside a formula. */
const escaped = /['[\]#@]/g;

function escapeHeader(header: string): string {
  return header.replace(escaped, (character) => `'${character}`);
}

function unescapeHeader(text: string): string {
  return text.replace(/'(.)/gs, "$1");
}

function portionOf(text: string): Portion | undefined {
  return portions.find((portion) => portion.toLowerCase() === text.trim().toLowerCase());
}

interface Part {
  readonly content: string;
  readonly separator: string;
}

/** `[#Data],[pH]:[Note]` as its bracketed contents, each with the sign before it; undefined where it is malformed. */
function bracketedParts(text: string): readonly Part[] | undefined {
  const parts: Part[] = [];
  const shape = /\s*([,:]?)\s*\[((?:'.|[^'[\]])*)\]\s*/gsy;
  while (shape.lastIndex < text.length) {
    const match = shape.exec(text);
    if (match === null) return undefined;
    parts.push({ separator: match[1] ?? "", content: match[2] ?? "" });
  }
  return parts.every((part, index) => (part.separator === "") === (index === 0)) ? parts : undefined;
}

function fromParts(parts: readonly Part[], start: readonly Portion[]): StructuredReference | undefined {
  const found: Portion[] = [...start];
  const columns: string[] = [];
  for (const { content, separator } of parts) {
    const portion = columns.length === 0 && separator !== ":" ? portionOf(content) : undefined;
    if (portion !== undefined) found.push(portion);
    else if (columns.length === 0 || (columns.length === 1 && separator === ":")) columns.push(unescapeHeader(content));
    else return undefined;
  }
  const [from, to = from] = columns;
  return { portions: found, ...(from === undefined || to === undefined ? {} : { from, to }) };
}

/** Reads what stands between the outer brackets; undefined where Excel would refuse it. */
export function parseStructured(inner: string): StructuredReference | undefined {
  const text = inner.trim();
  if (text === "") return { portions: [] };
  const thisRow = text.startsWith("@");
  const rest = thisRow ? text.slice(1).trim() : text;
  const start: readonly Portion[] = thisRow ? ["#This Row"] : [];
  if (rest === "") return { portions: start };
  if (rest.startsWith("[")) {
    const parts = bracketedParts(rest);
    return parts === undefined ? undefined : fromParts(parts, start);
  }
  const portion = thisRow ? undefined : portionOf(rest);
  if (portion !== undefined) return { portions: [portion] };
  const header = unescapeHeader(rest);
  return { portions: start, from: header, to: header };
}

/** The reference as Excel writes it in full. */
export function structuredText(table: string, reference: StructuredReference): string {
  const { from, to } = reference;
  const items = reference.portions.map((portion) => `[${portion}]`);
  if (from !== undefined && to !== undefined) {
    const columns = from === to ? `[${escapeHeader(from)}]` : `[${escapeHeader(from)}]:[${escapeHeader(to)}]`;
    if (items.length === 0) return from === to ? `${table}${columns}` : `${table}[${columns}]`;
    items.push(columns);
  }
  if (items.length === 0) return `${table}[]`;
  return reference.portions.length === 1 && items.length === 1
    ? `${table}${items[0] ?? ""}`
    : `${table}[${items.join(",")}]`;
}
