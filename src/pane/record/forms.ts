import { additionEntry } from "./forms/addition/addition-entry.ts";
import { baselineEntry } from "./forms/baseline/baseline-entry.ts";
import { writtenBaselineEntry } from "./forms/baseline/written-baseline-entry.ts";
import { benchTestEntry } from "./forms/bench-test/bench-test-entry.ts";
import { careEntry } from "./forms/care/care-entry.ts";
import { changeOutEntry } from "./forms/change-out/change-out-entry.ts";
import { chargeEntry } from "./forms/charge/charge-entry.ts";
import { correctionEntry } from "./forms/correction/correction-entry.ts";
import { costLineEntry } from "./forms/cost-line/cost-line-entry.ts";
import { countInEntry } from "./forms/count-in/count-in-entry.ts";
import { itemEntry } from "./forms/item/item-entry.ts";
import { levelMakeUpEntry } from "./forms/level-make-up/level-make-up-entry.ts";
import { loadEntry } from "./forms/load/load-entry.ts";
import { meterCheckEntry } from "./forms/meter-check/meter-check-entry.ts";
import { readingEntry } from "./forms/reading/reading-entry.ts";
import { releaseEntry } from "./forms/release/release-entry.ts";
import { stockMoveEntry } from "./forms/stock-move/stock-move-entry.ts";

/** In the order of a bath's life; then what puts an earlier entry right, and what other views open. */
export const forms = [
  countInEntry,
  itemEntry,
  meterCheckEntry,
  chargeEntry,
  benchTestEntry,
  baselineEntry,
  writtenBaselineEntry,
  loadEntry,
  readingEntry,
  additionEntry,
  levelMakeUpEntry,
  careEntry,
  changeOutEntry,
  releaseEntry,
  correctionEntry,
  costLineEntry,
  stockMoveEntry,
] as const;

export type EntryId = (typeof forms)[number]["id"];

export function formOf(id: EntryId): (typeof forms)[number] {
  const form = forms.find((one) => one.id === id);
  if (form === undefined) throw new RangeError(`No form records "${id}".`);
  return form;
}
