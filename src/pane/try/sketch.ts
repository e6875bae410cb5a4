/** What-if without touching the log: a few fields, what they come to, and the formula that says the same in a cell. */
import type { Finding } from "../../advice/finding.ts";
import type { UnitSystem } from "../../core/units/unit-system.ts";
import type { LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import type { Draft } from "../record/entry-form.ts";

export interface SketchField {
  readonly key: string;
  readonly label: string;
  readonly hint?: string;
  readonly choices?: readonly string[];
}

/** The workbook's log, if it has one, lends its figures as proposals. */
export interface SketchContext {
  readonly log: LogSnapshot | undefined;
  readonly system: UnitSystem;
  readonly bath: string | undefined;
}

export interface SketchTable {
  readonly headers: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

export interface SketchAnswer {
  readonly findings: readonly Finding[];
  readonly table?: SketchTable;
  /** Absent until the fields come to something. */
  readonly formula?: string;
}

export interface Sketch {
  readonly id: string;
  readonly title: string;
  readonly purpose: string;
  /** The form whose cautions hold for what is poured by this; none where nothing is. */
  readonly step?: string;
  readonly fields: (context: SketchContext) => readonly SketchField[];
  readonly proposals: (context: SketchContext) => Draft;
  readonly work: (values: Draft, context: SketchContext) => SketchAnswer;
}
