import { bathFacts } from "../../advice/bath-values.ts";
import { closedOn } from "../../advice/books/closed-months.ts";
import { parseNumber } from "../../core/units/parse-number.ts";
import type { UnitSystem } from "../../core/units/unit-system.ts";
import type { Cells, InputColumn, RowValue } from "../../joblog/model/definition.ts";
import { isKeyText } from "../../joblog/model/key-text.ts";
import type { LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import { readInput } from "../controls/read-input.ts";
import type { AdoptAnswers } from "./adopt-answers.ts";
import { columnsOf, kindOf } from "./adopt-kinds.ts";
import { cellWords, isErrorCell } from "./cell-words.ts";
import { answerFor, choicesOf } from "./choices-of.ts";
import { unitChoices, unitInHeading, withUnit } from "./column-units.ts";
import type { Doubt } from "./doubt-kinds.ts";
import { readMoment, readTime } from "./read-moment.ts";
import type { RowToJudge } from "./row-doubts.ts";
import type { SheetRow, SheetTable } from "./sheet-table.ts";
import { strengthOf } from "./strength-cell.ts";

type CellReading =
  | { readonly value: RowValue | undefined; readonly fahrenheit?: string; readonly doubt?: Doubt }
  | { readonly why: string };

/** A row as far as it could be read, and everything that is wrong with it. */
export interface ReadRow extends RowToJudge {
  readonly why: readonly string[];
  readonly doubts: readonly Doubt[];
}

/** Clocks of two machines may differ by this much, in days. */
const clockSlack = 1 / 24;

function readWord(text: string, column: InputColumn, answers: AdoptAnswers, log: LogSnapshot): CellReading {
  const answer = answerFor(text, column, answers, log);
  if (answer === undefined) return { why: `${column.label}: "${text}" is not in the log` };
  if (answer === "leave out") return { why: `left out: ${column.label} is "${text}"` };
  return { value: answer === "new" ? text : answer.use };
}

function readNumberOrText(
  value: unknown,
  column: InputColumn,
  unit: string | undefined,
  system: UnitSystem,
  currency: RowValue | undefined,
): CellReading {
  const text = cellWords(value);
  const number = parseNumber(text);
  if (unit === undefined && number.read === "number" && unitChoices(column, system).length > 0)
    return { why: `${column.label}: the unit of "${text}" is not known` };
  const reading = readInput(
    column,
    system,
    unit === undefined || number.read === "nothing"
      ? text
      : number.read === "number"
        ? withUnit(text, number.value, unit, column)
        : `${text} ${unit}`,
    "person",
    currency === undefined ? currency : String(currency),
  );
  if (reading.read === "problem") return { why: reading.message };
  const isFahrenheit = unit === "°F" && number.read === "number";
  return {
    value: reading.read === "value" ? reading.value : undefined,
    ...(isFahrenheit ? { fahrenheit: String(number.value) } : {}),
  };
}

function readStrength(value: unknown, column: InputColumn, system: UnitSystem): CellReading {
  const strength = strengthOf(value, system);
  if ("why" in strength) return { why: `${column.label}: ${strength.why}` };
  return {
    value: strength.text,
    ...(strength.doubt === undefined ? {} : { doubt: { kind: "strength" as const, text: strength.doubt } }),
  };
}

/** A line under the rows: what it counts stands in them already. */
const totalWords = /^(?:(?:sub|grand ?)?totals?|sum|average|avg|mean)(?![\p{L}-])/iu;

function totalDoubts(cells: readonly unknown[]): readonly Doubt[] {
  const word = cells.filter((value) => typeof value === "string").find((value) => totalWords.test(value.trim()));
  return word === undefined ? [] : [{ kind: "total", text: `"${cellWords(word)}": is it a row of its own?` }];
}

/** Times at which the event cannot have happened. */
function impossible(cells: Cells, log: LogSnapshot, now: number): readonly string[] {
  const { when, bath } = cells;
  if (typeof when !== "number") return [];
  if (when > now + clockSlack) return ["the date is still to come"];
  const inBooks = closedOn(log, when);
  if (inBooks !== undefined) return [inBooks];
  const facts = bathFacts(log, bath === undefined ? undefined : String(bath));
  const [opened, closed] = [facts?.number("opened"), facts?.number("closed")];
  if (opened !== undefined && when < opened) return [`the date is before the bath ${String(bath)} was opened`];
  return closed !== undefined && when > closed ? [`the date is after the bath ${String(bath)} was closed`] : [];
}

/** How each row of the sheet is read, by the person's answers. */
export function rowReader(
  sheet: SheetTable,
  answers: AdoptAnswers,
  log: LogSnapshot,
  system: UnitSystem,
  now: number,
): (row: SheetRow) => ReadRow {
  const { columns: map, same, order } = answers;
  const usualTime = answers.usualTime.trim() === "" ? undefined : readTime(answers.usualTime);
  const columns = columnsOf(kindOf(answers.table)).map((column) => {
    const at = map[column.id];
    const unit =
      at === undefined
        ? undefined
        : (unitInHeading(sheet.headings[at] ?? "", column, system) ?? answers.units[column.id]);
    return { column, at, unit, isChoice: choicesOf(column, log) !== undefined };
  });

  const readCell = (
    cells: readonly unknown[],
    { column, at, unit, isChoice }: (typeof columns)[number],
  ): CellReading => {
    const value = at === undefined ? same[column.id] : cells[at];
    const text = cellWords(value);
    if (text === "") return { value: undefined };
    if (isErrorCell(value)) return { why: `${column.label} shows the error ${text}` };
    if (column.type === "date and time") {
      const time = map["time"] === undefined ? undefined : { value: cells[map["time"]] };
      const moment = readMoment(value, time, { order, usualTime });
      return "why" in moment ? { why: `${column.label}: ${moment.why}` } : { value: moment.moment };
    }
    if (isChoice) return readWord(text, column, answers, log);
    if (column.id === "strength") return readStrength(value, column, system);
    if (column.id === "id" && !isKeyText(text)) return { why: `${column.label}: "${text}" cannot be looked up` };
    return readNumberOrText(value, column, unit, system, log.fields.currency);
  };

  return ({ cells }) => {
    const why: string[] = [];
    const doubts: Doubt[] = [...totalDoubts(cells)];
    const found: Record<string, RowValue> = {};
    let fahrenheit: string | undefined;
    for (const one of columns) {
      const reading = readCell(cells, one);
      if ("why" in reading) {
        why.push(reading.why);
        continue;
      }
      if (reading.value !== undefined) found[one.column.id] = reading.value;
      else if (one.column.needed) why.push(`${one.column.label}: blank`);
      fahrenheit ??= reading.fahrenheit;
      if (reading.doubt !== undefined) doubts.push(reading.doubt);
    }
    return { cells: found, fahrenheit, doubts, why: why.length > 0 ? why : impossible(found, log, now) };
  };
}
