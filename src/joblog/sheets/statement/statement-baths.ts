import { asText, joined, minus, plus, wholePart } from "../../formula/arithmetic.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { all, equal, isBlank, isFilled, isNot, unequal } from "../../formula/conditions.ts";
import {
  above,
  atLeast,
  beginning,
  below,
  countWhere,
  largestWhere,
  otherThan,
  smallestWhere,
  sumWhere,
  type Where,
} from "../../formula/criteria.ts";
import { apply, type Expression } from "../../formula/expression.ts";
import type { ColumnId, Columns, Log, Row } from "../../formula/log-names.ts";
import { cellAt, cellAtOrBlank, positionOf, rowAt } from "../../formula/lookups.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn, TableDefinition } from "../../model/definition.ts";
import { volume } from "../../model/units-of.ts";
import { baselineStanding, bench, readingVerdict as words } from "../../model/words.ts";
import { firstOrMore, listed } from "./statement-keys.ts";

/** A claim rarely passes through more baths than this in a week. */
export const bathLines = 4;

const bathColumns = columnsOf<"statementBaths">();

function ofBath(
  id: string,
  column: ColumnId<"baths">,
  rest: Pick<ComputedColumn, "label" | "type" | "format" | "width" | "help">,
): ComputedColumn {
  return bathColumns.computed({ id, ...rest }, ({ bathRow }, { baths }) => cellAtOrBlank(baths[column], bathRow));
}

/** Which baths, with what in them and on what footing. */
export const statementBaths: TableDefinition = {
  id: "statementBaths",
  name: "StatementBaths",
  caption: "Baths that its pieces were in",
  emptyRows: bathLines,
  fixedRows: true,
  newPage: true,
  columns: [
    bathColumns.computed(
      { id: "bath", label: "Bath", type: "text", width: 13, help: "In the order in which the claim came into them." },
      (line, { loads }) => firstOrMore(line, loads, loads.bath, bathLines),
    ),
    bathColumns.computed(
      { id: "water", label: "Water", type: "text", width: 18, help: "Water of the fill." },
      ({ bathRow }, { baths, waters }) => {
        const waterRow = cellAt(baths.waterRow, bathRow);
        const { name, water } = rowAt(waters, waterRow);
        return blankIf(
          [isBlank(bathRow)],
          when(isBlank(waterRow), "").otherwise(asText(when(isBlank(name), water).otherwise(name))),
        );
      },
    ),
    ofBath("tank", "tank", { label: "Tank", type: "text", width: 11, help: "Where it stood." }),
    ofBath("strength", "strengthReached", {
      label: "Strength",
      type: "text",
      width: 11,
      help: "Opening dose in the working volume, one part and N parts of water.",
    }),
    ofBath("baseline", "baseline", {
      label: "Baseline pH",
      type: "number",
      format: "0.00",
      width: 13,
      help: "Median of at least three readings after accepted bench tests.",
    }),
    ofBath("trigger", "trigger", {
      label: "Trigger pH",
      type: "number",
      format: "0.00",
      width: 10,
      help: "At or under it a top-up was due.",
    }),
    ofBath("opened", "opened", {
      label: "Opened",
      type: "date",
      format: "yyyy-mm-dd",
      width: 11,
      help: "Day of the fill.",
    }),
    bathColumns.computed(
      {
        id: "benchTests",
        label: "Bench tests",
        type: "text",
        width: 20,
        help: "No baseline stands without accepted tests; how the latest ones stand since the last concentrate, and where the readings give another baseline.",
      },
      ({ bathRow, baseline, benchNow: now }, { baths }) => {
        const state = cellAt(baths.baselineState, bathRow);
        const before = when(all(isFilled(baseline), isNot(now, bench.accepted)), "accepted for the baseline; now: ");
        const contradicted = all(isFilled(baseline), unequal(state, baselineStanding.set));
        return blankIf(
          [isBlank(bathRow)],
          joined(before.otherwise(""), now, when(contradicted, joined("; baseline: ", state)).otherwise("")),
        );
      },
    ),
    ofBath("closed", "closed", {
      label: "Closed",
      type: "date",
      format: "yyyy-mm-dd",
      width: 11,
      help: "Day of the change-out; blank while in use.",
    }),
    ...listed("loads", "statementBaths", bathLines),
    bathColumns.helper(
      { id: "bathRow", label: "Bath row", type: "whole number", format: "0", width: 8, help: "Position in Baths." },
      ({ sourceRow }, { baths, loads }) =>
        blankIf([isBlank(sourceRow)], positionOf(cellAt(loads.bath, sourceRow), baths.bath)),
    ),
    bathColumns.helper(
      {
        id: "benchNow",
        label: "Bench tests now",
        type: "text",
        words: Object.values(bench),
        width: 17,
        help: "How they stand on the sheet Baths.",
      },
      ({ bathRow }, { baths }) => blankIf([isBlank(bathRow)], cellAt(baths.benchState, bathRow)),
    ),
  ],
};

