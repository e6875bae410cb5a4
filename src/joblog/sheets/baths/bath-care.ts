import { dividedBy, plus, sum, times, wholePart } from "../../formula/arithmetic.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { all, equal, isBlank, isNumber, isOver, isUnder } from "../../formula/conditions.ts";
import { above, countWhere, largestWhere, smallestWhere, sumWhere, type Where } from "../../formula/criteria.ts";
import type { Expression } from "../../formula/expression.ts";
import { litersInUnit } from "../../formula/liters-in-unit.ts";
import type { Log, Row } from "../../formula/log-names.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn } from "../../model/definition.ts";
import { alkaliAdded, hardness, volume } from "../../model/units-of.ts";
import { degassing } from "../../model/words.ts";

const { computed, helper } = columnsOf<"baths">();

type Titration = "firstTitration" | "lastTitration";

/** T over P of the bath's titrated reading that is the first or the last. */
const ratio =
  (which: Titration) =>
  (row: Row<"baths">, { readings }: Log): Expression => {
    const then: Where<"readings"> = { bath: row.bath, alkalinityRatio: above(0), when: row[which] };
    return blankIf(
      [isBlank(row[which])],
      dividedBy(sumWhere(readings, "alkalinityRatio", then), countWhere(readings, then)),
    );
  };

function titrationAt(id: Titration, label: string, end: typeof largestWhere): ComputedColumn {
  return helper(
    { id, label, type: "date and time", width: 16, help: "When total and free alkalinity were titrated." },
    ({ bath }, { readings }) => {
      const at = end(readings, "when", { bath, alkalinityRatio: above(0), when: above(0) });
      return blankIf([isBlank(bath)], blankIf([equal(at, 0)], at));
    },
  );
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
    ({ bath, openingDose, firstDegassed }, { loads }) => {
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
    ({ bath, openingDose, alkaliStrength, bicarbonateBrought }, log) => {
      const poured = times(sumWhere(log.additions, "amount", { bath, kind: "concentrate" }), litersInUnit(log));
      return blankIf(
        [isBlank(openingDose)],
        when(equal(sum(alkaliStrength), 0), "").otherwise(plus(bicarbonateBrought, times(poured, alkaliStrength))),
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
    ratio("firstTitration"),
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
    ratio("lastTitration"),
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

export const bathCareHelpers: readonly ComputedColumn[] = [
  helper(
    {
      id: "firstDegassed",
      label: "First degassed",
      type: "date and time",
      width: 16,
      help: "From the sheet Care; 0 if never.",
    },
    ({ bath }, { care }) => blankIf([isBlank(bath)], smallestWhere(care, "when", { bath, kind: "degas" })),
  ),
  titrationAt("firstTitration", "First titration", smallestWhere),
  titrationAt("lastTitration", "Last titration", largestWhere),
];
