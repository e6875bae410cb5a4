import type { Column, Expression } from "./expression.ts";
import type { LogFields, LogTables, TableId } from "./log-types.ts";

/** The columns of a table, by id. */
export type ColumnId<Table extends TableId> = keyof LogTables[Table] & string;

export type FieldId = keyof LogFields;

/** This row's cells, by column id. */
export type Row<Table extends TableId> = {
  readonly [Id in ColumnId<Table>]: Expression<LogTables[Table][Id] & string>;
};

/** The columns of a table as wholes, by id. */
export type Columns<Table extends TableId> = {
  readonly [Id in ColumnId<Table>]: Column<Table, LogTables[Table][Id] & string>;
};

/** All that a formula can name: tables by id, and the named cells. */
export type Log = { readonly [Table in TableId]: Columns<Table> } & {
  readonly named: { readonly [Id in FieldId]: Expression<LogFields[Id] & string> };
};