type UseRow = Row<"statementUse">;

const useColumns = columnsOf<"statementUse">();

/** Readings of the bath on the days of the claim's loads in it. */
const readThen = ({ bath, from, until }: UseRow): Where<"readings"> => ({ bath, when: [atLeast(from), below(until)] });

/** Without those that look like a slip and that nobody has confirmed. */
const judgedThen = (row: UseRow): Where<"readings"> => ({ ...readThen(row), verdict: otherThan(words.check) });

/** The claim's loads in the bath. */
const itsLoads = ({ bath }: UseRow, { named }: Log): Where<"loads"> => ({ bath, claim: named.statementClaim });

/** Verdicts of the checks, by the column that counts them. */
const verdictsSaid = {
  saidHold: words.hold,
  saidNear: words.near,
  saidNotBack: words.notBack,
  saidTopUp: words.topUp,
  saidReRead: words.reRead,
  saidAbove: words.above,
  saidCheck: words.check,
} as const;

type Said = keyof typeof verdictsSaid;

const said: readonly Said[] = [
  "saidHold",
  "saidNear",
  "saidNotBack",
  "saidTopUp",
  "saidReRead",
  "saidAbove",
  "saidCheck",
];

const timesSaid: readonly ComputedColumn[] = said.map((id) =>
  useColumns.helper(
    {
      id,
      label: `Said ${verdictsSaid[id]}`,
      type: "whole number",
      format: "0",
      width: 8,
      help: "How often the readings on these days came to that.",
    },
    (row, { readings }) =>
      blankIf(
        [isBlank(row.sourceRow)],
        countWhere(readings, { ...readThen(row), verdict: beginning(verdictsSaid[id]) }),
      ),
  ),
);

/** As ", hold 3, near 1"; nothing of what they never said. */
function inWords(id: string, label: string, verdicts: readonly Said[]): ComputedColumn {
  return useColumns.helper({ id, label, type: "text", width: 14, help: "What the checks said, counted." }, (row) => {
    const [first = "", ...more] = verdicts.map((one) =>
      when(equal(row[one], 0), "").otherwise(joined(`, ${verdictsSaid[one]} `, row[one])),
    );
    return blankIf([isBlank(row.sourceRow)], joined(first, ...more));
  });
}

/** How many claims were in a bath. */
const claimsIn = (loads: Columns<"loads">, bath: Expression): Expression =>
  countWhere(loads, { bath, firstOfClaim: 1 });

