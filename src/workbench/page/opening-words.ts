import type { Loss } from "../../files/read/reading.ts";
import type { FoundWorkbook } from "./read-file.ts";

/** A count with its noun. */
function counted(count: number, one: string): string {
  return `${count.toLocaleString("en-US")} ${one}${count === 1 ? "" : "s"}`;
}

function sum(counts: readonly number[]): number {
  return counts.reduce((total, count) => total + count, 0);
}

/** What the file is, in a sentence or two. */
export function whatWasFound({ state, ownLog }: FoundWorkbook): string {
  const { sheets } = state;
  const [tables, formulas] = [
    sum(sheets.map((sheet) => sheet.tables.length)),
    sum(sheets.map(({ worked }) => worked.length)),
  ];
  const inside = [
    counted(sheets.length, "sheet"),
    ...(tables === 0 ? [] : [counted(tables, "table")]),
    ...(formulas === 0 ? [] : [counted(formulas, "formula")]),
  ];
  const last = inside.at(-1) ?? "";
  const size = inside.length === 1 ? last : `${inside.slice(0, -1).join(", ")} and ${last}`;
  return ownLog === undefined
    ? `A workbook with ${size}. It holds no job log of Bathsheet.`
    : `A job log of Bathsheet in ${ownLog.system} units (version ${String(ownLog.version)}), with ${size}.`;
}

/** What is left out, sheet by sheet; what is of no sheet comes first. */
export function lossesBySheet(losses: readonly Loss[]): readonly { readonly sheet: string; readonly what: string }[] {
  const lines = new Map<string, string[]>();
  for (const { sheet = "", what } of losses) lines.set(sheet, [...(lines.get(sheet) ?? []), what]);
  return [...lines]
    .sort(([one], [other]) => Number(one !== "") - Number(other !== ""))
    .map(([sheet, what]) => ({ sheet, what: what.join("; ") }));
}
