import type { UnitSystem } from "../../core/units/unit-system.ts";
import type { InputColumn } from "../../joblog/model/definition.ts";
import type { LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import type { AdoptAnswers } from "./adopt-answers.ts";
import { columnsOf, kindOf } from "./adopt-kinds.ts";
import { cellWords } from "./cell-words.ts";
import { answerFor, choicesOf, nameKey } from "./choices-of.ts";
import { unitChoices, unitInHeading } from "./column-units.ts";
import { type DateOrder, ordersIn, readDay } from "./read-moment.ts";
import type { SheetTable } from "./sheet-table.ts";

/** What the sheet does not say and the person must. */
export interface Questions {
  /** Needed columns that neither the sheet nor one value for all rows fills. */
  readonly unfilled: readonly InputColumn[];
  readonly units: readonly {
    readonly column: InputColumn;
    readonly heading: string;
    readonly choices: readonly string[];
  }[];
  /** Dates such as 3/1/2027 are there; what other dates of the column speak for. */
  readonly order: { readonly proposed: DateOrder | undefined } | undefined;
  readonly timeMissing: boolean;
  readonly names: readonly { readonly column: InputColumn; readonly text: string }[];
}

/** The different words of a column, or the one that stands for all rows. */
function textsIn(table: SheetTable, at: number | undefined, same: string | undefined): readonly string[] {
  const values = at === undefined ? [same] : table.rows.map(({ cells }) => cells[at]);
  const texts = values.map(cellWords).filter((text) => text !== "");
  return [...new Map(texts.map((text) => [nameKey(text), text])).values()];
}

/** More different words than these are no list of names. */
const mostNames = 60;

/** Everything that is open about a sheet, answered or not; `unfilled` only what is still open. */
export function questionsOn(sheet: SheetTable, answers: AdoptAnswers, log: LogSnapshot, system: UnitSystem): Questions {
  const columns = columnsOf(kindOf(answers.table));
  const { columns: map, same } = answers;
  const dates = map["when"] === undefined ? [] : sheet.rows.map(({ cells }) => cells[map["when"] ?? -1]);
  const orders = ordersIn(dates);
  const noTime =
    map["time"] === undefined &&
    dates.some((value) => {
      const reading = readDay(value, "month first");
      return reading.read === "day" && reading.time === undefined;
    });
  return {
    unfilled: columns.filter(({ id, needed }) => needed && map[id] === undefined && (same[id] ?? "") === ""),
    units: columns.flatMap((column) => {
      const at = map[column.id];
      const choices = unitChoices(column, system);
      const heading = at === undefined ? "" : (sheet.headings[at] ?? "");
      return at === undefined || choices.length === 0 || unitInHeading(heading, column, system) !== undefined
        ? []
        : [{ column, heading, choices }];
    }),
    order: orders.ambiguous ? { proposed: orders.proven.length === 1 ? orders.proven[0] : undefined } : undefined,
    timeMissing: noTime,
    names: columns.flatMap((column) =>
      choicesOf(column, log) === undefined
        ? []
        : textsIn(sheet, map[column.id], same[column.id])
            .filter((text) => answerFor(text, column, { ...answers, names: {} }, log) === undefined)
            .slice(0, mostNames)
            .map((text) => ({ column, text })),
    ),
  };
}

/** Whether nothing is open any more that would leave every row out. */
export function isAnswered({ unfilled, units, order }: Questions, answers: AdoptAnswers): boolean {
  return (
    unfilled.length === 0 &&
    units.every(({ column }) => answers.units[column.id] !== undefined) &&
    (order === undefined || answers.order !== undefined)
  );
}
