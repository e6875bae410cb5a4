/** Writes docs/row-schema.md: the rows of the roll-up for other databases, from the description of their tables. */
import { writeFile } from "node:fs/promises";
import path from "node:path";

import { format } from "prettier";

import { figures } from "../src/command-line/rollup/figures.ts";
import {
  type ColumnType,
  partitions,
  type RowTableId,
  rowTableIds,
  rowTables,
} from "../src/command-line/rollup/tables.ts";
import { projectFolder } from "./project.ts";

export const rowSchemaFile = path.join(projectFolder, "docs", "row-schema.md");

interface Column {
  readonly name: string;
  readonly type: ColumnType;
  readonly help: string;
}

/** As Parquet stores it and as Trino and Spark call it. */
const names: Readonly<
  Record<ColumnType, { readonly parquet: string; readonly trino: string; readonly spark: string }>
> = {
  text: { parquet: "BYTE_ARRAY, UTF8", trino: "VARCHAR", spark: "STRING" },
  "whole number": { parquet: "INT32", trino: "INTEGER", spark: "INT" },
  cents: { parquet: "INT64", trino: "BIGINT", spark: "BIGINT" },
  number: { parquet: "DOUBLE", trino: "DOUBLE", spark: "DOUBLE" },
  "yes or no": { parquet: "BOOLEAN", trino: "BOOLEAN", spark: "BOOLEAN" },
  "wall time": { parquet: "INT64, TIMESTAMP in ms, not UTC", trino: "TIMESTAMP(3)", spark: "TIMESTAMP_NTZ" },
  UTC: { parquet: "INT64, TIMESTAMP in ms, UTC", trino: "TIMESTAMP(3)", spark: "TIMESTAMP" },
};

function columnsOf(table: RowTableId): readonly Column[] {
  const columns: Readonly<Record<string, Omit<Column, "name">>> = rowTables[table].columns;
  return Object.entries(columns).map(([name, { type, help }]) => ({ name, type, help }));
}

const isPartition = ({ name }: Column): boolean => partitions.some((one) => one === name);

function tableText(table: RowTableId): string {
  const lines = columnsOf(table).map(
    (column) =>
      `| \`${column.name}\` | ${isPartition(column) ? "a folder" : names[column.type].parquet} | ${column.help.replaceAll("|", "\\|")} |`,
  );
  return [
    `### \`${table}\``,
    "",
    rowTables[table].purpose,
    "",
    "| column | stored as | what |",
    "| - | - | - |",
    ...lines,
  ].join("\n");
}

/** Folders come last, as Trino wants them. */
function declared(table: RowTableId, dialect: "trino" | "spark"): string {
  const columns = [...columnsOf(table)].sort((one, other) => Number(isPartition(one)) - Number(isPartition(other)));
  const quote = dialect === "trino" ? '"' : "`";
  return columns.map(({ name, type }) => `  ${quote}${name}${quote} ${names[type][dialect]}`).join(",\n");
}

const trino = (table: RowTableId): string =>
  `CREATE TABLE hive.bathsheet.${table} (\n${declared(table, "trino")}\n)\nWITH (format = 'PARQUET', external_location = 's3://bucket/rows/${table}', partitioned_by = ARRAY['shop', 'month']);\nCALL hive.system.sync_partition_metadata('bathsheet', '${table}', 'FULL');`;

const spark = (table: RowTableId): string =>
  `CREATE TABLE bathsheet.${table} (\n${declared(table, "spark")}\n)\nUSING PARQUET\nPARTITIONED BY (shop, month)\nLOCATION 's3://bucket/rows/${table}';\nMSCK REPAIR TABLE bathsheet.${table};`;

const duckDb = (table: RowTableId): string =>
  `CREATE VIEW ${table} AS SELECT * FROM read_parquet('rows/${table}/*/*/*.parquet', hive_partitioning = true, hive_types = {'shop': VARCHAR, 'month': VARCHAR});`;

const fenced = (language: string, text: string): string => `\`\`\`${language}\n${text}\n\`\`\``;

const figureLines = figures.map(({ query, name }) => `| \`${query}.sql\` | ${name} |`);

const page = (): string => `# Rows of a roll-up for other databases

<!-- Written by npm run describe-rows from src/command-line/rollup/tables.ts. -->

\`bathsheet rollup FOLDER --parquet rows\` writes the rows behind the figures as Parquet files, a folder for each table, shop
and month: \`rows/loads/shop=Small Works/month=2027-03/rows.parquet\`; with hundreds of logs rows-2.parquet and so on may stand
beside it. The same files and the same queries serve DuckDB on one
computer and Spark or Trino for a group. They are run here in DuckDB alone; for Spark and Trino they keep to what all three
share, and nobody has tried them there yet.

- Money is whole cents (INT64), so no sum depends on its order. Amounts in different currencies do not add up: group by
  \`currency\`.
- \`at_local\` is what the shop's clock showed. A log holds no time zone: with \`--zone\` or \`--zones\` the zone stands in
  \`zone\` and the moment in UTC in \`at_utc\`; without, both are blank. Of an hour that comes twice in autumn the first
  counts (RFC 5545, 3.3.5).
- Volumes are liters, whatever a shop's units. What is blank in a log is null, never 0.
- In the names of folders, characters that Hive escapes, and those that a disk cannot hold, are written as \`%2F\`.
- Each row keeps its file, sheet and row in Excel.

## Tables

${rowTableIds.map(tableText).join("\n\n")}

## Queries

The package brings them in \`bin/figures\`, the repository in \`src/command-line/rollup/figures\`. Two are views that others
name, to be made in this order: \`amounts\` (one line for each row that a total adds up) and \`jobs\` (each log as one job).

| query | gives |
| - | - |
| \`amounts.sql\` | the view \`amounts\` |
| \`jobs.sql\` | the view \`jobs\` |
${figureLines.join("\n")}
| \`quartiles.sql\` | quartiles behind \`bathsheet estimate\` |

Fractions are added up in an order that a database may choose, so their last digits can differ; cents and counts cannot.

### DuckDB

${fenced("sql", rowTableIds.map(duckDb).join("\n"))}

Then \`CREATE VIEW amounts AS\` with the text of \`amounts.sql\`, \`CREATE VIEW jobs AS\` with that of \`jobs.sql\`, and any query.

### Spark

Take the folders' names as text: \`spark.sql.sources.partitionColumnTypeInference.enabled = false\`.

${fenced("sql", rowTableIds.map(spark).join("\n\n"))}

### Trino

With the Hive connector, whose times have no zone; \`at_utc\` is the time in UTC.

${fenced("sql", rowTableIds.map(trino).join("\n\n"))}
`;

export const rowSchemaText = (): Promise<string> => format(page(), { parser: "markdown", printWidth: 120 });

if (process.argv[1] === import.meta.filename) await writeFile(rowSchemaFile, await rowSchemaText());
