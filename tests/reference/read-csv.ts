import { readFileSync } from "node:fs";

function fields(line: string): string[] {
  const found: string[] = [];
  for (const match of line.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/g)) {
    found.push(match[1]?.replaceAll('""', '"') ?? match[2] ?? "");
  }
  return found;
}

/** Rows of a CSV file of this folder, by the headers of its first line. */
export function readCsv(name: string): Readonly<Record<string, string>>[] {
  const [header, ...lines] = readFileSync(new URL(name, import.meta.url), "utf8")
    .trimEnd()
    .split("\n");
  const headers = fields(header ?? "");
  return lines.map((line) => Object.fromEntries(fields(line).map((value, index) => [headers[index] ?? "", value])));
}

/** A field that must hold a number. */
export function numberIn(row: Readonly<Record<string, string>>, field: string): number {
  const text = row[field] ?? "";
  const value = Number(text);
  if (text === "" || !Number.isFinite(value)) throw new RangeError(`${field} holds “${text}”`);
  return value;
}

/** A field that must be there. */
export function textIn(row: Readonly<Record<string, string>>, field: string): string {
  const value = row[field];
  if (value === undefined) throw new RangeError(`No field ${field}`);
  return value;
}
