import type { StepKind } from "../../joblog/step.ts";
import type { EntryId } from "../entries/entry-form.ts";
import { recordAddition } from "./record-addition.ts";
import { recordBaseline } from "./record-baseline.ts";
import { recordBenchTest } from "./record-bench-test.ts";
import { recordCharge } from "./record-charge.ts";
import type { RecordAction } from "./record-entry.ts";
import { recordLoad } from "./record-load.ts";
import { recordReading } from "./record-reading.ts";

/** In the order of a bath's life. */
export const recordActions: readonly RecordAction[] = [recordCharge, recordBenchTest, recordBaseline, recordLoad, recordReading, recordAddition];

export function recordActionOf(id: EntryId): RecordAction {
  const action = recordActions.find((one) => one.form.id === id);
  if (action === undefined) throw new RangeError(`No action records "${id}".`);
  return action;
}

const entryOfStep: Readonly<Record<StepKind, EntryId | undefined>> = {
  "opening dose": "addition",
  "bench test": "bench test",
  baseline: "baseline",
  reading: "reading",
  "top-up": "addition",
  release: "release",
  closed: "charge",
  wait: undefined,
};

/** The form that belongs to a next step. */
export function actionForStep(kind: StepKind): RecordAction | undefined {
  const id = entryOfStep[kind];
  return id === undefined ? undefined : recordActionOf(id);
}
