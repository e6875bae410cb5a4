/** What Excel's documents leave open. The stand-in does the likely thing; tests try every other. */
export interface Habits {
  /** What becomes of one value that is set on a range of several cells: the API's types know arrays only. */
  oneValue: "fills every cell" | "fills the first cell" | "is refused";
  /** Whether the rows that a table gains by resizing take validation, looks and rules from the rows above. */
  resizingDressesRows: boolean;
}

export function usualHabits(): Habits {
  return { oneValue: "fills every cell", resizingDressesRows: true };
}
