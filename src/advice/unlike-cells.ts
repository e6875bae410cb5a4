/** Cells of the log that do not show what their formulas give for what is typed. */
import type { RowValue } from "../joblog/model/definition.ts";

export interface UnlikeCell {
  /** "R013 on the sheet Readings", or the named cell's label. */
  readonly place: string;
  /** The heading it stands under; none for a named cell. */
  readonly under: string | undefined;
  readonly shown: RowValue | undefined;
  readonly due: RowValue | undefined;
  /** The bath of a row whose formulas a person let give way to their values. */
  readonly settledBath: string | undefined;
}

interface Noted<Answer> {
  readonly answer: Answer;
  /** Cells that the answer rests on and that the sheet shows otherwise. */
  readonly unlike: readonly UnlikeCell[];
}

/** Runs work that looks at a log and tells which of the cells it looked at the sheet shows otherwise. */
export type Noting = <Answer>(work: () => Answer) => Noted<Answer>;

/** The cell by which others are unlike what their formulas give: an empty list has none. */
export type RootOf = (unlike: readonly UnlikeCell[]) => UnlikeCell | undefined;
