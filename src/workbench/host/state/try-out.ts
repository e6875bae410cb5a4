import type { KeptValue, SheetState, StateValue, WorkbookState } from "../../../state/workbook-state.ts";
import { areaText } from "../address.ts";
import { positionOf } from "../workbook/grid/grid.ts";
import type { Workbook } from "../workbook/workbook.ts";

/** Values that a file gives beside the formulas of a sheet, in the order of the state's formula cells; null for none. */
export type GivenValues = Readonly<Record<string, readonly (StateValue | null)[]>>;

/** What came out when a workbook was worked out before it is opened. */
export interface TriedOut {
  /** With the file's value kept wherever the grid gives an error and the file does not. */
  readonly state: WorkbookState;
  /** In words, by sheet: formulas that fail here, and formulas that give something else than in the file. */
  readonly differences: readonly { readonly sheet: string; readonly what: string }[];
}

/** Programs differ in the last digits of a sum. */
const sameWithin = 1e-9;

/** These give another value at every calculation. */
const everNew = /\b(?:NOW|TODAY|RAND|RANDBETWEEN|RANDARRAY)\s*\(/i;

/** A function that has not answered yet says so; it is no failure. */
const waiting = new Set(["#BUSY!", "Loading..."]);

type Outcome = "same" | "fails" | "differs";

function isSame(given: StateValue, shown: string | number | boolean): boolean {
  if (typeof given === "number" && typeof shown === "number")
    return Math.abs(given - shown) <= sameWithin * Math.max(1, Math.abs(given), Math.abs(shown));
  return given === shown;
}

function outcome(workbook: Workbook, sheet: SheetState, at: number, given: StateValue): Outcome {
  const cell = sheet.worked[at];
  if (cell === undefined || typeof given === "object") return "same";
  const [row, column, , formula] = cell;
  const evaluated = workbook.grid.model.getters.getEvaluatedCell(positionOf({ sheet: sheet.id, row, column }));
  const kind: string = evaluated.type;
  if (kind === "error") return waiting.has(String(evaluated.value)) ? "same" : "fails";
  return isSame(given, evaluated.value ?? "") || everNew.test(sheet.formulas[formula] ?? "") ? "same" : "differs";
}

function sentence(count: number, [one, more]: readonly [one: string, more: string], first: string): string {
  return count === 1 ? `1 formula ${one} (${first})` : `${String(count)} formulas ${more} (the first in ${first})`;
}

const fails = [
  "cannot be worked out here, so the file's value stays in its place",
  "cannot be worked out here, so the file's values stay in their place",
] as const;
const differs = ["gives something else here than in the file", "give something else here than in the file"] as const;

/** Holds what the grid works out of a workbook against what its file says. */
export function tryOut(workbook: Workbook, state: WorkbookState, given: GivenValues): TriedOut {
  const differences: { readonly sheet: string; readonly what: string }[] = [];
  const sheets = state.sheets.map((sheet): SheetState => {
    const known = new Set(sheet.kept.map(([row, column]) => `${String(row)},${String(column)}`));
    const kept: KeptValue[] = [];
    const others: string[] = [];
    for (const [at, value] of (given[sheet.id] ?? []).entries()) {
      const [row, column] = sheet.worked[at] ?? [];
      if (value === null || row === undefined || column === undefined) continue;
      if (known.has(`${String(row)},${String(column)}`)) continue;
      const came = outcome(workbook, sheet, at, value);
      if (came === "fails") kept.push([row, column, value]);
      if (came === "differs") others.push(areaText({ row, column, rows: 1, columns: 1 }));
    }
    const [failed] = kept;
    if (failed !== undefined) {
      const first = areaText({ row: failed[0], column: failed[1], rows: 1, columns: 1 });
      const what = sentence(kept.length, fails, first);
      differences.push({ sheet: sheet.name, what });
    }
    const [other] = others;
    if (other !== undefined)
      differences.push({
        sheet: sheet.name,
        what: sentence(others.length, differs, other),
      });
    return kept.length === 0 ? sheet : { ...sheet, kept: [...sheet.kept, ...kept] };
  });
  return { state: { ...state, sheets }, differences };
}
