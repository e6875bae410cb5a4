import { numberIn, readCsv, textIn } from "../read-csv.ts";

const statuses = ["confirmed", "differs", "from memory"] as const;

type Status = (typeof statuses)[number];

/** One of our constants beside the figure that a public collection has for it. */
export interface ConstantRow {
  /** File under src/core. */
  readonly module: string;
  readonly constant: string;
  readonly part: string;
  readonly ours: number;
  readonly public: number | undefined;
  /** Whose copy it is, and where in it. */
  readonly collection: string;
  readonly place: string;
  readonly status: Status;
}

function statusIn(text: string): Status {
  const status = statuses.find((one) => one === text);
  if (status === undefined) throw new RangeError(`No status “${text}”`);
  return status;
}

/** Every constant of src/core, from `constants.csv`. */
export const constantRows: readonly ConstantRow[] = readCsv("chemistry/constants.csv").map((row) => ({
  module: textIn(row, "module"),
  constant: textIn(row, "constant"),
  part: textIn(row, "part"),
  ours: numberIn(row, "ours"),
  public: textIn(row, "public") === "" ? undefined : numberIn(row, "public"),
  collection: textIn(row, "collection"),
  place: textIn(row, "place"),
  status: statusIn(textIn(row, "status")),
}));

/** How many constants a public copy confirms, and whose copies they are. */
export interface ConstantCounts {
  readonly constants: number;
  readonly byStatus: Readonly<Record<Status, number>>;
  /** The most first. */
  readonly confirmedBy: readonly (readonly [collection: string, constants: number])[];
}

export function countConstants(rows: readonly ConstantRow[]): ConstantCounts {
  const count = (wanted: Status): number => rows.filter(({ status }) => status === wanted).length;
  const collections = new Map<string, number>();
  for (const { collection, status } of rows) {
    if (status === "confirmed") collections.set(collection, (collections.get(collection) ?? 0) + 1);
  }
  return {
    constants: rows.length,
    byStatus: { confirmed: count("confirmed"), differs: count("differs"), "from memory": count("from memory") },
    confirmedBy: [...collections].sort(([, one], [, other]) => other - one),
  };
}
