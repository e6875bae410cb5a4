/** Types of a column; money is whole cents, so that no sum depends on its order. */
export type ColumnType = "text" | "whole number" | "cents" | "number" | "yes or no" | "wall time" | "UTC";

interface RowColumn<Type extends ColumnType = ColumnType> {
  readonly type: Type;
  readonly help: string;
}

type RowColumns = Readonly<Record<string, RowColumn>>;

const column =
  <Type extends ColumnType>(type: Type) =>
  (help: string): RowColumn<Type> => ({ type, help });

const text = column("text");
const whole = column("whole number");
const cents = column("cents");
const number = column("number");
const yesOrNo = column("yes or no");

/** In every table, by which a row is found again and added up; shop and month stand in the names of the folders. */
const common = {
  shop: text("The shop by its name in the log; a folder, no column of the file."),
  month: text("Year and month by the shop's clock, such as 2027-03, or undated; a folder, no column of the file."),
  file: text("Path of the log beneath the folder that was read."),
  sheet: text("The sheet that the row stands on."),
  row: whole("Its row there, as Excel counts."),
  currency: text("Of all amounts of the log."),
  at_local: column("wall time")("When, by the shop's clock."),
  at_utc: column("UTC")("The same moment in UTC; blank where no zone was given."),
  zone: text("The shop's time zone, as it was given; a log does not hold it."),
} as const;

/** Typed rows of the logs, as they go into Parquet files and as the queries see them. */
export const rowTables = {
  logs: {
    purpose: "One row for each log that was read; its moment is that of its last load.",
    columns: {
      ...common,
      system: text("Units of the log: US, metric or imperial."),
      weight_light: number("What a basket of light soil counts for, from the sheet Shop."),
      weight_medium: number("The same of medium soil."),
      weight_heavy: number("The same of heavy soil."),
    },
  },
  baths: {
    purpose: "Baths; a bath's moment is its opening.",
    columns: {
      ...common,
      bath: text("Its name."),
      concentrate: text("Its concentrate."),
      is_closed: yesOrNo("Whether it was changed out."),
      fill_water_liters: number("Water that it was filled with."),
      top_ups_grow: yesOrNo(
        "Whether a later round of top-ups took more than the first times the growth on the sheet Job; blank where no opening dose is known.",
      ),
    },
  },
  additions: {
    purpose: "What was poured.",
    columns: {
      ...common,
      bath: text("Into which bath."),
      concentrate: text("Which concentrate; blank for water."),
      kind: text("concentrate or water."),
      purpose: text("opening, top-up, make-up or corrective."),
      liters: number("How much."),
      cost_cents: cents("What it cost."),
    },
  },
  costs: {
    purpose: "Cost lines; their moment is the day of the document.",
    columns: {
      ...common,
      bath: text("Of which bath."),
      kind: text("labor, energy, water, supplies, disposal or other."),
      cost_cents: cents("The amount; a credit is negative."),
    },
  },
  loads: {
    purpose: "Loads.",
    columns: {
      ...common,
      bath: text("In which bath."),
      claim: text("Of which claim."),
      soil: text("light, medium or heavy."),
      baskets: number("How many."),
      minutes: number("Time in the bath."),
    },
  },
  items: {
    purpose: "Pieces; they have no moment.",
    columns: {
      ...common,
      claim: text("Of which claim."),
      outcome: text("What became of them, as the sheet Items says it."),
      pieces: number("How many."),
    },
  },
  claims: {
    purpose: "Claims; a claim's moment is the day on which its contents arrived.",
    columns: {
      ...common,
      claim: text("Its name."),
      cost_cents: cents("What it pays."),
      is_provisional: yesOrNo("Whether that can still change."),
    },
  },
} as const satisfies Readonly<Record<string, { readonly purpose: string; readonly columns: RowColumns }>>;

export type RowTableId = keyof typeof rowTables;

export const rowTableIds: readonly RowTableId[] = ["logs", "baths", "additions", "costs", "loads", "items", "claims"];

/** In the names of folders, and in no file. */
export const partitions = ["shop", "month"] as const;

interface Values {
  readonly text: string;
  readonly "whole number": number;
  readonly cents: number;
  readonly number: number;
  readonly "yes or no": boolean;
  readonly "wall time": Date;
  readonly UTC: Date;
}

export type RowValue = Values[ColumnType];

/** A typed row; `undefined` for what is blank. */
export type TypedRow<Table extends RowTableId> = {
  readonly [Id in keyof (typeof rowTables)[Table]["columns"]]:
    | ((typeof rowTables)[Table]["columns"][Id] extends RowColumn<infer Type> ? Values[Type] : never)
    | (Id extends (typeof partitions)[number] | "file" ? never : undefined);
};

export type TypedRows = { readonly [Table in RowTableId]: readonly TypedRow<Table>[] };
