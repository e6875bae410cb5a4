import { readFileSync } from "node:fs";

import type { Composition } from "../../../src/core/chemistry/composition.ts";
import { componentNames, composition } from "../../../src/core/chemistry/composition.ts";

/** One row of a table, by column; refuses a column that the table lacks. */
export class TableRow {
  readonly #cells: ReadonlyMap<string, string>;

  constructor(cells: ReadonlyMap<string, string>) {
    this.#cells = cells;
  }

  text(column: string): string {
    const cell = this.#cells.get(column);
    if (cell === undefined) throw new Error(`No column ${column}`);
    return cell;
  }

  has(column: string): boolean {
    return this.text(column) !== "";
  }

  number(column: string): number {
    const value = Number.parseFloat(this.text(column));
    if (!Number.isFinite(value)) throw new Error(`Column ${column} holds ${this.text(column)}`);
    return value;
  }

  /** The totals in the columns named after components, behind a prefix. */
  totals(prefix = ""): Composition {
    const present = componentNames
      .filter((name) => name !== "acetate")
      .map((name) => [name, this.number(prefix + name)]);
    return composition(Object.fromEntries(present) as Partial<Composition>);
  }
}

/** The rows of a table in this folder. */
export function readTable(name: string): readonly TableRow[] {
  const [header = "", ...lines] = readFileSync(new URL(`tables/${name}.csv`, import.meta.url), "utf8")
    .trim()
    .split("\n");
  const columns = header.split(",");
  return lines.map((line) => {
    const cells = line.split(",");
    return new TableRow(new Map(columns.map((column, index) => [column, cells[index] ?? ""])));
  });
}
