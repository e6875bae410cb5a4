import { cautionsOfSheet } from "../../../core/safety/caution-places.ts";
import { keyInput, momentInput, numberInput, textInput, wordInput } from "../../model/columns.ts";
import type { ColumnDefinition, SheetDefinition } from "../../model/definition.ts";
import { area, areaLimits, between, minutes } from "../../model/units-of.ts";
import { soilGrades, yesNo } from "../../model/words.ts";
import { loadCheck, loadHelpers, loadUnits } from "./load-units.ts";

const inputs: readonly ColumnDefinition[] = [
  textInput({ id: "id", label: "Load", width: 8, required: true, help: "Running number." }),
  keyInput({
    id: "bath",
    label: "Bath",
    width: 13,
    required: true,
    from: ["baths", "bath"],
    help: "The bath it went into.",
  }),
  keyInput({
    id: "claim",
    label: "Claim",
    width: 12,
    required: true,
    from: ["claims", "claim"],
    help: "Whose contents; never two claims in one load.",
  }),
  momentInput({ id: "when", label: "When", width: 16, required: true, help: "Date and time it went in." }),
  numberInput({
    id: "baskets",
    label: "Baskets",
    limits: between(0, 1000),
    format: "General",
    width: 9,
    required: true,
    help: "Baskets, or parts of one.",
  }),
  wordInput({
    id: "soil",
    label: "Soil",
    words: soilGrades,
    width: 9,
    required: true,
    help: "Light, medium or heavy, before it went in.",
  }),
  numberInput({
    id: "minutes",
    label: "In the bath",
    unit: minutes,
    limits: between(0, 1440),
    format: "General",
    width: 9,
    required: true,
    help: "Time in the bath.",
  }),
  numberInput({
    id: "area",
    label: "Area",
    unit: area,
    limits: areaLimits,
    format: "General",
    width: 8,
    help: "Surface of the pieces, if estimated.",
  }),
  wordInput({
    id: "rework",
    label: "Rework",
    words: yesNo,
    width: 9,
    help: "Yes where the pieces were in before: a rework is not billed twice. Blank means no.",
  }),
  textInput({ id: "initials", label: "Initials", width: 8, help: "Who ran it." }),
  textInput({ id: "note", label: "Note", width: 13, help: "Anything odd." }),
];

export const loadsSheet: SheetDefinition = {
  id: "loads",
  name: "Loads",
  title: "Loads",
  purpose:
    "What went into a bath, when and for whose claim: the ground for sharing its cost and for saying later who shared it. Clean before dirty; skim and filter between claims.",
  caution: cautionsOfSheet("loads"),
  fields: [],
  tables: [
    {
      id: "loads",
      name: "Loads",
      entry: { word: "Load", letter: "L", about: ["bath", "claim"] },
      caption: "Loads",
      emptyRows: 1,
      columns: [...inputs, ...loadUnits, loadCheck, ...loadHelpers],
      signals: [
        { column: "check", when: { startsWith: "claim" }, look: "act" },
        { column: "check", when: { startsWith: "bath" }, look: "act" },
        { column: "check", when: { startsWith: "missing" }, look: "watch" },
        { column: "check", when: { startsWith: "no line" }, look: "act" },
        { column: "check", when: { startsWith: "rework" }, look: "quiet" },
      ],
    },
  ],
  arrangement: "side by side",
  tabColor: "#4F7F8B",
  pagesWide: 1,
  orientation: "landscape",
};
