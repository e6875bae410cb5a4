import type { ColumnDefinition } from "../model/definition.ts";

/**
 * A table wider than a sheet of paper: the named columns come first, in that order, and are printed; the
 * rest stand to the right for the screen, helpers last.
 */
export function printedFirst(
  columns: readonly ColumnDefinition[],
  printed: readonly string[],
): readonly ColumnDefinition[] {
  const first = printed.map((id) => {
    const column = columns.find((one) => one.id === id);
    if (column === undefined) throw new RangeError(`The table has no column "${id}".`);
    return column;
  });
  const others = columns.filter((column) => !first.includes(column));
  const isHelper = (column: ColumnDefinition): boolean => column.role === "computed" && column.helper === true;
  return [
    ...first,
    ...others.filter((column) => !isHelper(column)).map((column) => ({ ...column, unprinted: true as const })),
    ...others.filter(isHelper),
  ];
}
