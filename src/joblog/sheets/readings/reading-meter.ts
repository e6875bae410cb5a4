import { driftFix } from "../../../../functions/meter/drift-fix.ts";
import { minus, rounded, sum } from "../../formula/arithmetic.ts";
import { call } from "../../formula/calls.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { equal, isBlank, isNoNumber } from "../../formula/conditions.ts";
import { largestWhere, upTo } from "../../formula/criteria.ts";
import { cellAtOrBlank, cellsFrom, matchIn, rowAt } from "../../formula/lookups.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn } from "../../model/definition.ts";
import { errorFound, errorLeft } from "../meter/meter-error.ts";
import { checkKey, saysErrorLeft } from "../meter/meter-key.ts";

const { computed, helper } = columnsOf<"readings">();

/** Meters show hundredths; more figures would only pretend to more. */
const shownDecimals = 2;

/** Feeds everything that judges a bath; the pH as read is never overwritten. */
export const phCorrected: ComputedColumn = computed(
  {
    id: "phCorrected",
    label: "pH, drift taken out",
    type: "number",
    format: "0.00",
    width: 10,
    help:
      "The reading less the meter's error at its own pH, by the straight line through both buffers (slope and offset), " +
      "grown evenly from one check to the next. Above the higher buffer that line is drawn on and uncertain. " +
      "As read where no later check is recorded or the meter is not named.",
  },
  (reading) => {
    const driftTakenOut = call(driftFix, {
      reading: reading.ph,
      when: reading.when,
      check_times: cellsFrom(reading.checkBefore, reading.checkAfter),
      as_found_errors: cellsFrom(reading.errorBefore, reading.errorAfter),
    });
    return blankIf(
      [isNoNumber(reading.ph)],
      when(isBlank(reading.errorAfter), reading.ph).otherwise(
        rounded(minus(driftTakenOut, reading.errorLeft), shownDecimals),
      ),
    );
  },
);

/** The meter's checks on either side of the reading. Times and errors stand side by side: each pair is one range. */
export const readingMeterHelpers: readonly ComputedColumn[] = [
  helper(
    {
      id: "checkRow",
      label: "Check row",
      type: "whole number",
      format: "0",
      width: 8,
      help: "Position in MeterChecks of the check before.",
    },
    ({ meter, checkBefore }, { meterChecks }) =>
      blankIf([equal(sum(checkBefore), 0)], matchIn(checkKey(meter, checkBefore), meterChecks.key)),
  ),
  helper(
    {
      id: "checkBefore",
      label: "Check before",
      type: "date and time",
      width: 16,
      help: "The meter's last check by then; 0 if none.",
    },
    (reading, { meterChecks }) =>
      blankIf(
        [isBlank(reading.meter), isNoNumber(reading.ph), isNoNumber(reading.when)],
        largestWhere(meterChecks, "when", { meter: reading.meter, left: saysErrorLeft, when: upTo(reading.when) }),
      ),
  ),
  helper(
    {
      id: "checkAfter",
      label: "Check after",
      type: "date and time",
      width: 16,
      help: "The meter's next check; blank if none yet.",
    },
    ({ checkRow }, { meterChecks }) => blankIf([isBlank(checkRow)], rowAt(meterChecks, checkRow).nextAt),
  ),
  helper(
    {
      id: "nextCheckRow",
      label: "Next check row",
      type: "whole number",
      format: "0",
      width: 8,
      help: "Position in MeterChecks of the check after.",
    },
    ({ meter, checkAfter }, { meterChecks }) =>
      blankIf([isBlank(checkAfter)], matchIn(checkKey(meter, checkAfter), meterChecks.key)),
  ),
  helper(
    {
      id: "errorLeft",
      label: "Error left",
      type: "number",
      format: "0.000",
      width: 8,
      help: "What the check before left the meter off by, at this reading's pH.",
    },
    (reading, { meterChecks }) =>
      blankIf([isBlank(reading.checkRow)], errorLeft(reading.ph, rowAt(meterChecks, reading.checkRow))),
  ),
  helper(
    {
      id: "errorBefore",
      label: "Drift at the check before",
      type: "number",
      format: "0.00",
      width: 9,
      help: "Always 0: drift is counted from there.",
    },
    ({ checkRow }) => blankIf([isBlank(checkRow)], 0),
  ),
  helper(
    {
      id: "errorAfter",
      label: "Drift at the check after",
      type: "number",
      format: "0.000",
      width: 9,
      help: "As found at the next check at this reading's pH, less what the check before had left.",
    },
    ({ errorFoundNext, errorLeft: left }) => blankIf([isBlank(errorFoundNext)], minus(errorFoundNext, left)),
  ),
  helper(
    {
      id: "errorFoundNext",
      label: "Error found next",
      type: "number",
      format: "0.000",
      width: 9,
      help: "What the next check found the meter off by, at this reading's pH.",
    },
    (reading, { meterChecks }) => {
      const { ph, nextCheckRow, foundNext: found } = reading;
      return blankIf([isBlank(found)], errorFound(ph, { ...rowAt(meterChecks, nextCheckRow), found }));
    },
  ),
  helper(
    {
      id: "foundNext",
      label: "Found next",
      type: "number",
      format: "0.000",
      width: 8,
      help: "What the next check found the meter off by, in the buffer with the higher pH.",
    },
    ({ nextCheckRow }, { meterChecks }) => cellAtOrBlank(meterChecks.found, nextCheckRow),
  ),
];
