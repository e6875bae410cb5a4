/** Columns of cells in trips that Excel on the web takes: it refuses requests, and answers, of more than 5 MB. */

/** Well under it: cells travel with quotes and brackets, and other columns of the trip bring paths of their own. */
const mostCharacters = 2_000_000;

export interface Column<Item> {
  readonly item: Item;
  readonly rows: number;
  /** Characters of the longest cell that is likely. */
  readonly width: number;
}

/** Rows of a column that go in one trip. */
export interface Piece<Item> {
  readonly item: Item;
  readonly first: number;
  readonly rows: number;
}

function piecesOfColumn<Item>({ item, rows, width }: Column<Item>): readonly Piece<Item>[] {
  const most = Math.max(1, Math.floor(mostCharacters / Math.max(1, width)));
  return Array.from({ length: Math.ceil(rows / most) }, (_, index) => ({
    item,
    first: index * most,
    rows: Math.min(most, rows - index * most),
  }));
}

/** The columns' pieces by trips, in order. */
export function inTrips<Item>(columns: readonly Column<Item>[]): readonly (readonly Piece<Item>[])[] {
  const trips: Piece<Item>[][] = [];
  let room = 0;
  for (const column of columns) {
    for (const piece of piecesOfColumn(column)) {
      const weight = piece.rows * Math.max(1, column.width);
      if (weight > room || trips.length === 0) {
        trips.push([]);
        room = mostCharacters;
      }
      trips.at(-1)?.push(piece);
      room -= weight;
    }
  }
  return trips;
}
