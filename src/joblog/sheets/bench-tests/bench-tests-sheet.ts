import { cautionsOfSheet } from "../../../core/safety/caution-places.ts";
import { joined } from "../../formula/arithmetic.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { equal, isBlank, isNoNumber, isUnder } from "../../formula/conditions.ts";
import { after, smallestWhere } from "../../formula/criteria.ts";
import { rowAt } from "../../formula/lookups.ts";
import { isUpTo, never } from "../../formula/times.ts";
import { columnsOf, keyInput, momentInput, numberInput, textInput, wordInput } from "../../model/columns.ts";
import type { ColumnDefinition, SheetDefinition } from "../../model/definition.ts";
import { between, seconds } from "../../model/units-of.ts";
import { benchMethods, benchResults, surfaces } from "../../model/words.ts";
import { bathRow } from "../baths/bath-row.ts";

const { computed, helper } = columnsOf<"benchTests">();

/** How the words begin of a test that still counts; its result follows. */
const stands = "stands: ";

const noResultYet = "no result yet";

const columns: readonly ColumnDefinition[] = [
  textInput({ id: "id", label: "Test", width: 8, required: true, help: "Running number." }),
  keyInput({
    id: "bath",
    label: "Bath",
    width: 14,
    required: true,
    from: ["baths", "bath"],
    help: "The bath whose solution was tested.",
  }),
  momentInput({ id: "when", label: "When", width: 16, required: true, help: "Date and time of the test." }),
  textInput({ id: "strength", label: "Strength", width: 11, help: "Strength tested, such as 1+40." }),
  keyInput({ id: "water", label: "Water", width: 8, from: ["waters", "water"], help: "Water of the test solution." }),
  wordInput({
    id: "surface",
    label: "Surface",
    words: surfaces,
    width: 17,
    required: true,
    help: "One row for each surface, failures too.",
  }),
  wordInput({ id: "method", label: "Method", words: benchMethods, width: 16, help: "How it was tried." }),
  numberInput({
    id: "dwell",
    label: "Dwell",
    unit: seconds,
    limits: between(0, 3600),
    format: "0",
    width: 8,
    help: "Time on the surface before wiping.",
  }),
  wordInput({
    id: "result",
    label: "Result",
    words: benchResults,
    width: 9,
    required: true,
    help: "Partial counts as not passed.",
  }),
  textInput({ id: "note", label: "Note", width: 24, help: "Which piece, and what was left on it." }),
  textInput({ id: "initials", label: "Initials", width: 8, help: "Who tested." }),
  computed(
    {
      id: "standing",
      label: "Stands",
      type: "text",
      width: 26,
      help: "Whether this test still counts: a later test of the surface or new concentrate replaces it.",
    },
    (test, { baths }) =>
      blankIf(
        [isBlank(test.bathRow), isNoNumber(test.when)],
        when(isUpTo(test.when, rowAt(baths, test.bathRow).lastConcentrate), "before the last concentrate")
          .when(isUnder(test.supersededAt, never), "repeated later")
          .when(isBlank(test.result), noResultYet)
          .otherwise(joined(stands, test.result)),
      ),
  ),
  bathRow,
  helper(
    {
      id: "supersededAt",
      label: "Repeated at",
      type: "date and time",
      width: 16,
      help: "When the surface was next tested; the last day of the calendar if it was not.",
    },
    ({ nextTest }) => blankIf([isBlank(nextTest)], when(equal(nextTest, 0), never).otherwise(nextTest)),
  ),
  helper(
    {
      id: "nextTest",
      label: "Next test",
      type: "date and time",
      width: 16,
      help: "Of the surface in the same bath; 0 if there is none.",
    },
    ({ bath, surface, when: tested }, { benchTests }) =>
      blankIf(
        [isBlank(bath), isNoNumber(tested)],
        smallestWhere(benchTests, "when", { bath, surface, when: after(tested) }),
      ),
  ),
];

export const benchTestsSheet: SheetDefinition = {
  id: "benchTests",
  name: "Bench tests",
  title: "Bench tests",
  purpose:
    "Does the bath clean every surface of this job? One row for each surface, before any pH is written down. The baseline waits until all pass.",
  caution: cautionsOfSheet("benchTests"),
  fields: [],
  tables: [
    {
      id: "benchTests",
      name: "BenchTests",
      entry: { word: "Bench test", letter: "T", about: ["bath", "surface"] },
      caption: "Bench tests",
      emptyRows: 1,
      columns,
      signals: [
        { column: "standing", when: { is: `${stands}pass` }, look: "good" },
        { column: "standing", when: { is: `${stands}partial` }, look: "act" },
        { column: "standing", when: { is: `${stands}fail` }, look: "act" },
        { column: "standing", when: { is: noResultYet }, look: "watch" },
      ],
    },
  ],
  arrangement: "side by side",
  tabColor: "#8A6D2F",
  pagesWide: 1,
  orientation: "landscape",
};
