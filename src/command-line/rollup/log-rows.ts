import { wholeCents } from "../../core/money/share.ts";
import { convert } from "../../core/units/unit-conversion.ts";
import type { Scalar } from "../../joblog/evaluate/cell-value.ts";
import { EvaluatedLog } from "../../joblog/evaluate/evaluated-log.ts";
import type { LogTables, TableId } from "../../joblog/formula/log-types.ts";
import { jobLog } from "../../joblog/job-log.ts";
import { typedContent } from "../../joblog/layout/typed-content.ts";
import { volume } from "../../joblog/model/units-of.ts";
import { changeOut } from "../../joblog/model/words.ts";
import type { Job } from "../job/job-schema.ts";
import type { SheetRows } from "../job/log-in-book.ts";
import { contentOfJob } from "../job/read-job.ts";
import type { TypedRow, TypedRows } from "./tables.ts";
import { inUtc, monthOf, wallTime } from "./wall-time.ts";

/** A row that a total leaves out, or a part of it. */
export interface LeftOut {
  readonly file: string;
  readonly sheet: string;
  /** As Excel counts it; undefined for what is no row. */
  readonly row: number | undefined;
  readonly reason: string;
}

/** The time zone of a shop's clock, where it was given. */
export type ZoneOf = (shop: string) => string | undefined;

const numberIn = (value: Scalar | undefined): number | undefined => (typeof value === "number" ? value : undefined);

const textIn = (value: Scalar | undefined): string | undefined =>
  typeof value === "string" || typeof value === "number" ? String(value).trim() || undefined : undefined;

function centsIn(value: Scalar | undefined): number | undefined {
  const amount = numberIn(value);
  return amount === undefined ? undefined : Math.sign(amount) * wholeCents(Math.abs(amount)) + 0;
}

const sheetNames = new Map(jobLog.sheets.flatMap(({ name, tables }) => tables.map(({ id }) => [id, name] as const)));

/** The typed rows of a log, with its figures worked out anew rather than taken from the file. */
export class LogRows {
  readonly leftOut: LeftOut[] = [];
  readonly rows: TypedRows;
  private readonly log: EvaluatedLog;
  private readonly shop: string;
  private readonly currency: string;
  private readonly zone: string | undefined;
  private readonly spellings = new Map<string, string>();

  constructor(
    private readonly file: string,
    private readonly job: Job,
    private readonly sheetRows: SheetRows,
    zoneOf: ZoneOf,
  ) {
    this.log = new EvaluatedLog(jobLog, typedContent(job.system, contentOfJob(job)), [], "everything");
    this.shop = textIn(this.log.named("shop")) ?? "no shop";
    this.currency = textIn(this.log.named("currency")) ?? "no currency";
    this.zone = zoneOf(this.shop);
    this.rows = {
      logs: [this.ofLog()],
      baths: this.lines("baths").map((line) => this.bath(line)),
      additions: this.lines("additions").map((line) => this.addition(line)),
      costs: this.lines("costLines").map((line) => this.cost(line)),
      loads: this.lines("loads").map((line) => this.load(line)),
      items: this.lines("items").map((line) => this.item(line)),
      claims: this.lines("claims").map((line) => this.claim(line)),
    };
  }

  private lines(table: TableId): readonly number[] {
    return (this.job.rows?.[table] ?? []).map((_, line) => line);
  }

  private at<Table extends TableId>(table: Table, column: keyof LogTables[Table] & string, line: number) {
    return this.log.cell(table, column, line);
  }

  private common(sheet: string, row: number | undefined, moment?: Scalar) {
    const wall = wallTime(moment);
    return {
      shop: this.shop,
      month: monthOf(wall),
      file: this.file,
      sheet,
      row,
      currency: this.currency,
      at_local: wall,
      at_utc: wall === undefined || this.zone === undefined ? undefined : inUtc(wall, this.zone),
      zone: this.zone,
    };
  }

  private place(table: TableId, line: number, moment?: Scalar) {
    return this.common(sheetNames.get(table) ?? "", this.sheetRows.get(table)?.[line], moment);
  }

  private leave(table: TableId, line: number, reason: string): void {
    const { sheet, row } = this.place(table, line);
    this.leftOut.push({ file: this.file, sheet, row, reason });
  }

  /** Names are compared without regard to case, as the log's formulas compare them; its own list has the spelling. */
  private spelled(value: Scalar | undefined, table: "baths" | "claims" | "concentrates"): string | undefined {
    const name = textIn(value);
    if (name === undefined) return undefined;
    const key = `${table}\n${name.toLowerCase()}`;
    const known = this.spellings.get(key);
    if (known !== undefined) return known;
    const column = { baths: "bath", claims: "claim", concentrates: "concentrate" }[table];
    const listed = this.lines(table).map((line) => textIn(this.log.cell(table, column, line)));
    const spelling = listed.find((one) => one?.toLowerCase() === name.toLowerCase()) ?? name;
    this.spellings.set(key, spelling);
    return spelling;
  }

