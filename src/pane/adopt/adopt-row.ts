import { bathFacts } from "../../advice/bath-values.ts";
import { closedOn } from "../../advice/books/closed-months.ts";
import { parseNumber } from "../../core/units/parse-number.ts";
import type { UnitSystem } from "../../core/units/unit-system.ts";
import type { Cells, InputColumn, RowValue } from "../../joblog/model/definition.ts";
import { isKeyText } from "../../joblog/model/key-text.ts";
import type { LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import { readInput } from "../controls/read-input.ts";
import type { AdoptAnswers } from "./adopt-answers.ts";
import { type AdoptTable, columnsOf, kindOf, standsForDayEnd } from "./adopt-kinds.ts";
import { cellWords, isErrorCell } from "./cell-words.ts";
import { answerFor, choicesOf, nameKey } from "./choices-of.ts";
import { secondKey, timeUnitOf, unitChoices, unitInHeading, unitOfWord, withUnit } from "./column-units.ts";
import type { Doubt } from "./doubt-kinds.ts";
import { wordsOfColumn } from "./heading-words.ts";
import { readDate, readMoment, readTime } from "./read-moment.ts";
import type { RowToJudge } from "./row-doubts.ts";
import type { SheetRow, SheetTable } from "./sheet-table.ts";
import { columnWithUnits, holds, type SheetView, viewsOf } from "./sheet-views.ts";
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

/** "2 baskets" under Baskets is 2, and "8 min" is in minutes whatever the heading says. */
function withoutOwnWord(
  text: string,
  column: InputColumn,
): { readonly text: string; readonly inCell: string | undefined } {
  const [, number = "", word = ""] = /^([\d.,]+) ?(\p{L}+)\.?$/u.exec(text) ?? [];
  const isCount = column.type === "number" || column.type === "whole number";
  if (word === "" || !isCount) return { text, inCell: undefined };
  const unit = timeUnitOf(word, column);
  if (unit !== undefined) return { text: number, inCell: unit };
  const isOwn = (wordsOfColumn[column.id] ?? []).includes(word.toLowerCase()) && column.unit === undefined;
  return { text: isOwn ? number : text, inCell: undefined };
}

function readNumberOrText(
  value: unknown,
  column: InputColumn,
  unit: string | undefined,
  system: UnitSystem,
  currency: RowValue | undefined,
): CellReading {
  const given = cellWords(value);
  const { text, inCell } = withoutOwnWord(given, column);
  const number = parseNumber(text);
  if (inCell !== undefined && number.read === "number") {
    const own = readInput(column, system, withUnit(text, number.value, inCell, column));
    return own.read === "problem" ? { why: own.message } : { value: own.read === "value" ? own.value : undefined };
  }
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

/** Times at which the event cannot have happened. What a claim says of its loss is older than any month of the books. */
function impossible(
  cells: Cells,
  columns: readonly InputColumn[],
  log: LogSnapshot,
  now: number,
  table: AdoptTable,
): readonly string[] {
  const times = columns.flatMap(({ id, type }) => {
    const value = cells[id];
    return typeof value === "number" && (type === "date" || type === "date and time") ? [value] : [];
  });
  if (times.some((time) => time > now + clockSlack)) return ["the date is still to come"];
  const inBooks = table === "claims" ? undefined : times.flatMap((time) => closedOn(log, time) ?? [])[0];
  if (inBooks !== undefined) return [inBooks];
  const { when, bath } = cells;
  if (typeof when !== "number") return [];
  const facts = bathFacts(log, bath === undefined ? undefined : String(bath));
  const [opened, closed] = [facts?.number("opened"), facts?.number("closed")];
  if (opened !== undefined && when < opened) return [`the date is before the bath ${String(bath)} was opened`];
  return closed !== undefined && when > closed ? [`the date is after the bath ${String(bath)} was closed`] : [];
}

interface ReadColumn {
  readonly column: ReturnType<typeof columnsOf>[number];
  readonly at: number | undefined;
  /** What the heading says, or else the person. */
  readonly unit: string | undefined;
  /** The column of the sheet that says it row by row. */
  readonly unitAt: number | undefined;
  readonly isChoice: boolean;
}

/** How one event of each row is read, by the person's answers. */
function viewReader(
  view: SheetView,
  sheet: SheetTable,
  answers: AdoptAnswers,
  log: LogSnapshot,
  system: UnitSystem,
  now: number,
): (row: SheetRow) => ReadRow {
  const { map, same, isSecond } = view;
  const { order, dotTime, table, unitWords } = answers;
  const noTime = standsForDayEnd(table) ? 0 : undefined;
  const usualTime = view.usualTime.trim() === "" ? noTime : readTime(view.usualTime);
  const columns = columnsOf(kindOf(table)).map((column): ReadColumn => {
    const at = map[column.id];
    const heading = sheet.headings[at ?? -1] ?? "";
    const said = isSecond
      ? (answers.units[secondKey(column.id)] ?? answers.units[column.id])
      : answers.units[column.id];
    return {
      column,
      at,
      unit: at === undefined ? undefined : (unitInHeading(heading, column, system) ?? said),
      unitAt: columnWithUnits[table] === column.id ? map["unit"] : undefined,
      isChoice: choicesOf(column, log) !== undefined,
    };
  });

  const unitOf = (cells: readonly unknown[], { column, unit, unitAt }: ReadColumn): string | undefined => {
    const word = unitAt === undefined ? "" : cellWords(cells[unitAt]);
    return word === "" ? unit : (unitOfWord(word, column, system) ?? unitWords[nameKey(word)]);
  };

  const readCell = (cells: readonly unknown[], one: ReadColumn): CellReading => {
    const { column, at, isChoice } = one;
    const value = at === undefined ? same[column.id] : cells[at];
    const text = cellWords(value);
    if (text === "") return { value: undefined };
    if (isErrorCell(value)) return { why: `${column.label} shows the error ${text}` };
    if (column.type === "date") {
      const date = readDate(value, order);
      return "why" in date ? { why: `${column.label}: ${date.why}` } : { value: date.moment };
    }
    if (column.type === "date and time") {
      const time = map["time"] === undefined || column.id === "closed" ? undefined : { value: cells[map["time"]] };
      const day = isSecond && typeof value === "number" ? Math.floor(value) : value;
      const moment = readMoment(day, time, { order, usualTime, dotTime });
      return "why" in moment ? { why: `${column.label}: ${moment.why}` } : { value: moment.moment };
    }
    if (isChoice) return readWord(text, column, answers, log);
    if (column.id === "strength") return readStrength(value, column, system);
    if (column.id === "id" && !isKeyText(text)) return { why: `${column.label}: "${text}" cannot be looked up` };
    const unit = unitOf(cells, one);
    const word = one.unitAt === undefined ? "" : cellWords(cells[one.unitAt]);
    if (unit === undefined && word !== "")
      return { why: `${column.label}: the unit "${word}" of "${text}" is not known` };
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
    return {
      cells: found,
      fahrenheit,
      doubts,
      why:
        why.length > 0
          ? why
          : impossible(
              found,
              columns.map(({ column }) => column),
              log,
              now,
              table,
            ),
    };
  };
}

/** How each row of the sheet is read: as one event, or as the two that it holds. */
export function rowReader(
  sheet: SheetTable,
  answers: AdoptAnswers,
  log: LogSnapshot,
  system: UnitSystem,
  now: number,
): (row: SheetRow) => readonly ReadRow[] {
  const views = viewsOf(answers).map((view) => ({ view, read: viewReader(view, sheet, answers, log, system, now) }));
  return (row) => {
    const held = views.filter(({ view }) => view.key === undefined || holds(view, row.cells));
    // A row that holds neither says so as the first of both.
    return (held.length === 0 ? views.slice(0, 1) : held).map(({ view, read }) => {
      const one = read(row);
      const heading = sheet.headings[view.map[view.key ?? ""] ?? -1] ?? "";
      return view.isSecond ? { ...one, why: one.why.map((words) => `"${heading}": ${words}`) } : one;
    });
  };
}
