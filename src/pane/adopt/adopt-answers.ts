import type { AdoptTable } from "./adopt-kinds.ts";
import type { DateOrder, DotTime } from "./read-moment.ts";

/** Which of the sheet's columns, counted from 0, fills a column of the log; times that stand in a column of their own are under "time". */
export type ColumnMap = Readonly<Partial<Record<string, number>>>;

/** What to do with a word of the sheet that the log does not know: another word of the log, a new claim or bath of that name, or no row. */
export type NameAnswer = { readonly use: string } | "new" | "leave out";

/** Baths that are in the sheet but not in the log are opened with these. */
interface NewBath {
  readonly tank: string;
  readonly water: string;
  readonly concentrate: string;
  readonly strength: string;
}

/** All that a person has said about the sheet. */
export interface AdoptAnswers {
  readonly table: AdoptTable;
  readonly columns: ColumnMap;
  /** Unit symbols by column of the log, where the heading names none. */
  readonly units: Readonly<Partial<Record<string, string>>>;
  /** One value for all rows, by column of the log, where the sheet has no such column. */
  readonly same: Readonly<Partial<Record<string, string>>>;
  readonly order: DateOrder | undefined;
  readonly dotTime: DotTime | undefined;
  /** Stands for times that the sheet does not name, such as 12:00. */
  readonly usualTime: string;
  /** Likewise for the second pH of a day. */
  readonly usualTime2: string;
  /** Columns of the log whose blank cells mean what stands above them. */
  readonly asAbove: Readonly<Partial<Record<string, boolean>>>;
  /** Unit symbols by the words of the sheet's unit column, in small letters. */
  readonly unitWords: Readonly<Partial<Record<string, string>>>;
  /** By column of the log, then by the sheet's word in small letters. */
  readonly names: Readonly<Partial<Record<string, Readonly<Partial<Record<string, NameAnswer>>>>>>;
  readonly newBath: NewBath;
}