  /** Shops measure in different units. */
  private liters(value: Scalar | undefined): number | undefined {
    const amount = numberIn(value);
    if (amount === undefined) return undefined;
    const conversion = convert(amount, volume[this.job.system], "L");
    if (conversion.converted !== "value") throw new RangeError(`${volume[this.job.system]} is no volume.`);
    return conversion.value;
  }

  private costOf(table: TableId, line: number, value: Scalar | undefined): number | undefined {
    const cost = centsIn(value);
    if (cost === undefined) this.leave(table, line, "It has no cost, so no total holds one for it.");
    return cost;
  }

  private ofLog(): TypedRow<"logs"> {
    const moments = this.lines("loads")
      .map((line) => numberIn(this.at("loads", "when", line)))
      .filter((when) => when !== undefined);
    const last = moments.reduce<number | undefined>((most, one) => Math.max(most ?? one, one), undefined);
    const weight = (field: string): number | undefined => numberIn(this.log.named(field));
    return {
      ...this.common("", undefined, last),
      system: this.job.system,
      weight_light: weight("weightLight"),
      weight_medium: weight("weightMedium"),
      weight_heavy: weight("weightHeavy"),
    };
  }

  private bath(line: number): TypedRow<"baths"> {
    const fill = numberIn(this.at("baths", "filledVolume", line));
    const dose = numberIn(this.at("baths", "openingDose", line));
    const sign = this.at("baths", "changeOut", line);
    if (fill === undefined || dose === undefined)
      this.leave("baths", line, "What it was filled with is not known, so no water is counted for its fill.");
    return {
      ...this.place("baths", line, this.at("baths", "opened", line)),
      bath: this.spelled(this.at("baths", "bath", line), "baths"),
      concentrate: this.spelled(this.at("baths", "concentrate", line), "concentrates"),
      is_closed: numberIn(this.at("baths", "closed", line)) !== undefined,
      fill_water_liters: fill === undefined || dose === undefined ? undefined : this.liters(Math.max(0, fill - dose)),
      top_ups_grow: dose === undefined || typeof sign !== "string" ? undefined : sign === changeOut.grow,
    };
  }

  private addition(line: number): TypedRow<"additions"> {
    const kind = textIn(this.at("additions", "kind", line));
    const liters = this.liters(this.at("additions", "amount", line));
    const isConcentrate = kind === "concentrate";
    if (liters === undefined) this.leave("additions", line, "It has no amount, so none is counted.");
    return {
      ...this.place("additions", line, this.at("additions", "when", line)),
      bath: this.spelled(this.at("additions", "bath", line), "baths"),
      concentrate: isConcentrate ? this.spelled(this.at("additions", "concentrate", line), "concentrates") : undefined,
      kind,
      purpose: textIn(this.at("additions", "purpose", line)),
      liters,
      cost_cents: this.costOf("additions", line, this.at("additions", "cost", line)),
    };
  }

  private cost(line: number): TypedRow<"costs"> {
    return {
      ...this.place("costLines", line, this.at("costLines", "date", line)),
      bath: this.spelled(this.at("costLines", "bath", line), "baths"),
      kind: textIn(this.at("costLines", "kind", line)) ?? "other",
      cost_cents: this.costOf("costLines", line, this.at("costLines", "amount", line)),
    };
  }

  private load(line: number): TypedRow<"loads"> {
    const baskets = numberIn(this.at("loads", "baskets", line));
    if (baskets === undefined) this.leave("loads", line, "It has no number of baskets, so none are counted.");
    return {
      ...this.place("loads", line, this.at("loads", "when", line)),
      bath: this.spelled(this.at("loads", "bath", line), "baths"),
      claim: this.spelled(this.at("loads", "claim", line), "claims"),
      soil: textIn(this.at("loads", "soil", line)),
      baskets,
      minutes: numberIn(this.at("loads", "minutes", line)),
    };
  }

  private item(line: number): TypedRow<"items"> {
    const pieces = numberIn(this.at("items", "quantity", line));
    if (pieces === undefined) this.leave("items", line, "It has no quantity, so no pieces are counted.");
    return {
      ...this.place("items", line),
      claim: this.spelled(this.at("items", "claim", line), "claims"),
      outcome: textIn(this.at("items", "standing", line)),
      pieces,
    };
  }

  private claim(line: number): TypedRow<"claims"> {
    const isProvisional = this.at("claims", "costState", line) === "provisional";
    if (isProvisional)
      this.leave("claims", line, "What this claim pays is provisional: its statement says which row keeps it so.");
    return {
      ...this.place("claims", line, this.at("claims", "arrived", line)),
      claim: this.spelled(this.at("claims", "claim", line), "claims"),
      cost_cents: centsIn(this.at("claims", "cost", line)),
      is_provisional: isProvisional,
    };
  }
}
