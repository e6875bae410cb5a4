import { type Area, areaText, type Cell, sheetPrefix } from "../address.ts";
import { ExcelError } from "../excel-error.ts";
import type { ValidationCriterion, ValidationRule } from "../library.ts";
import { type Grid, positionOf, zoneOf } from "./grid/grid.ts";
import { stretchedRange } from "./stretched-range.ts";

/** What belongs to a rule in Excel and not in the grid: alert, prompt and the rule as it was given. */
export type ValidationWords = Readonly<Record<string, unknown>>;

/** What a person reads whose entry was refused. */
export interface RefusalWords {
  readonly title: string;
  readonly message: string;
}

/**
 * The grid tries an entry against a list or limits, but a formula of one's own against what the cell
 * held before: blocking, it would let a wrong entry in and keep the right one out. It marks the cell instead.
 */
const canBlock = (criterion: ValidationCriterion): boolean => criterion.type !== "customFormula";

/** Validation rules of the grid with Excel's words beside them, by rule id, which stays when a table grows. */
export class Validations {
  private readonly grid: Grid;
  readonly words = new Map<string, ValidationWords>();

  constructor(grid: Grid) {
    this.grid = grid;
  }

  private ruleAt(cell: Cell): ValidationRule | undefined {
    return this.grid.model.getters.getValidationRuleForCell(positionOf(cell));
  }

  private put(area: Area, id: string, criterion: ValidationCriterion, isBlocking: boolean): void {
    this.grid.makeRoom(area);
    this.grid.do("ADD_DATA_VALIDATION_RULE", {
      sheetId: area.sheet,
      ranges: [this.grid.model.getters.getRangeDataFromZone(area.sheet, zoneOf(area))],
      rule: { id, criterion, isBlocking },
    });
  }

  /** Gives an area a rule; rules that stood there give way. */
  set(area: Area, criterion: ValidationCriterion): void {
    this.put(area, this.grid.model.uuidGenerator.smallUuid(), criterion, canBlock(criterion));
  }

  setBlocking(area: Area, blocking: boolean): void {
    const rule = this.ruleAt(area);
    if (rule === undefined) return;
    const wanted = blocking && canBlock(rule.criterion);
    if ((rule.isBlocking ?? false) !== wanted) this.put(area, rule.id, rule.criterion, wanted);
  }

  note(area: Area, member: string, value: unknown): void {
    const rule = this.ruleAt(area);
    if (rule === undefined)
      throw new ExcelError(
        "InvalidOperation",
        "The stand-in keeps an alert, prompt or treatment of blanks only after the rule was set.",
        `DataValidation.${member}`,
      );
    this.words.set(rule.id, { ...this.words.get(rule.id), [member]: value });
  }

  wordsAt(cell: Cell): ValidationWords | undefined {
    const rule = this.ruleAt(cell);
    return rule === undefined ? undefined : this.words.get(rule.id);
  }

  /** The alert of the rule over a cell, if it has one. */
  refusalAt(cell: Cell): RefusalWords | undefined {
    return this.wordsAt(cell)?.["errorAlert"] as RefusalWords | undefined;
  }

  /** A list of choices that covers a table's column down to its last row offers its new rows too, as in Excel. */
  stretchLists(table: Area, formerRows: number): void {
    const { getters } = this.grid.model;
    for (const sheetId of getters.getSheetIds()) {
      for (const { id, ranges, criterion, isBlocking } of [...getters.getDataValidationRules(sheetId)]) {
        const [source] = criterion.values;
        const wider =
          criterion.type === "isValueInRange" && source !== undefined
            ? stretchedRange(this.grid, source, table, formerRows, sheetId)
            : undefined;
        if (wider === undefined) continue;
        const list = sheetPrefix(getters.getSheetName(wider.sheet)) + areaText(wider, true);
        this.grid.do("ADD_DATA_VALIDATION_RULE", {
          sheetId,
          ranges: ranges.map(({ zone }) => getters.getRangeDataFromZone(sheetId, zone)),
          rule: {
            id,
            criterion: { ...criterion, values: [list] },
            ...(isBlocking === undefined ? {} : { isBlocking }),
          },
        });
        if (this.words.has(id))
          this.words.set(id, { ...this.words.get(id), rule: { list: { inCellDropDown: true, source: `=${list}` } } });
      }
    }
  }

  /** Takes away every rule that lies wholly within the area. */
  clear(area: Area): void {
    const { top, left, bottom, right } = zoneOf(area);
    for (const { id, ranges } of [...this.grid.model.getters.getDataValidationRules(area.sheet)]) {
      if (
        !ranges.every(
          ({ zone }) => zone.top >= top && zone.left >= left && zone.bottom <= bottom && zone.right <= right,
        )
      )
        continue;
      this.grid.do("REMOVE_DATA_VALIDATION_RULE", { sheetId: area.sheet, id });
      this.words.delete(id);
    }
  }
}
