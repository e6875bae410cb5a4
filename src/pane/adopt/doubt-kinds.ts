/** What is possible of a row but unlikely. A person is asked once about all rows of one kind; the order is that of asking. */
export const doubtKinds = {
  temperature: "Temperatures that look like the other scale",
  jump: "pH far from the reading before",
  gap: "Samples far in temperature from the baseline",
  strength: "Strengths without a sign",
  amount: "More at once than the whole opening dose",
  room: "More than the bath or the label leaves room for",
  rise: "pH before and after an addition",
  level: "Levels above the fill line",
  meter: "Meters",
  shared: "Loads in a shared bath",
  hazard: "Pieces that may not go into a bath",
  document: "Documents that are there already",
  payer: "Costs that nobody pays",
  "priced water": "Water that Additions price already",
  buffers: "Buffers",
  total: "Rows that look like totals",
  twice: "Rows that are alike",
} as const;

export type DoubtKind = keyof typeof doubtKinds;

export interface Doubt {
  readonly kind: DoubtKind;
  readonly text: string;
}

/** Rows alike: both are taken, or the first alone. */
export type DoubtAnswer = "take" | "leave out";

export type DoubtAnswers = Readonly<Partial<Record<DoubtKind, DoubtAnswer>>>;
