import type { UnitSystem } from "../../core/units/unit-system.ts";
import type { InputColumn } from "../../joblog/model/definition.ts";
import type { LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import type { AdoptAnswers } from "./adopt-answers.ts";
import { columnsOf, kindOf, standsForDayEnd } from "./adopt-kinds.ts";
import { cellWords } from "./cell-words.ts";
import { answerFor, choicesOf, nameKey } from "./choices-of.ts";
import { secondKey, unitChoices, unitInHeading, unitOfWord } from "./column-units.ts";
import { type BlankColumn, blankColumns, filledDown } from "./fill-down.ts";
import { type DateOrder, isDotted, ordersIn, readDay } from "./read-moment.ts";
import type { SheetTable } from "./sheet-table.ts";
import { columnWithUnits } from "./sheet-views.ts";

/** What the sheet does not say and the person must. */
export interface Questions {
  /** Needed columns that neither the sheet nor one value for all rows fills. */
  readonly unfilled: readonly InputColumn[];
  readonly units: readonly {
    readonly column: InputColumn;
    /** Under which the answer is kept. */
    readonly key: string;
    readonly heading: string;
    readonly choices: readonly string[];
  }[];
  /** Dates such as 3/1/2027 are there; what other dates of the column speak for. */
  readonly order: { readonly proposed: DateOrder | undefined } | undefined;
  readonly timeMissing: boolean;
  /** Times such as 9.30 are there: the first of them. */
  readonly dotted: string | undefined;
  /** Where a second pH stands in each row: likewise. */
  readonly secondTimeMissing: boolean;
  readonly blanks: readonly BlankColumn[];
  /** Words of the sheet's unit column that name no unit of the column they speak for. */
  readonly unitWords: readonly { readonly text: string; readonly choices: readonly string[] }[];
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
export function questionsOn(
  asRead: SheetTable,
  answers: AdoptAnswers,
  log: LogSnapshot,
  system: UnitSystem,
): Questions {
  const sheet = filledDown(asRead, answers);
  const columns = columnsOf(kindOf(answers.table));
  const { columns: map, same } = answers;
  const cellsOf = (type: InputColumn["type"]): readonly unknown[] =>
    columns.flatMap((column) => {
      const at = map[column.id];
      return at === undefined || column.type !== type ? [] : sheet.rows.map(({ cells }) => cells[at]);
    });
  const dates = cellsOf("date and time");
  const orders = ordersIn([...dates, ...cellsOf("date")]);
  const noTime =
    map["time"] === undefined &&
    !standsForDayEnd(answers.table) &&
    dates.some((value) => {
      const reading = readDay(value, "month first");
      return reading.read === "day" && reading.time === undefined;
    });
  return {
    unfilled: columns.filter(
      ({ id, needed }) =>
        needed && map[id] === undefined && (same[id] ?? "") === "" && !(id === "kind" && map["amount2"] !== undefined),
    ),
    units: columns.flatMap((column) =>
      [column.id, secondKey(column.id)].flatMap((key) => {
        const at = map[key];
        const choices = unitChoices(column, system);
        const heading = at === undefined ? "" : (sheet.headings[at] ?? "");
        const byRow = map["unit"] !== undefined && columnWithUnits[answers.table] === key;
        return at === undefined || byRow || choices.length === 0 || unitInHeading(heading, column, system) !== undefined
          ? []
          : [{ column, key, heading, choices }];
      }),
    ),
    order: orders.ambiguous ? { proposed: orders.proven.length === 1 ? orders.proven[0] : undefined } : undefined,
    timeMissing: noTime,
    dotted:
      map["time"] === undefined
        ? undefined
        : sheet.rows
            .map(({ cells }) => cells[map["time"] ?? -1])
            .filter(isDotted)
            .map(cellWords)[0],
    secondTimeMissing: answers.table === "readings" && map["ph2"] !== undefined,
    blanks: blankColumns(asRead, answers),
    unitWords: columns
      .filter(({ id }) => id === columnWithUnits[answers.table])
      .flatMap((column) =>
        map["unit"] === undefined
          ? []
          : textsIn(sheet, map["unit"], undefined)
              .filter((text) => unitOfWord(text, column, system) === undefined)
              .slice(0, mostNames)
              .map((text) => ({ text, choices: unitChoices(column, system) })),
      ),
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
export function isAnswered({ unfilled, units, order, dotted }: Questions, answers: AdoptAnswers): boolean {
  return (
    unfilled.length === 0 &&
    units.every(({ key }) => answers.units[key] !== undefined) &&
    (order === undefined || answers.order !== undefined) &&
    (dotted === undefined || answers.dotTime !== undefined)
  );
}
