import { wholeCents } from "../../core/money/share.ts";
import { convert } from "../../core/units/unit-conversion.ts";
import type { UnitSystem } from "../../core/units/unit-system.ts";
import type { Scalar } from "../../joblog/evaluate/cell-value.ts";
import { EvaluatedLog } from "../../joblog/evaluate/evaluated-log.ts";
import { calendarDay } from "../../joblog/evaluate/serial-date.ts";
import type { TableId } from "../../joblog/formula/log-types.ts";
import { jobLog } from "../../joblog/job-log.ts";
import { layOut } from "../../joblog/layout/lay-out.ts";
import { typedLog } from "../../joblog/layout/typed-cells.ts";
import { volume } from "../../joblog/model/units-of.ts";
import type { Job } from "../job/job-schema.ts";
import type { SheetRows } from "../job/log-in-state.ts";
import { contentOfJob } from "../job/read-job.ts";

/** What a total adds up; money in whole cents, so that no sum depends on its order. */
export const measures = [
  "cost",
  "claimCost",
  "loads",
  "baskets",
  "concentrate",
  "topUps",
  "pieces",
  "restored",
  "unpriced",
  "uncounted",
  "provisional",
] as const;

export type Measure = (typeof measures)[number];

/** One row of a log, by all that it is added up by; "" where that says nothing of it. */
export interface Line {
  readonly shop: string;
  readonly currency: string;
  readonly file: string;
  readonly month: string;
  readonly claim: string;
  readonly bath: string;
  readonly concentrate: string;
  readonly amounts: Readonly<Partial<Record<Measure, number>>>;
}

/** A row that a total leaves out, or a part of it. */
export interface LeftOut {
  readonly file: string;
  readonly sheet: string;
  /** As Excel counts it; "" for what is no row. */
  readonly row: string;
  readonly reason: string;
}

const cents = (amount: number): number => Math.sign(amount) * wholeCents(Math.abs(amount));

const monthOf = (value: Scalar | undefined): string => {
  if (typeof value !== "number") return "no date";
  const { year, month } = calendarDay(value);
  return `${String(year)}-${String(month).padStart(2, "0")}`;
};

const textOf = (value: Scalar | undefined, otherwise = ""): string =>
  typeof value === "string" || typeof value === "number" ? String(value).trim() || otherwise : otherwise;

/** Concentrate is added up in liters, as shops measure in different units. */
function litersOf(amount: number, system: UnitSystem): number {
  const conversion = convert(amount, volume[system], "L");
  if (conversion.converted !== "value") throw new RangeError(`${volume[system]} is no volume.`);
  return conversion.value;
}

/** The rows of a log that totals are made of, with its figures worked out anew rather than taken from the file. */
export class LogLines {
  readonly lines: Line[] = [];
  readonly leftOut: LeftOut[] = [];
  private readonly log: EvaluatedLog;
  private readonly same: Pick<Line, "shop" | "currency" | "file">;

  constructor(
    file: string,
    private readonly job: Job,
    private readonly sheetRows: SheetRows,
  ) {
    const plan = layOut(jobLog, { system: job.system }, contentOfJob(job));
    this.log = new EvaluatedLog(jobLog, typedLog(plan), [], "everything");
    this.same = {
      file,
      shop: textOf(this.log.named("shop"), "no shop"),
      currency: textOf(this.log.named("currency"), "no currency"),
    };
    this.additions();
    this.costLines();
    this.loads();
    this.items();
    this.claims();
  }

  private rows(table: TableId): readonly number[] {
    return (this.job.rows?.[table] ?? []).map((_, row) => row);
  }

  private at(table: TableId, column: string, row: number): Scalar | undefined {
    return this.log.cell(table, column, row);
  }

  private push(line: Partial<Line> & Pick<Line, "amounts">): void {
    this.lines.push({ ...this.same, month: "", claim: "", bath: "", concentrate: "", ...line });
  }

  private leave(table: TableId, row: number, reason: string): void {
    const sheet = jobLog.sheets.find(({ tables }) => tables.some(({ id }) => id === table))?.name ?? "";
    const at = this.sheetRows.get(table)?.[row];
    this.leftOut.push({ file: this.same.file, sheet, row: at === undefined ? "" : String(at), reason });
  }

  private priced(table: TableId, row: number, cost: Scalar | undefined): Partial<Record<Measure, number>> {
    if (typeof cost === "number") return { cost: cents(cost) };
    this.leave(table, row, "It has no cost, so no total holds one for it.");
    return { unpriced: 1 };
  }

  private additions(): void {
    for (const row of this.rows("additions")) {
      const isConcentrate = this.at("additions", "kind", row) === "concentrate";
      const amount = this.at("additions", "amount", row);
      if (isConcentrate && typeof amount !== "number")
        this.leave("additions", row, "It has no amount, so no concentrate is counted.");
      this.push({
        month: monthOf(this.at("additions", "when", row)),
        bath: textOf(this.at("additions", "bath", row), "no bath"),
        concentrate: isConcentrate ? textOf(this.at("additions", "concentrate", row), "no concentrate") : "",
        amounts: {
          ...this.priced("additions", row, this.at("additions", "cost", row)),
          ...(isConcentrate && typeof amount === "number" ? { concentrate: litersOf(amount, this.job.system) } : {}),
          ...(isConcentrate && this.at("additions", "purpose", row) === "top-up" ? { topUps: 1 } : {}),
        },
      });
    }
  }

  private costLines(): void {
    for (const row of this.rows("costLines"))
      this.push({
        month: monthOf(this.at("costLines", "date", row)),
        bath: textOf(this.at("costLines", "bath", row), "no bath"),
        amounts: this.priced("costLines", row, this.at("costLines", "amount", row)),
      });
  }

  private loads(): void {
    for (const row of this.rows("loads")) {
      const baskets = this.at("loads", "baskets", row);
      if (typeof baskets !== "number") this.leave("loads", row, "It has no number of baskets, so none are counted.");
      this.push({
        month: monthOf(this.at("loads", "when", row)),
        claim: textOf(this.at("loads", "claim", row), "no claim"),
        bath: textOf(this.at("loads", "bath", row), "no bath"),
        amounts: { loads: 1, ...(typeof baskets === "number" ? { baskets } : { uncounted: 1 }) },
      });
    }
  }

  private items(): void {
    for (const row of this.rows("items")) {
      const quantity = this.at("items", "quantity", row);
      if (typeof quantity !== "number") this.leave("items", row, "It has no quantity, so no pieces are counted.");
      const restored = this.at("items", "outcome", row) === "restored";
      this.push({
        claim: textOf(this.at("items", "claim", row), "no claim"),
        amounts:
          typeof quantity === "number"
            ? { pieces: quantity, ...(restored ? { restored: quantity } : {}) }
            : { uncounted: 1 },
      });
    }
  }

  private claims(): void {
    for (const row of this.rows("claims")) {
      const cost = this.at("claims", "cost", row);
      const provisional = this.at("claims", "costState", row) === "provisional";
      if (provisional)
        this.leave("claims", row, "What this claim pays is provisional: its statement says which row keeps it so.");
      this.push({
        claim: textOf(this.at("claims", "claim", row), "no claim"),
        amounts: {
          ...(typeof cost === "number" ? { claimCost: cents(cost) } : {}),
          ...(provisional ? { provisional: 1 } : {}),
        },
      });
    }
  }
}
