import { createHash } from "node:crypto";

import type { PlacedFile, Surroundings } from "../command.ts";
import { readLogFile } from "../commands/read.ts";
import { CommandFailure } from "../failure.ts";
import { type LeftOut, LogRows, type ZoneOf } from "./log-rows.ts";
import { RowFiles } from "./parquet.ts";
import type { TypedRow, TypedRows } from "./tables.ts";

/** A shop writes a log a week; a group of sixty shops writes so many in a year. */
const mostFiles = 3000;

/** Rows that stand in memory before they are packed: those of some fifty busy logs, about 10 MB. */
const usualRowsAtOnce = 10_000;

/** Excel's own mark of a workbook that is open. */
const isOpenMark = (file: string): boolean => /(?:^|[\\/])~\$/.test(file);

/** What was read of a folder, and what was not. */
export interface Gathered {
  /** The rows, packed. */
  readonly files: readonly PlacedFile[];
  readonly leftOut: readonly LeftOut[];
  readonly read: number;
  readonly refused: number;
}

type GrowingRows = { readonly [Table in keyof TypedRows]: TypedRow<Table>[] };

const noRows = (): GrowingRows => ({
  logs: [],
  baths: [],
  additions: [],
  costs: [],
  loads: [],
  items: [],
  claims: [],
});

function addTo(all: GrowingRows, rows: TypedRows): void {
  all.logs.push(...rows.logs);
  all.baths.push(...rows.baths);
  all.additions.push(...rows.additions);
  all.costs.push(...rows.costs);
  all.loads.push(...rows.loads);
  all.items.push(...rows.items);
  all.claims.push(...rows.claims);
}

const countOf = (rows: TypedRows): number => Object.values(rows).reduce((sum, table) => sum + table.length, 0);

class Gathering {
  private rows = noRows();
  private readonly packed = new RowFiles();
  readonly leftOut: LeftOut[] = [];
  refused = 0;
  private readonly seen = new Map<string, string>();

  constructor(
    private readonly zoneOf: ZoneOf,
    private readonly rowsAtOnce: number,
  ) {}

  private refuse(file: string, reason: string): void {
    this.refused += 1;
    this.leftOut.push({ file, sheet: "", row: undefined, reason });
  }

  /** Takes a log's rows; its cells are forgotten then. */
  add(file: string, bytes: Uint8Array): void {
    const { job, sheetRows, exceptions } = readLogFile(file, bytes);
    // Of what was read its digest alone is kept.
    const content = createHash("sha256").update(JSON.stringify(job)).digest("base64");
    const twin = this.seen.get(content);
    if (twin !== undefined) {
      this.refuse(file, `It holds the same as ${twin}, and would be counted twice.`);
      return;
    }
    const { rows, leftOut } = new LogRows(file, job, sheetRows, this.zoneOf);
    this.seen.set(content, file);
    addTo(this.rows, rows);
    if (countOf(this.rows) >= this.rowsAtOnce) this.pack();
    this.leftOut.push(
      ...exceptions.map(({ sheet, cell, reason }) => ({
        file,
        sheet,
        row: Number(cell.replace(/^[A-Z]+/, "")),
        reason,
      })),
      ...leftOut,
    );
  }

  private pack(): void {
    this.packed.add(this.rows);
    this.rows = noRows();
  }

  files(): readonly PlacedFile[] {
    this.pack();
    return this.packed.files();
  }

  /** Says why a file that could not be read is left out. */
  fail(names: readonly string[], error: CommandFailure): void {
    const named = names.find((one) => error.message.startsWith(`${one}: `));
    this.refuse(names[0] ?? "", named === undefined ? error.message : error.message.slice(named.length + 2));
  }
}

/**
 * The rows of all logs in and beneath a folder, packed; one log is in memory at a time. Throws CommandFailure where there is none that can be
 * read, and where the person cancels.
 */
export async function gather(
  given: string,
  isOutput: (file: string) => boolean,
  zoneOf: ZoneOf,
  around: Pick<Surroundings, "listFiles" | "readFile" | "progress" | "requireGoingOn">,
  rowsAtOnce = usualRowsAtOnce,
): Promise<Gathered> {
  const listed = await around.listFiles(given);
  const files = listed.filter((file) => /\.xlsx$/i.test(file) && !isOpenMark(file) && !isOutput(file));
  if (files.length === 0) throw new CommandFailure(`${given}: it holds no .xlsx file.`);
  if (files.length > mostFiles)
    throw new CommandFailure(
      `${given}: it holds ${String(files.length)} files, and at most ${String(mostFiles)} are added up at once.`,
    );
  const folder = given.replace(/[\\/]+$/, "");
  const gathering = new Gathering(zoneOf, rowsAtOnce);
  for (const [index, name] of files.entries()) {
    await around.requireGoingOn();
    // Figures of the same logs are the same wherever their folder stands.
    const file = name.startsWith(`${folder}/`) ? name.slice(folder.length + 1) : name;
    around.progress(`log ${String(index + 1)} of ${String(files.length)}: ${file}`);
    try {
      gathering.add(file, await around.readFile(name));
    } catch (error) {
      if (!(error instanceof CommandFailure)) throw error;
      gathering.fail([file, name], error);
    }
  }
  const { leftOut, refused } = gathering;
  if (refused === files.length)
    throw new CommandFailure(
      `${given}: none of its ${String(files.length)} files is a log that can be read; the first: ${leftOut[0]?.reason ?? ""}`,
    );
  return { files: gathering.files(), leftOut, read: files.length - refused, refused };
}
