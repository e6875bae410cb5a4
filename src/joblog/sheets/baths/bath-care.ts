import { dividedBy, plus, sum, times, wholePart } from "../../formula/arithmetic.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { all, equal, isBlank, isNumber, isOver, isUnder } from "../../formula/conditions.ts";
import { above, countWhere, largestWhere, smallestWhere, sumWhere, type Where } from "../../formula/criteria.ts";
import type { Expression } from "../../formula/expression.ts";
import { litersInUnit } from "../../formula/liters-in-unit.ts";
import type { Log, Row } from "../../formula/log-names.ts";
import { rowAt } from "../../formula/lookups.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn } from "../../model/definition.ts";
import { alkaliAdded, hardness, volume } from "../../model/units-of.ts";
import { degassing } from "../../model/words.ts";

const { computed } = columnsOf<"baths">();

/** T over P of the bath's titrated reading that is the first or the last. */
function ratio(end: typeof largestWhere): (row: Row<"baths">, log: Log) => Expression {
  return ({ bath }, { readings }) => {
    const titrated: Where<"readings"> = { bath, alkalinityRatio: above(0), when: above(0) };
    const then: Where<"readings"> = { ...titrated, when: [above(0), end(readings, "when", titrated)] };
    return blankIf(
      [isBlank(bath), equal(countWhere(readings, titrated), 0)],
      dividedBy(sumWhere(readings, "alkalinityRatio", then), countWhere(readings, then)),
    );
  };
}

/** Loads, losses and what else speaks for or against a change-out. */
export const bathCare: readonly ComputedColumn[] = [
  computed(
    {
      id: "loads",
      label: "Loads",
      type: "whole number",
      format: "0",
      width: 8,
      help: "From the sheet Loads, rework as well.",
    },
    ({ bath }, { loads }) => blankIf([isBlank(bath)], countWhere(loads, { bath })),
  ),
  computed(
    {
      id: "degassed",
      label: "Degassed",
      type: "text",
      words: Object.values(degassing),
      width: 13,
      help: "A fresh fill holds air: degas it before the first load and before a foil test.",
    },
    ({ bath, openingDose }, { care, loads }) => {
      const firstDegassed = smallestWhere(care, "when", { bath, kind: "degas" });
      const firstLoad = smallestWhere(loads, "when", { bath });
      return blankIf(
        [isBlank(bath), isBlank(openingDose)],
        when(equal(firstDegassed, 0), degassing.none)
          .when(all(isOver(firstLoad, 0), isUnder(firstLoad, firstDegassed)), degassing.late)
          .otherwise(degassing.done),
      );
    },
  ),
  computed(
    {
      id: "foilTest",
      label: "Last foil test",
      type: "date",
      width: 11,
      help: "From the sheet Care; UK guidance HTM 01-05 for washers of instruments has one every quarter (from memory).",
    },
    ({ bath }, { care }) => {
      const last = largestWhere(care, "when", { bath, kind: "foil test" });
      return blankIf([isBlank(bath)], blankIf([equal(last, 0)], wholePart(last)));
    },
  ),
  computed(
    {
      id: "drained",
      label: "Drained in all",
      type: "number",
      unit: volume,
      format: "0.00",
      width: 9,
      help: "Drained and skimmed, from Care: solution that took its concentrate along.",
    },
    ({ bath }, { care }) => blankIf([isBlank(bath)], sumWhere(care, "amount", { bath })),
  ),
  computed(
    {
      id: "hardnessNow",
      label: "Hardness brought so far",
      type: "number",
      unit: hardness,
      format: "0",
      width: 12,
      help: "All that the waters brought, in the working volume: evaporation leaves it in the bath.",
    },
    ({ bath, workingVolume }, log) => {
      const milligrams = times(1000, sumWhere(log.additions, "hardnessCarried", { bath }));
      return blankIf(
        [isBlank(bath), isBlank(workingVolume)],
        dividedBy(milligrams, times(workingVolume, litersInUnit(log))),
      );
    },
  ),
  computed(
    {
      id: "bicarbonateBrought",
      label: "Bicarbonate brought so far",
      type: "number",
      unit: alkaliAdded,
      format: "0.000",
      width: 12,
      help: "All that the waters brought: each eq used up one of hydroxide.",
    },
    ({ bath }, { additions }) => blankIf([isBlank(bath)], sumWhere(additions, "bicarbonateCarried", { bath })),
  ),
  computed(
    {
      id: "alkaliBrought",
      label: "Alkali brought so far",
      type: "number",
      unit: alkaliAdded,
      format: "0.000",
      width: 12,
      help: "What concentrate and tested waters brought, for neutralizing; blank where the concentrate's alkali strength is not known.",
    },
    ({ bath, openingDose, concentrateRow, bicarbonateBrought }, log) => {
      const { alkalinityStrength } = rowAt(log.concentrates, concentrateRow);
      const poured = times(sumWhere(log.additions, "amount", { bath, kind: "concentrate" }), litersInUnit(log));
      return blankIf(
        [isBlank(openingDose), isBlank(concentrateRow)],
        when(equal(sum(alkalinityStrength), 0), "").otherwise(
          plus(bicarbonateBrought, times(poured, alkalinityStrength)),
        ),
      );
    },
  ),
  computed(
    {
      id: "ratioFirst",
      label: "Total to free alkalinity, first",
      type: "number",
      format: "0.00",
      width: 11,
      help: "T (total) over P (free) in the bath's first titration.",
    },
    ratio(smallestWhere),
  ),
  computed(
    {
      id: "ratioLast",
      label: "Total to free alkalinity, last",
      type: "number",
      format: "0.00",
      width: 11,
      help: "T (total) over P (free) in the latest: a rise means soap from soil: consider a change-out. The limit is the shop's own.",
    },
    ratio(largestWhere),
  ),
  computed(
    { id: "ageSignal", label: "Age", type: "text", width: 18, help: "Against the days on the sheet Shop." },
    ({ daysOpen, closed }, { named }) =>
      blankIf(
        [isBlank(daysOpen), isNumber(closed)],
        when(isOver(daysOpen, named.bathLife), "old: consider a change-out").otherwise(""),
      ),
  ),
];
