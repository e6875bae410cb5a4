import type { EntryId } from "../entries/entry-form.ts";
import { recordAddition } from "./record-addition.ts";
import { recordBaseline } from "./record-baseline.ts";
import { recordBenchTest } from "./record-bench-test.ts";
import { recordCare } from "./record-care.ts";
import { recordChangeOut } from "./record-change-out.ts";
import { recordCharge } from "./record-charge.ts";
import { recordCorrection } from "./record-correction.ts";
import type { RecordAction } from "./record-entry.ts";
import { recordItem } from "./record-item.ts";
import { recordLevelMakeUp } from "./record-level-make-up.ts";
import { recordLoad } from "./record-load.ts";
import { recordMeterCheck } from "./record-meter-check.ts";
import { recordReading } from "./record-reading.ts";
import { recordRelease } from "./record-release.ts";

/** In the order of a bath's life; then what puts an earlier entry right. */
export const recordActions: readonly RecordAction[] = [
  recordItem,
  recordMeterCheck,
  recordCharge,
  recordBenchTest,
  recordBaseline,
  recordLoad,
  recordReading,
  recordAddition,
  recordLevelMakeUp,
  recordCare,
  recordChangeOut,
  recordRelease,
  recordCorrection,
];

export function recordActionOf(id: EntryId): RecordAction {
  const action = recordActions.find((one) => one.form.id === id);
  if (action === undefined) throw new RangeError(`No action records "${id}".`);
  return action;
}
