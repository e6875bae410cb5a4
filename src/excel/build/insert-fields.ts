/** New named cells on sheets that hold data: sheet rows are inserted under the last one that is there. */
import type { CellPlan, NamePlan, SheetPlan, StyleId } from "../../joblog/model/plan.ts";
import type { SheetPlacement } from "./plan-placement.ts";
import type { Survey } from "./survey-workbook.ts";

export interface FieldInsertion {
  readonly sheet: string;
  /** First inserted sheet row. */
  readonly row: number;
  readonly names: readonly NamePlan[];
  /** The planned cells of these names at their places in the workbook. */
  readonly cells: readonly CellPlan[];
}

const fieldStyles: readonly StyleId[] = ["fieldLabel", "fieldInput", "fieldComputed", "fieldStated", "fieldHelp"];

/** The field's own cells: of two on a line those from its label to the next one. */
function cellsBeside(sheet: SheetPlan, name: NamePlan): readonly CellPlan[] {
  const line = sheet.cells.filter((cell) => cell.row === name.row && fieldStyles.includes(cell.style));
  const labels = line.filter(({ style }) => style === "fieldLabel").map(({ column }) => column);
  const from = Math.max(0, ...labels.filter((column) => column <= name.column));
  const next = Math.min(Infinity, ...labels.filter((column) => column > name.column));
  const isFirst = labels.every((column) => column >= from);
  return line.filter(({ column, style }) => (style === "fieldHelp" ? isFirst : column >= from && column < next));
}

function insertionOn(
  { plan, actual }: SheetPlacement,
  names: readonly NamePlan[],
  wanted: readonly NamePlan[],
  survey: Survey,
): FieldInsertion {
  const standing = names.flatMap((name) => {
    const cell = survey.cells.get(name.name);
    return cell?.sheet === actual ? [{ name, cell }] : [];
  });
  const [last] = standing.sort((a, b) => b.cell.row - a.cell.row);
  if (last === undefined)
    throw new RangeError(`The sheet ${plan.name} has no named cell under which new ones could go.`);
  const row = last.cell.row + 1;
  // Labels stand where they are planned; how far right the values stand follows the longest label of the version.
  const shiftOf = ({ column }: NamePlan): number => {
    const like = standing.find(({ name }) => name.column === column) ?? last;
    return like.cell.column - like.name.column;
  };
  const moved = wanted.flatMap((name, index) =>
    cellsBeside(plan, name).map((cell): CellPlan => ({
      ...cell,
      row: row + index,
      column: cell.style === "fieldLabel" ? cell.column : cell.column + shiftOf(name),
    })),
  );
  return {
    sheet: actual,
    row,
    names: wanted.map((name, index) => ({
      ...name,
      sheet: actual,
      row: row + index,
      column: name.column + shiftOf(name),
    })),
    cells: moved,
  };
}

/** Where the new named cells of every kept sheet go. */
export function planFields(
  placements: readonly SheetPlacement[],
  names: readonly NamePlan[],
  newNames: readonly NamePlan[],
  survey: Survey,
): readonly FieldInsertion[] {
  return placements.flatMap((placement) => {
    const wanted = newNames.filter((name) => name.sheet === placement.plan.name);
    return wanted.length === 0
      ? []
      : [
          insertionOn(
            placement,
            names.filter((name) => name.sheet === placement.plan.name),
            wanted,
            survey,
          ),
        ];
  });
}

/** Makes room and gives the cells their names; contents follow. */
export function insertFields(context: Excel.RequestContext, insertions: readonly FieldInsertion[]): void {
  for (const { sheet, row, names } of insertions) {
    const worksheet = context.workbook.worksheets.getItem(sheet);
    worksheet.getRangeByIndexes(row, 0, names.length, 1).getEntireRow().insert("Down");
    for (const name of names)
      context.workbook.names.add(name.name, worksheet.getRangeByIndexes(name.row, name.column, 1, 1));
  }
}
