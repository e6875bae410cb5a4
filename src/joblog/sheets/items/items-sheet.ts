import { cautionsOfSheet } from "../../../core/safety/caution-places.ts";
import { keyInput, moneyInput, numberInput, textInput, wordInput } from "../../model/columns.ts";
import type { ColumnDefinition, SheetDefinition } from "../../model/definition.ts";
import { between, moneyLimits } from "../../model/units-of.ts";
import { itemStandings, outcomes, reasonCodes, routes, yesNo } from "../../model/words.ts";
import { itemStatement } from "../statement/statement-keys.ts";
import { itemCounts } from "./item-counts.ts";
import { economicTest, itemCheck, itemStanding, itemStandingHelpers } from "./item-standing.ts";
import { claimWithoutPieces } from "./items-without-pieces.ts";
import { keepOut } from "./keep-out.ts";

const columns: readonly ColumnDefinition[] = [
  textInput({ id: "id", label: "Item", width: 12, required: true, help: "Running number, as on the tag." }),
  keyInput({
    id: "claim",
    label: "Claim",
    width: 11,
    required: true,
    from: ["claims", "claim"],
    help: "Whose it is; an item never moves between claims.",
  }),
  textInput({ id: "room", label: "Room", width: 11, help: "Where it stood." }),
  {
    ...numberInput({
      id: "quantity",
      label: "Pieces",
      limits: between(1, 10_000),
      format: "0",
      width: 10,
      required: true,
      help: "How many of the same; one line for a box of odds and ends proves nothing.",
    }),
    type: "whole number",
  },
  textInput({ id: "item", label: "What", width: 26, required: true, help: "What it is." }),
  textInput({
    id: "material",
    label: "Material",
    width: 16,
    help: "Name the metal: aluminum, zinc, tin and lead stay out of alkali.",
  }),
  textInput({ id: "condition", label: "Condition", width: 14, help: "Soot, heat, melt, odor: as it came in." }),
  wordInput({
    id: "pre1978",
    label: "Before 1978",
    words: yesNo,
    width: 11,
    help: "Old paint or glaze, lead suspected: isolate and wipe-test.",
  }),
  wordInput({ id: "route", label: "Route", words: routes, width: 11, help: "Bath, by hand, specialist or none." }),
  keyInput({
    id: "bath",
    label: "Bath",
    width: 12,
    from: ["baths", "bath"],
    help: "Where the route is a bath: which one.",
  }),
  wordInput({ id: "outcome", label: "Outcome", words: outcomes, width: 13, help: "Blank as long as it is pending." }),
  wordInput({
    id: "reason",
    label: "Reason code",
    words: reasonCodes,
    width: 13,
    help: "Why it is not restorable, returned, or kept out of the bath. AMPHOTERIC: a metal that alkali attacks, such as aluminum or zinc.",
  }),
  textInput({ id: "reasonText", label: "Reason in a sentence", width: 28, help: "What was seen, for the adjuster." }),
  moneyInput({
    id: "replacementValue",
    label: "Replacement value",
    width: 12,
    limits: moneyLimits,
    help: "Of the whole line, like kind and quality.",
  }),
  moneyInput({
    id: "restoreCost",
    label: "Cost to restore",
    width: 11,
    limits: moneyLimits,
    help: "Of the whole line, estimated.",
  }),
  textInput({ id: "photo", label: "Photo", width: 9, help: "Number of the photo taken before cleaning." }),
  textInput({ id: "note", label: "Note", width: 20, help: "Anything the file should say, such as who has it now." }),
  itemStanding,
  economicTest,
  itemCheck,
  ...keepOut,
  ...itemStandingHelpers,
  claimWithoutPieces,
  itemStatement,
];

export const itemsSheet: SheetDefinition = {
  id: "items",
  name: "Items",
  title: "Items",
  purpose:
    "Every piece that came in, what became of it and why. At every date the pieces in are those restored, hand cleaned, not restorable, returned and pending together.",
  caution: cautionsOfSheet("items"),
  fields: [],
  tables: [
    itemCounts,
    {
      id: "items",
      name: "Items",
      entry: { word: "Item", letter: "I", about: ["claim", "item"] },
      caption: "Items",
      emptyRows: 1,
      columns,
      signals: [
        { column: "standing", when: { is: itemStandings.reasonMissing }, look: "act" },
        { column: "standing", when: { is: itemStandings.unknown }, look: "act" },
        { column: "standing", when: { is: itemStandings.pending }, look: "watch" },
        { column: "standing", when: { is: itemStandings.notRestorable }, look: "quiet" },
        { column: "standing", when: { startsWith: itemStandings.restored }, look: "good" },
        { column: "standing", when: { is: itemStandings.handCleaned }, look: "good" },
        { column: "standing", when: { is: itemStandings.specialist }, look: "good" },
        { column: "check", when: { startsWith: "keep out" }, look: "act" },
        { column: "check", when: { startsWith: "isolate" }, look: "act" },
        { column: "check", when: { startsWith: "claim" }, look: "act" },
        { column: "check", when: { startsWith: "give" }, look: "watch" },
        { column: "economic", when: { startsWith: "over" }, look: "watch" },
      ],
    },
  ],
  arrangement: "stacked",
  tabColor: "#5C6F9E",
  pagesWide: 2,
  orientation: "landscape",
};
