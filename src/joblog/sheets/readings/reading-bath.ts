import { absolute, minus } from "../../formula/arithmetic.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { is, isAtMost, isBlank, isNoNumber, isNot, isOver } from "../../formula/conditions.ts";
import { cellAtOrBlank, rowAt } from "../../formula/lookups.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn } from "../../model/definition.ts";
import { temperature } from "../../model/units-of.ts";
import { readingVerdict } from "../../model/words.ts";
import { asReadOf, baselineAt, baselineColumn } from "../baths/bath-baseline.ts";

const { helper } = columnsOf<"readings">();

/** What the reading's bath is held to, and whether the reading can be held to it. */
export const readingBath: readonly ComputedColumn[] = [
  helper(
    {
      id: "comparable",
      label: "Can be compared",
      type: "whole number",
      format: "0",
      width: 9,
      help: "1 where bath and reading say something about each other at other temperatures.",
    },
    ({ bathRow, temperature: sample, ph, purpose, bathBaseline }) =>
      blankIf(
        [
          isBlank(bathRow),
          isNoNumber(sample),
          isNoNumber(ph),
          isAtMost(ph, 0),
          is(purpose, "rinse"),
          isBlank(bathBaseline),
        ],
        1,
      ),
  ),
  helper(baselineColumn, ({ bathRow }, log) => baselineAt(bathRow, log)),
  helper(
    {
      id: "bathBaselineAsRead",
      label: "Baseline as read",
      type: "number",
      format: "0.00",
      width: 8,
      help: "The same with the meter's drift left in.",
    },
    ({ bathRow, bathBaseline }, { baths }) => blankIf([isBlank(bathBaseline)], asReadOf(rowAt(baths, bathRow))),
  ),
  helper(
    {
      id: "bathTemperature",
      label: "Baseline temp",
      type: "number",
      unit: temperature,
      format: "0.0",
      width: 9,
      help: "Of the bath's baseline.",
    },
    ({ bathRow }, { baths }) => cellAtOrBlank(baths.baselineTemperature, bathRow),
  ),
  helper(
    { id: "bathDrop", label: "Drop used", type: "number", format: "0.00", width: 8, help: "Of the bath." },
    ({ bathRow }, { baths }) => cellAtOrBlank(baths.dropUsed, bathRow),
  ),
  helper(
    { id: "bathBuilder", label: "Builder used", type: "text", width: 11, help: "Of the bath." },
    ({ bathRow }, { baths }) => cellAtOrBlank(baths.builderUsed, bathRow),
  ),
  helper(
    { id: "bathAlkalinity", label: "Alkalinity used", type: "text", width: 10, help: "Of the bath, with its unit." },
    ({ bathRow }, { baths }) => cellAtOrBlank(baths.alkalinityUsed, bathRow),
  ),
  helper(
    {
      id: "degreesApart",
      label: "Degrees apart",
      type: "number",
      unit: temperature,
      format: "0.0",
      width: 9,
      help: "Sample and baseline; blank where one of them is not known.",
    },
    ({ temperature: sample, bathBaseline, bathTemperature }) =>
      blankIf([isNoNumber(sample), isBlank(bathBaseline)], absolute(minus(sample, bathTemperature))),
  ),
  helper(
    {
      id: "sizable",
      label: "Can be sized",
      type: "whole number",
      format: "0",
      width: 9,
      help: "1 where a top-up is due and the sample was near enough to the baseline's temperature to size it.",
    },
    ({ againstTrigger, degreesApart }, { named }) =>
      when(isNot(againstTrigger, readingVerdict.topUp), "")
        .when(isOver(degreesApart, named.temperatureGap), "")
        .otherwise(1),
  ),
];
