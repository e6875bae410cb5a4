/** One row of a sheet can hold two events: a pH of the morning and one of the afternoon, concentrate and water. */
import type { AdoptAnswers, ColumnMap } from "./adopt-answers.ts";
import type { AdoptTable } from "./adopt-kinds.ts";
import { cellWords } from "./cell-words.ts";

/** A column of the sheet that fills no column of the log by itself. */
export interface ExtraColumn {
  readonly id: "ph2" | "temperature2" | "amount2" | "unit";
  readonly label: string;
}

const unitColumn: ExtraColumn = { id: "unit", label: "Unit, where it has a column of its own" };

const extras: Readonly<Partial<Record<AdoptTable, readonly ExtraColumn[]>>> = {
  readings: [
    { id: "ph2", label: "Second pH of the day, such as the afternoon's" },
    { id: "temperature2", label: "Sample temp of the second pH" },
    unitColumn,
  ],
  additions: [{ id: "amount2", label: "Water, where it stands beside the concentrate" }, unitColumn],
  stockMoves: [unitColumn],
};

export const extraColumns = (table: AdoptTable): readonly ExtraColumn[] => extras[table] ?? [];

/** The log's column that a column of units speaks for. */
export const columnWithUnits: Readonly<Partial<Record<AdoptTable, string>>> = {
  readings: "temperature",
  additions: "amount",
  stockMoves: "amount",
};

/** How one event of each row is read. */
export interface SheetView {
  readonly map: ColumnMap;
  readonly same: AdoptAnswers["same"];
  readonly usualTime: string;
  /** The log's column without which the row holds no such event; undefined where each row is one event. */
  readonly key: string | undefined;
  readonly isSecond: boolean;
}

function without(map: ColumnMap, ...ids: readonly string[]): ColumnMap {
  return Object.fromEntries(Object.entries(map).filter(([id]) => !ids.includes(id)));
}

export function viewsOf({ table, columns, same, usualTime, usualTime2 }: AdoptAnswers): readonly SheetView[] {
  const { ph2, temperature2, amount2 } = columns;
  const whole: SheetView = { map: columns, same, usualTime, key: undefined, isSecond: false };
  if (table === "readings" && ph2 !== undefined)
    return [
      { ...whole, key: "ph" },
      {
        map: {
          ...without(columns, "time", "temperature", "level"),
          ph: ph2,
          ...(temperature2 === undefined ? {} : { temperature: temperature2 }),
        },
        same,
        usualTime: usualTime2,
        key: "ph",
        isSecond: true,
      },
    ];
  if (table === "additions" && amount2 !== undefined)
    return [
      {
        ...whole,
        map: without(columns, "water", "levelBefore", "levelAfter"),
        same: { kind: "concentrate", ...same },
        key: "amount",
      },
      {
        map: { ...without(columns, "kind", "purpose", "phBefore", "phAfter", "unit"), amount: amount2 },
        same: { ...same, kind: "water", purpose: "make-up" },
        usualTime,
        key: "amount",
        isSecond: true,
      },
    ];
  return [whole];
}

/** Nothing is said of an event by a blank cell, nor by a 0 where an amount stands beside another. */
export function holds(view: SheetView, cells: readonly unknown[]): boolean {
  const at = view.key === undefined ? undefined : view.map[view.key];
  const text = at === undefined ? "" : cellWords(cells[at]);
  return text !== "" && !(view.key === "amount" && Number(text) === 0);
}