/** What was read and added on the days that its loads were in. */
export const statementUse: TableDefinition = {
  id: "statementUse",
  name: "StatementUse",
  caption: "Loads, readings and top-ups on the days from its first to its last load in the bath",
  emptyRows: bathLines,
  fixedRows: true,
  columns: [
    useColumns.computed({ id: "bath", label: "Bath", type: "text", width: 13, help: "As above." }, (line, { loads }) =>
      firstOrMore(line, loads, loads.bath, bathLines),
    ),
    useColumns.computed(
      {
        id: "shared",
        label: "Shared with others",
        type: "text",
        width: 18,
        help: "Its place in the order of the claims in this bath.",
      },
      ({ sourceRow, claims }, { loads }) =>
        blankIf(
          [isBlank(sourceRow)],
          when(equal(claims, 1), "alone in it").otherwise(
            joined("claim ", cellAt(loads.entry, sourceRow), " of ", claims, " in it"),
          ),
        ),
    ),
    useColumns.computed(
      {
        id: "first",
        label: "First load",
        type: "date",
        format: "yyyy-mm-dd",
        width: 11,
        help: "Day of its first load in it.",
      },
      ({ sourceRow, from }) => blankIf([isBlank(sourceRow)], from),
    ),
    useColumns.computed(
      {
        id: "last",
        label: "Last load",
        type: "date",
        format: "yyyy-mm-dd",
        width: 11,
        help: "Day of its last load in it.",
      },
      ({ sourceRow, until }) => blankIf([isBlank(sourceRow)], minus(until, 1)),
    ),
    useColumns.computed(
      {
        id: "loads",
        label: "Loads",
        type: "whole number",
        format: "0",
        width: 11,
        help: "Its loads in this bath, rework among them.",
      },
      (row, log) => blankIf([isBlank(row.sourceRow)], countWhere(log.loads, itsLoads(row, log))),
    ),
    useColumns.computed(
      {
        id: "readings",
        label: "pH read, times",
        type: "whole number",
        format: "0",
        width: 10,
        help: "Readings of the bath on these days, those of the rinse left out.",
      },
      (row, { readings }) =>
        blankIf(
          [isBlank(row.sourceRow)],
          countWhere(readings, { ...readThen(row), purpose: otherThan("rinse"), ph: above(0) }),
        ),
    ),
    useColumns.computed(
      {
        id: "lowest",
        label: "Lowest pH",
        type: "number",
        format: "0.00",
        width: 11,
        help: "At the baseline's temperature, the meter's drift taken out.",
      },
      (row, { readings }) =>
        blankIf(
          [isBlank(row.sourceRow)],
          when(equal(row.judged, 0), "").otherwise(smallestWhere(readings, "phAtBaseline", judgedThen(row))),
        ),
    ),
    useColumns.computed(
      { id: "verdicts", label: "Verdicts", type: "text", width: 20, help: "What the checks among them said." },
      ({ sourceRow, saidOften, saidSeldom }) =>
        blankIf([isBlank(sourceRow)], apply("MID", joined(saidOften, saidSeldom), ", ".length + 1, 99)),
    ),
    useColumns.computed(
      {
        id: "toppedUp",
        label: "Topped up",
        type: "number",
        unit: volume,
        format: "0.000",
        width: 11,
        help: "Concentrate added to the bath on these days after its opening, for whoever's account.",
      },
      ({ bath, sourceRow, from, until }, { additions }) =>
        blankIf(
          [isBlank(sourceRow)],
          sumWhere(additions, "amount", {
            bath,
            kind: "concentrate",
            purpose: otherThan("opening"),
            when: [atLeast(from), below(until)],
          }),
        ),
    ),
    ...listed("loads", "statementUse", bathLines),
    ...timesSaid,
    inWords("saidOften", "In words", said.slice(0, 4)),
    inWords("saidSeldom", "And in words", said.slice(4)),
    useColumns.helper(
      {
        id: "judged",
        label: "Readings judged",
        type: "whole number",
        format: "0",
        width: 8,
        help: "Readings on these days with a pH at the baseline's temperature.",
      },
      (row, { readings }) =>
        blankIf([isBlank(row.sourceRow)], countWhere(readings, { ...judgedThen(row), phAtBaseline: above(0) })),
    ),
    useColumns.helper(
      {
        id: "claims",
        label: "Claims in it",
        type: "whole number",
        format: "0",
        width: 8,
        help: "How many claims were in the bath.",
      },
      ({ bath, sourceRow }, { loads }) => blankIf([isBlank(sourceRow)], claimsIn(loads, bath)),
    ),
    useColumns.helper(
      { id: "from", label: "From", type: "date", width: 11, help: "Day of the claim's first load." },
      ({ sourceRow }, { loads }) => blankIf([isBlank(sourceRow)], wholePart(cellAt(loads.when, sourceRow))),
    ),
    useColumns.helper(
      { id: "until", label: "Until", type: "date", width: 11, help: "Day after the claim's last load." },
      (row, log) =>
        blankIf([isBlank(row.sourceRow)], plus(wholePart(largestWhere(log.loads, "when", itsLoads(row, log))), 1)),
    ),
  ],
};
