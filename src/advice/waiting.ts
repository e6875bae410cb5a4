/** What is said in place of advice as long as the sheet does not show the figures that it would rest on. */
import type { RowValue } from "../joblog/model/definition.ts";
import { isUnfinished } from "../joblog/model/log-snapshot.ts";
import { settlingPlace } from "./settled-baths.ts";
import type { RootOf, UnlikeCell } from "./unlike-cells.ts";

export const workingOut = "Working out…";

/** Said of a cell that stays unlike what its formula gives. */
export function typedOverWords({ place, under, shown, due, settledBath }: UnlikeCell): string {
  const why =
    settledBath === undefined
      ? "typed over, or not worked out by Excel"
      : `bath ${settledBath} was settled, and something that this rests on changed since`;
  return `${place} shows ${spoken(shown)}${under === undefined ? "" : ` under ${under}`}, and its formula gives ${spoken(due)}: ${why}.`;
}

/** What puts such a cell right. */
export const mendingPlace = ({ settledBath }: UnlikeCell): string =>
  settledBath === undefined ? "More, Shop, Formulas" : `${settlingPlace}, Put the formulas back`;

interface Waiting {
  readonly sentence: string;
  readonly reason: string;
}

function spoken(value: RowValue | undefined): string {
  if (value === undefined) return "nothing";
  return typeof value === "number" ? String(Number(value.toPrecision(6))) : `“${String(value)}”`;
}

/** `rootOf`: given once nothing has changed for some time, so that waiting alone will hardly help. */
export function waitingWords(unlike: readonly UnlikeCell[], rootOf: RootOf | undefined): Waiting {
  if (unlike.some(({ shown }) => shown === "#NAME?"))
    return {
      sentence: "Excel does not know the BATH functions yet.",
      reason: "Keep this pane open for a moment; if it stays so, close and open the workbook.",
    };
  const root = rootOf?.(unlike);
  if (root === undefined) return { sentence: workingOut, reason: "Excel is still working out the figures for this." };
  const { place, shown } = root;
  if (isUnfinished(shown))
    return {
      sentence: workingOut,
      reason: `${place} still shows ${spoken(shown)}. If it stays so, press Ctrl+Alt+F9: Excel recalculates everything.`,
    };
  return {
    sentence: "No advice while the sheet shows figures other than what its formulas give.",
    reason: `${typedOverWords(root)} ${mendingPlace(root)} puts it right.`,
  };
}

/** The same as one sentence. */
export function waitingSentence(unlike: readonly UnlikeCell[], rootOf: RootOf | undefined): string {
  const { sentence, reason } = waitingWords(unlike, rootOf);
  return sentence === workingOut ? sentence : `${sentence} ${reason}`;
}
