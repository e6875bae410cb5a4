import type { Area } from "../../address.ts";
import type { TableRecord } from "../../workbook/table-record.ts";
import type { Workbook } from "../../workbook/workbook.ts";
import type { Step, Traffic } from "./session.ts";

/** The request context as the proxies see it. */
export interface Requests {
  readonly face: Excel.RequestContext;
  readonly workbookNow: Workbook;
  readonly traffic: Traffic;
  readonly make: ObjectFactories;
  /** `value` is what the step carries out with it. */
  enqueue(kind: Step["kind"], location: string, run: () => void, value?: unknown): void;
  /** Tells of cells that a read brought, so that the answer's size is known. */
  brought(value: unknown): void;
  /** Performs at once what `work` enqueues; for collections, whose items are known only at sync. */
  performNow(work: () => void): void;
}

/** Makes proxies of other kinds, so that the classes need not know each other. */
export interface ObjectFactories {
  readonly range: (requests: Requests, finding: Finding<Area>) => Excel.Range;
  readonly worksheet: (requests: Requests, finding: Finding<string>) => Excel.Worksheet;
  readonly table: (requests: Requests, finding: Finding<TableRecord>) => Excel.Table;
}

/** OfficeExtension.ClientResult: reading the value before the next sync throws. */
export interface Promised<Value> {
  readonly value: Value;
}

/** How a proxy finds the thing it stands for, when its turn in the batch comes. */
export interface Finding<Target> {
  /** Undefined: there is no such thing. */
  readonly find: (workbook: Workbook) => Target | undefined;
  /** Whether a missing thing becomes a null object; asked when the batch runs. */
  readonly orNull?: () => boolean;
  /** For messages, as in "table Readings". */
  readonly what: string;
}
