/** Rows stand elsewhere than they were looked for: what is planned for them has to be read once more, from there. */
export class RowMoved extends Error {}

/**
 * Where rows stand that were seen before. A row is known by its key; other people may have inserted, sorted or
 * deleted rows since.
 */
export interface RowPlaces<Row extends { readonly position: number }> {
  readonly at: (row: Row) => number;
  /** Takes note of where the row's key stands now. A key in no row or in several leaves the place as it was. */
  readonly look: (row: Row, key: string, keys: readonly unknown[]) => void;
  /** Throws RowMoved where a row was found elsewhere since this was asked last. */
  readonly settle: () => void;
}

export function rowPlaces<Row extends { readonly position: number }>(): RowPlaces<Row> {
  const places = new Map<Row, number>();
  let moved = false;
  const at = (row: Row): number => places.get(row) ?? row.position;
  return {
    at,
    look: (row, key, keys) => {
      const texts = keys.map(String);
      if (texts[at(row)] === key) return;
      const first = texts.indexOf(key);
      if (first < 0 || first !== texts.lastIndexOf(key)) return;
      places.set(row, first);
      moved = true;
    },
    settle: () => {
      if (!moved) return;
      moved = false;
      throw new RowMoved();
    },
  };
}
