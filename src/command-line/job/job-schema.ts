import * as z from "zod";

import { type UnitSystem, unitSystems } from "../../core/units/unit-system.ts";
import { jobLog } from "../../joblog/job-log.ts";
import type { FieldDefinition, InputColumn, TableDefinition } from "../../joblog/model/definition.ts";
import { entrySchema } from "./cell-schema.ts";

const isInput = (column: TableDefinition["columns"][number]): column is InputColumn => column.role === "input";

export const inputsOf = ({ columns }: TableDefinition): readonly InputColumn[] =>
  columns.filter(isInput).filter(({ ofCells }) => ofCells !== true);

/** The tables into which something is typed. */
export const typedTables: readonly TableDefinition[] = jobLog.sheets
  .flatMap((sheet) => sheet.tables)
  .filter((table) => inputsOf(table).length > 0);

/** The named cells into which something is typed. */
export const typedFields: readonly FieldDefinition[] = jobLog.sheets
  .flatMap((sheet) => sheet.fields)
  .filter((field) => field.formula === undefined && field.fixed !== true);

/** More rows than any log has; Excel itself would not work with so many. */
const mostRows = 50_000;

const rowSchema = (table: TableDefinition) =>
  z.strictObject(
    Object.fromEntries(inputsOf(table).map((column) => [column.id, entrySchema(column).optional()])),
    "no row in braces.",
  );

const rowsSchema = (table: TableDefinition) =>
  z
    .array(rowSchema(table), "no list of rows.")
    .max(mostRows, `more than ${mostRows.toLocaleString("en-US")} rows.`)
    .meta({ title: table.caption })
    .optional();

/** A cleared cell of those that begin with something is said by null. */
const fieldSchema = (field: FieldDefinition) =>
  field.initial === undefined ? entrySchema(field).optional() : entrySchema(field).nullable().optional();

/**
 * A job as JSON: what is typed into a log, from the log's description. Figures are in the units of the job's system;
 * computed cells never appear.
 */
export function jobSchema() {
  return z
    .strictObject(
      {
        log: z
          .literal(
            jobLog.version,
            `not version ${String(jobLog.version)} of the log, which alone this Bathsheet writes.`,
          )
          .meta({ title: "Version of the log" }),
        system: z
          .enum(unitSystems, { error: `none of ${unitSystems.map((one) => `"${one}"`).join(", ")}.` })
          .meta({ title: "Units", description: "The units of every figure of the job; fixed once the log is made." }),
        fields: z
          .strictObject(
            Object.fromEntries(typedFields.map((field) => [field.id, fieldSchema(field)])),
            "no named cells in braces.",
          )
          .optional()
          .meta({ title: "Named cells" }),
        rows: z
          .strictObject(
            Object.fromEntries(typedTables.map((table) => [table.id, rowsSchema(table)])),
            "no tables in braces.",
          )
          .optional()
          .meta({ title: "Rows by table" }),
      },
      "no job in braces.",
    )
    .meta({ title: "A job for a Bathsheet log" });
}

type JobValue = string | number | boolean;

/** What `jobSchema` reads. */
export interface Job {
  readonly log: number;
  readonly system: UnitSystem;
  readonly fields?: Readonly<Record<string, JobValue | null | undefined>> | undefined;
  readonly rows?:
    Readonly<Record<string, readonly Readonly<Record<string, JobValue | undefined>>[] | undefined>> | undefined;
}

/** The same as a JSON Schema, for editors and other programs. */
export function jobJsonSchema(): object {
  return z.toJSONSchema(jobSchema(), { io: "input", target: "draft-2020-12" });
}
