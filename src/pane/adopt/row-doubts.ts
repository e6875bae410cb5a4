/** What the forms would refuse or ask about a row, by their own rules. */
import { labelDoubts } from "../../advice/amounts/label-limit.ts";
import { amountProblems, heldBy, levelDoubts, levelProblems } from "../../advice/amounts/tank-limits.ts";
import { roomDoubts } from "../../advice/amounts/tank-room.ts";
import { bathFacts } from "../../advice/bath-values.ts";
import { draftedRow } from "../../advice/drafted-row.ts";
import type { FieldProblem, FilledFields } from "../../advice/filled-fields.ts";
import { loadsFlaggedOrDirty } from "../../advice/load-sharing.ts";
import type { LogContext } from "../../advice/log-context.ts";
import { money } from "../../advice/wording/figures.ts";
import type { Cells } from "../../joblog/model/definition.ts";
import type { LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import { filledFields } from "../record/fill-form.ts";
import { riseDoubts, strengthAndRoom } from "../record/forms/addition/addition-doubts.ts";
import { amountDoubts } from "../record/forms/addition/addition-findings.ts";
import { documentDoubts, noCostProblems, pricedWaterDoubts } from "../record/forms/cost-line/cost-line-doubts.ts";
import { bathDoubts } from "../record/forms/item/item-hazards.ts";
import { zeroProblems } from "../record/forms/load/load-problems.ts";
import { bufferProblems, mixedUp, orderProblems } from "../record/forms/meter-check/check-doubts.ts";
import { meterDoubts } from "../record/forms/meter-check/meter-doubts.ts";
import { gapDoubts, jumpDoubts, scaleDoubts, temperatureDoubts } from "../record/forms/reading/reading-doubts.ts";
import { noMoveProblems } from "../record/forms/stock-move/stock-move-problems.ts";
import type { AdoptTable } from "./adopt-kinds.ts";
import type { Doubt, DoubtKind } from "./doubt-kinds.ts";

/** What the forms look at beside the row itself. */
export interface RowSurroundings {
  /** The log as it stands. */
  readonly context: LogContext;
  /** With the baths that adopting would open, so that their tanks are known. */
  readonly withNewBaths: LogContext;
  /** With the rows of the sheet that the row is compared with. */
  readonly withNeighbors: LogContext;
}

export interface RowToJudge {
  readonly cells: Cells;
  /** The sheet's own number where it stood in °F. */
  readonly fahrenheit: string | undefined;
}

interface Judged {
  readonly problems: readonly FieldProblem[];
  readonly doubts: readonly Doubt[];
}

type Filled = FilledFields<string>;

const of = (kind: DoubtKind, texts: readonly string[]): readonly Doubt[] => texts.map((text) => ({ kind, text }));

function reading(filled: Filled, { fahrenheit }: RowToJudge, around: RowSurroundings): Judged {
  const { context, withNewBaths, withNeighbors } = around;
  const bath = filled.text("bath");
  const facts = bathFacts(context.log, bath);
  const temperature =
    context.system === "US"
      ? temperatureDoubts(facts, filled, fahrenheit, context)
      : fahrenheit === undefined
        ? []
        : scaleDoubts(Number(fahrenheit), fahrenheit, "US");
  const sample =
    filled.text("purpose") === "rinse"
      ? []
      : [
          ...of("temperature", temperature),
          ...of("jump", jumpDoubts(facts, filled, withNeighbors)),
          ...of("gap", gapDoubts(facts, filled, context)),
          ...of("meter", meterDoubts(filled, false, context)),
        ];
  return {
    problems: levelProblems("level", "Level", filled.number("level"), bath, withNewBaths),
    doubts: [...sample, ...of("level", levelDoubts(filled.number("level"), bath, withNewBaths))],
  };
}

function addition(filled: Filled, { cells }: RowToJudge, { context, withNewBaths }: RowSurroundings): Judged {
  const bath = filled.text("bath");
  const [before, after] = [filled.number("levelBefore"), filled.number("levelAfter")];
  const isWater = filled.text("kind") === "water";
  const isInLog = bathFacts(context.log, bath) !== undefined;
  const water = after === undefined && isInLog ? roomDoubts(draftedRow(context.log, "additions", cells), context) : [];
  return {
    problems: [
      ...amountProblems("amount", "Amount", filled.number("amount"), heldBy(withNewBaths, bath), withNewBaths),
      ...levelProblems("levelBefore", "Level before", before, bath, withNewBaths),
      ...levelProblems("levelAfter", "Level after", after, bath, withNewBaths),
    ],
    doubts: [
      ...(isWater
        ? of("room", water)
        : [
            ...of("amount", amountDoubts(filled, context)),
            ...of("room", strengthAndRoom(filled, cells, context)),
            ...of("rise", riseDoubts(filled)),
          ]),
      ...of(
        "level",
        [before, after].flatMap((level) => levelDoubts(level, bath, withNewBaths)),
      ),
    ],
  };
}

const judges: Readonly<
  Partial<Record<AdoptTable, (filled: Filled, row: RowToJudge, around: RowSurroundings) => Judged>>
> = {
  readings: reading,
  additions: addition,
  loads: (filled, _row, { withNeighbors }) => ({
    problems: zeroProblems(filled),
    doubts: of("shared", loadsFlaggedOrDirty(filled, withNeighbors)),
  }),
  items: (filled, { cells }, { context }) => ({
    problems: [],
    doubts:
      filled.text("route") === "bath" ? of("hazard", bathDoubts(draftedRow(context.log, "items", cells), context)) : [],
  }),
  costLines: (filled, _row, { context, withNeighbors }) => ({
    problems: noCostProblems(filled),
    doubts: [
      ...of("document", documentDoubts(filled, withNeighbors)),
      ...of("priced water", pricedWaterDoubts(filled, context)),
      ...of("payer", payerDoubts(filled)),
    ],
  }),
  stockMoves: (filled) => ({ problems: noMoveProblems(filled), doubts: [] }),
  meterChecks: (filled) => ({
    problems: [...orderProblems(filled), ...bufferProblems(filled)],
    doubts: of("buffers", mixedUp(filled)),
  }),
  baths: (filled, { cells }, { context }) => {
    const [opened, closed] = [filled.number("opened"), filled.number("closed")];
    return {
      problems:
        opened !== undefined && closed !== undefined && closed < opened
          ? [{ key: "closed", message: "Closed: before the bath was opened. Check both." }]
          : [],
      doubts: of("room", labelDoubts(draftedRow(context.log, "baths", cells))),
    };
  },
};

/** What nobody pays: neither the claims of a bath, nor one claim alone, nor the shop. */
function payerDoubts(filled: Filled): readonly string[] {
  const [account, bath, claim] = [filled.text("account"), filled.text("bath"), filled.text("claim")];
  return account === "claims" && bath === undefined && claim === undefined
    ? [
        `${money(filled.number("amount") ?? 0)} on the claims' account, and neither bath nor claim: it is charged to nobody.`,
      ]
    : [];
}

/** A row that could be read, as its form would judge it. */
export function judgeRow(table: AdoptTable, row: RowToJudge, around: RowSurroundings): Judged {
  const values = new Map(
    Object.entries(row.cells).flatMap(([id, value]) => (value === undefined ? [] : [[id, value] as const])),
  );
  return judges[table]?.(filledFields(values), row, around) ?? { problems: [], doubts: [] };
}

/** A log with further rows of a table, as the forms look at them. */
export function withRows(
  log: LogSnapshot,
  table: "readings" | "loads" | "baths" | "costLines",
  rows: readonly Cells[],
  keep = true,
): LogSnapshot {
  const further = rows.map((cells) => ({ position: -1, cells }));
  return { ...log, rows: { ...log.rows, [table]: [...(keep ? log.rows[table] : []), ...further] } };
}
