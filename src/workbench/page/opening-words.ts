import type { FoundWorkbook, Loss } from "./read-file.ts";

/** A count with its noun. */
function counted(count: number, one: string, more = `${one}s`): string {
  return `${count.toLocaleString("en-US")} ${count === 1 ? one : more}`;
}

function sum(counts: readonly number[]): number {
  return counts.reduce((total, count) => total + count, 0);
}

/** What the file is, in a sentence or two. */
export function whatWasFound({ state, ownLog }: FoundWorkbook): string {
  const { sheets } = state;
  const inside = [
    counted(sheets.length, "sheet"),
    counted(sum(sheets.map(({ tables }) => tables.length)), "table"),
    counted(sum(sheets.map(({ worked }) => worked.length)), "formula"),
  ];
  const size = `${inside.slice(0, -1).join(", ")} and ${inside.at(-1) ?? ""}`;
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
