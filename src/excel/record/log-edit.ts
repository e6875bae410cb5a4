import type { NewRow } from "../../joblog/model/definition.ts";
import type { BlankFill } from "./append-target.ts";
import type { FieldChanges, RowChange } from "./cell-changes.ts";
import type { Settling } from "./settled-cells.ts";

/** All that one act of a person writes to the log, in one batch. Plain data. */
export interface LogEdit {
  readonly rows?: readonly NewRow[];
  /** Keys of the rows stand on tags or in another sheet: one that is taken is refused. Else the row gets the next number. */
  readonly idsAsGiven?: boolean;
  /** Blank cells of earlier rows that it completes. */
  readonly fills?: readonly BlankFill[];
  /** Cells of earlier rows that it changes, each with what the log holds there now. */
  readonly changes?: readonly RowChange[];
  /** Named cells that it changes, by field. */
  readonly fields?: FieldChanges;
  /** Rows of a bath whose formulas give way to their values, or come back. */
  readonly settling?: Settling;
}
