/** What someone may have who must not learn of other claims: one claim's statement, its pieces and loads, its baths. */
import type { UnitSystem } from "../../core/units/unit-system.ts";
import { asShown } from "../../joblog/evaluate/cell-value.ts";
import { EvaluatedLog } from "../../joblog/evaluate/evaluated-log.ts";
import type { ColumnId } from "../../joblog/formula/log-names.ts";
import type { TableId } from "../../joblog/formula/log-types.ts";
import { jobLog } from "../../joblog/job-log.ts";
import { cellFormat } from "../../joblog/model/cell-formats.ts";
import type { Cells, ColumnDefinition, RowValue, TableDefinition } from "../../joblog/model/definition.ts";
import { headerOf } from "../../joblog/model/headers.ts";
import type { AnyRow, LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import type { SheetPlan } from "../../joblog/model/plan.ts";
import { findTable } from "../../joblog/model/references.ts";
import { isSameText } from "../../joblog/model/same-text.ts";
import { claimStatementSheet } from "../../joblog/sheets/statement/statement-sheet.ts";
import { leftOut, othersNamed } from "./others-words.ts";
import { type Paper, type PaperColumn, paperSheet, type PaperTable } from "./paper.ts";

const itemColumns: readonly ColumnId<"items">[] = [
  "id",
  "room",
  "quantity",
  "item",
  "material",
  "condition",
  "standing",
  "reason",
  "reasonText",
  "replacementValue",
  "photo",
  "note",
];

const loadColumns: readonly ColumnId<"loads">[] = [
  "id",
  "bath",
  "when",
  "baskets",
  "soil",
  "minutes",
  "rework",
  "counted",
  "weighted",
  "initials",
  "note",
];

const readingColumns: readonly ColumnId<"readings">[] = [
  "id",
  "bath",
  "when",
  "purpose",
  "ph",
  "temperature",
  "meter",
  "phAtBaseline",
  "verdict",
  "conductivity",
  "initials",
];

const additionColumns: readonly ColumnId<"additions">[] = [
  "id",
  "bath",
  "when",
  "kind",
  "purpose",
  "amount",
  "phBefore",
  "phAfter",
  "recovery",
  "account",
];

const isWords = ({ type }: ColumnDefinition): boolean => type === "text" || type === "choice" || type === "yes or no";

const others = "other claims";

/** What is noted of a bath may be about anybody's contents. */
const isNoteOfBath = (table: TableId, column: string): boolean => table === "statementTopUps" && column === "note";

class ClaimPapers {
  private readonly worked: EvaluatedLog;
  private readonly namesOthers: (text: string) => boolean;
  private readonly log: LogSnapshot;

  constructor(
    log: LogSnapshot,
    private readonly claim: string,
    private readonly system: UnitSystem,
  ) {
    this.log = { fields: { ...log.fields, statementClaim: claim }, rows: log.rows };
    this.worked = new EvaluatedLog(jobLog, this.log, [], "everything");
    this.namesOthers = othersNamed(log, claim);
  }

  private shown(value: RowValue | undefined): RowValue | undefined {
    return typeof value === "string" && this.namesOthers(value) ? leftOut : value;
  }

  private cell(table: TableId, column: string, position: number): RowValue | undefined {
    return asShown(this.worked.cell(table, column, position));
  }

  private column(table: TableDefinition, id: string): PaperColumn {
    const column = table.columns.find((one) => one.id === id);
    if (column === undefined) throw new RangeError(`The table "${table.id}" has no column "${id}".`);
    return {
      header: headerOf(column, this.system),
      width: column.width,
      numberFormat: cellFormat(column, "computed"),
      isWords: isWords(column),
    };
  }

  private table(id: TableId, caption: string, columns: readonly string[], positions: readonly number[]): PaperTable {
    const table = findTable(jobLog, id);
    return {
      caption,
      columns: columns.map((column) => this.column(table, column)),
      rows: positions.map((position) => columns.map((column) => this.shown(this.cell(id, column, position)))),
    };
  }

  /** Positions of a table's rows for which `isWanted`. */
  private positions(id: TableId, isWanted: (cells: Cells) => boolean): readonly number[] {
    const rows: readonly AnyRow[] = this.log.rows[id];
    return rows.filter(({ cells }) => isWanted(cells)).map(({ position }) => position);
  }

  private readonly isIts = (cells: Cells): boolean => isSameText(String(cells["claim"] ?? ""), this.claim);

  statement(): Paper {
    const { fields, tables, name, title, orientation, tabColor, caution = "" } = claimStatementSheet;
    return {
      id: "statement",
      name,
      title,
      words: [`Copy of claim ${this.claim} alone: figures without formulas, as they stood when it was made.`, caution],
      lines: fields.flatMap((field) => {
        const value = this.shown(asShown(this.worked.named(field.id)));
        if (value === undefined) return [];
        return [{ label: headerOf(field, this.system), value, numberFormat: cellFormat(field, "computed") }];
      }),
      tables: tables.flatMap((table) => {
        const columns = table.columns.flatMap((one) =>
          (one.role === "computed" && one.helper === true) || isNoteOfBath(table.id, one.id) ? [] : [one.id],
        );
        const [first = ""] = columns;
        const filled = Array.from({ length: table.emptyRows }, (_, position) => position).filter(
          (position) => this.cell(table.id, first, position) !== undefined,
        );
        return filled.length === 0 ? [] : [this.table(table.id, table.caption, columns, filled)];
      }),
      orientation,
      tabColor,
    };
  }

  private paper(
    id: TableId,
    name: string,
    words: string,
    columns: readonly string[],
    positions: readonly number[],
  ): Paper {
    const sheet = jobLog.sheets.find(({ tables }) => tables.some((table) => table.id === id));
    return {
      id,
      name,
      title: `${name} · claim ${this.claim}`,
      words: [words],
      lines: [],
      tables: [this.table(id, name, columns, positions)],
      orientation: "landscape",
      tabColor: sheet?.tabColor ?? claimStatementSheet.tabColor,
    };
  }

  /** The claim's share of each of its baths and, in one line, what the others bear together. */
  private shares(): Paper {
    const table = findTable(jobLog, "shares");
    const columns = ["bath", "claim", "basis", "unitsUsed", "allUnits", "weight", "pool", "share"].map((id) =>
      this.column(table, id),
    );
    const rows = this.positions("shares", this.isIts).flatMap((position) => {
      const at = (id: ColumnId<"shares">): RowValue | undefined => this.shown(this.cell("shares", id, position));
      const [bath, basis, units, all, part, pool, share] = [
        at("bath"),
        at("basis"),
        at("unitsUsed"),
        at("allUnits"),
        at("weight"),
        at("pool"),
        at("share"),
      ];
      const rest = (whole: RowValue | undefined, own: RowValue | undefined, digits: number): number | undefined =>
        typeof whole === "number" && typeof own === "number" ? Number((whole - own).toFixed(digits)) : undefined;
      const its = [bath, this.claim, basis, units, all, part, pool, share];
      const unitsOfRest = rest(all, units, 6);
      if (unitsOfRest === undefined || unitsOfRest === 0) return [its];
      return [its, [bath, others, basis, unitsOfRest, all, rest(1, part, 9), pool, rest(pool, share, 2)]];
    });
    return {
      id: "shares",
      name: "Shares",
      title: `Shares · claim ${this.claim}`,
      words: ["What the claim pays of each of its baths, and what all others in that bath pay together."],
      lines: [],
      tables: [{ caption: "Shares", columns, rows }],
      orientation: "landscape",
      tabColor: claimStatementSheet.tabColor,
    };
  }

  all(): readonly Paper[] {
    const loads = this.positions("loads", this.isIts);
    const shares = this.positions("shares", this.isIts);
    const baths = [
      ...loads.map((position) => this.cell("loads", "bath", position)),
      ...shares.map((position) => this.cell("shares", "bath", position)),
    ].flatMap((bath) => (bath === undefined ? [] : [String(bath)]));
    const inItsBath = (cells: Cells): boolean => baths.some((bath) => isSameText(String(cells["bath"] ?? ""), bath));
    return [
      this.statement(),
      this.paper(
        "items",
        "Items",
        "Every piece of the claim in the log.",
        itemColumns,
        this.positions("items", this.isIts),
      ),
      this.paper(
        "loads",
        "Loads",
        "Loads of the claim. Those of other claims in the same baths are not listed; the sheet Shares counts them together.",
        loadColumns,
        loads,
      ),
      this.shares(),
      this.paper(
        "readings",
        "Readings",
        "All readings of the baths that the claim was in, without notes.",
        readingColumns,
        this.positions("readings", inItsBath),
      ),
      this.paper(
        "additions",
        "Additions",
        "All that went into the baths that the claim was in, without notes.",
        additionColumns,
        this.positions("additions", inItsBath),
      ),
    ];
  }
}

/** The sheets of a copy of one claim. No word of another claim's rows is on them; a text that names one is left out. */
export function claimCopy(log: LogSnapshot, claim: string, system: UnitSystem): readonly SheetPlan[] {
  return new ClaimPapers(log, claim, system).all().map(paperSheet);
}
